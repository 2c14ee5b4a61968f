#include "tests/support/accessible_audit.h"
#include "tests/support/fake_clock.h"
#include "tests/support/plain_page.h"
#include "ui/common/act_history.h"
#include "ui/common/banner.h"
#include "ui/common/look.h"
#include "ui/shell/day_line.h"
#include "ui/shell/find_dialog.h"
#include "ui/shell/key_sheet.h"
#include "ui/shell/ledge.h"
#include "ui/shell/ledge_note.h"
#include "ui/shell/main_window.h"
#include "ui/shell/rail_button.h"

#include <QAction>
#include <QApplication>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

class MainWindowTest : public ::testing::Test {
protected:
    MainWindowTest()
        : m_settings(m_folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat),
          m_acts(m_clock, [](base::ActId act) { return tl::expected<base::ActId, QString>(act); })
    {
        makeWindow({"roster", "floor", "client", "settings"});
    }

    ~MainWindowTest() override
    {
        m_window.reset();
        common::applyTheme(*qApp, common::Look().theme());  // the window dresses the whole program
    }

    void makeWindow(std::initializer_list<const char*> keys, const std::function<bool(base::ClientId)>& isThere = {})
    {
        PageRegistry pages;
        int number = 0;
        for (const char* key : keys) {
            const QString name = QLatin1String(key);
            const RailSlot slot = name == QLatin1String("client")     ? RailSlot::None
                                  : name == QLatin1String("settings") ? RailSlot::Bottom
                                                                      : RailSlot::Top;
            pages.add({name, name, name, slot, QKeySequence(QStringLiteral("Ctrl+%1").arg(++number)),
                       [name](QWidget* parent) -> Page* { return new tests::PlainPage(name, parent); }});
        }
        m_window = std::make_unique<MainWindow>(
            WindowServices{m_look, m_acts, m_clock, m_settings, QStringLiteral("Ketch Lane Studio"),
                           [this] {
                               ++m_sessionReads;
                               return std::vector<LedgeSession>{
                                   {base::SessionId(8), 540, 60, QStringLiteral("Ines"), QStringLiteral("Joaquin Ferro"), false}};
                           }},
            std::move(pages));
        m_window->openLastPlace(isThere);
        m_window->show();
        m_window->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_window.get(), 5000));
    }

    [[nodiscard]] tests::PlainPage& page() const { return *static_cast<tests::PlainPage*>(m_window->presentPage()); }
    [[nodiscard]] QString title() const { return m_window->presentPage()->title(); }
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) { QTest::keyClick(m_window->focusWidget(), Qt::Key(key), modifiers); }
    void showClient(int id) { m_window->goTo({.page = QStringLiteral("client"), .client = base::ClientId(id)}); }
    [[nodiscard]] QStringList railTexts() const
    {
        QStringList texts;
        for (const RailButton* button : m_window->findChildren<RailButton*>()) {
            if (button->isVisible()) {
                texts.append(button->text());
            }
        }
        return texts;
    }

    QTemporaryDir m_folder;
    QSettings m_settings;
    tests::FakeClock m_clock;
    common::Look m_look;
    common::ActHistory m_acts;
    int m_sessionReads = 0;
    std::unique_ptr<MainWindow> m_window;
};

TEST_F(MainWindowTest, KeysGoToPages)
{
    EXPECT_EQ(title(), QStringLiteral("roster"));
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(title(), QStringLiteral("floor"));
    press(Qt::Key_1, Qt::ControlModifier);
    EXPECT_EQ(title(), QStringLiteral("roster"));
    EXPECT_EQ(m_window->windowTitle(), QStringLiteral("roster – Ketch Lane Studio"));
}

TEST_F(MainWindowTest, TheRailShowsOnlyWhatThereIs)
{
    EXPECT_EQ(railTexts(), (QStringList{QStringLiteral("roster"), QStringLiteral("floor"), QStringLiteral("settings")}));
    showClient(1);
    EXPECT_TRUE(railTexts().contains(QStringLiteral("C1")));
    for (const QAction* action : m_window->actions()) {
        EXPECT_FALSE(action->text().contains(QStringLiteral("New client"))) << "there is no page for it";
    }
    m_window->goTo({.page = QStringLiteral("week")});
    EXPECT_EQ(title(), QStringLiteral("Client 1"));
}

TEST_F(MainWindowTest, ControlTabGoesRoundTheOpenClients)
{
    showClient(1);
    showClient(2);
    press(Qt::Key_Tab, Qt::ControlModifier);
    EXPECT_EQ(title(), QStringLiteral("Client 1"));
    press(Qt::Key_Tab, Qt::ControlModifier);
    EXPECT_EQ(title(), QStringLiteral("Client 2"));
}

TEST_F(MainWindowTest, SlashFiltersEscapeClearsControlPPrints)
{
    m_window->ledge()->setFocus();
    m_window->setFocus();
    press(Qt::Key_Slash);
    EXPECT_EQ(m_window->focusWidget(), page().field());
    QTest::keyClicks(page().field(), QStringLiteral("n/"));
    EXPECT_EQ(page().field()->text(), QStringLiteral("n/"));  // typed, not taken for keys
    press(Qt::Key_Escape);
    EXPECT_EQ(page().escapes, 1);
    press(Qt::Key_P, Qt::ControlModifier);
    EXPECT_EQ(page().prints, 0);
    page().isPrintable = true;
    Q_EMIT page().pageChanged();
    press(Qt::Key_P, Qt::ControlModifier);
    EXPECT_EQ(page().prints, 1);
}

TEST_F(MainWindowTest, UndoReadsThePageAndTheDayAgain)
{
    m_acts.add(base::ActId(5), QStringLiteral("Recorded"));
    const int reads = m_sessionReads;
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(m_acts.lastDone());
    EXPECT_EQ(page().refreshes, 1);
    EXPECT_EQ(m_sessionReads, reads + 1);
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(m_acts.lastDone());
    press(Qt::Key_F5);
    EXPECT_EQ(page().refreshes, 3);
}

TEST_F(MainWindowTest, AFieldTakesBackItsOwnTypingFirst)
{
    m_acts.add(base::ActId(5), QStringLiteral("Recorded"));
    QTest::keyClicks(page().field(), QStringLiteral("fer"));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(page().field()->text().isEmpty());
    EXPECT_TRUE(m_acts.lastDone());
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(m_acts.lastDone());
}

TEST_F(MainWindowTest, ABarOfTheLedgeOpensTheFloorAtThatSession)
{
    DayLine* line = m_window->ledge()->dayLine();
    QTest::mouseClick(line, Qt::LeftButton, {}, line->barRect(line->day().bars.front()).center().toPoint());
    EXPECT_EQ(title(), QStringLiteral("floor"));
    EXPECT_EQ(page().opened.back().session, base::SessionId(8));
}

TEST_F(MainWindowTest, RemembersSizeThemeTextAndPlace)
{
    m_window->resize(1200, 760);  // no wider than must be: the screen of the tests is small
    press(Qt::Key_L, Qt::ControlModifier | Qt::ShiftModifier);
    press(Qt::Key_Plus, Qt::ControlModifier);
    EXPECT_EQ(m_look.theme().textPercent, 110);
    showClient(7);
    m_window->close();
    m_window.reset();
    m_look.setTone(common::Tone::Paper);
    m_look.setTextPercent(100);
    makeWindow({"roster", "floor", "client", "settings"});
    EXPECT_EQ(m_window->size(), QSize(1200, 760));
    EXPECT_EQ(m_look.theme().tone, common::Tone::Slate);
    EXPECT_EQ(m_look.theme().textPercent, 110);
    EXPECT_EQ(title(), QStringLiteral("Client 7"));
    m_window.reset();
    makeWindow({"roster", "client"}, [](base::ClientId client) { return client != base::ClientId(7); });
    EXPECT_EQ(title(), QStringLiteral("roster")) << "the client is not in this studio";
    showClient(7);
    m_window.reset();
    makeWindow({"roster"});  // the page of the last run is not there any more
    EXPECT_EQ(title(), QStringLiteral("roster"));
}

TEST_F(MainWindowTest, KnowsWhenThereIsLessRoom)
{
    m_window->resize(1440, 900);
    EXPECT_FALSE(page().isNarrow);
    EXPECT_FALSE(page().isLow);
    m_window->resize(1319, 819);
    EXPECT_TRUE(page().isNarrow);
    EXPECT_TRUE(page().isLow);
    m_window->resize(1440, 900);
    m_look.setTextPercent(150);
    EXPECT_TRUE(page().isNarrow);
    m_window->resize(600, 400);
    EXPECT_GE(m_window->width(), MainWindow::kLeastWidth);
    EXPECT_GE(m_window->height(), MainWindow::kLeastHeight);
}

TEST_F(MainWindowTest, TheFindBoxFindsActionsAndPages)
{
    press(Qt::Key_K, Qt::ControlModifier);
    ASSERT_TRUE(m_window->findDialog()->isVisible());
    QTest::keyClicks(m_window->findDialog()->field(), QStringLiteral("floor"));
    QTest::keyClick(m_window->findDialog()->field(), Qt::Key_Return);
    EXPECT_EQ(title(), QStringLiteral("floor"));
    EXPECT_FALSE(m_window->findDialog()->isVisible());
}

TEST_F(MainWindowTest, AShortcutWithAltLeavesTheMenuHidden)
{
    QAction act(m_window.get());
    act.setShortcut(Qt::ALT | Qt::Key_2);
    m_window->addAction(&act);
    const QSignalSpy triggered(&act, &QAction::triggered);
    QTest::keyPress(m_window.get(), Qt::Key_Alt, Qt::AltModifier);
    QTest::keyClick(m_window.get(), Qt::Key_2, Qt::AltModifier);
    QTest::keyRelease(m_window.get(), Qt::Key_Alt);
    EXPECT_EQ(triggered.count(), 1);
    EXPECT_FALSE(m_window->menuBar()->isVisible());
}

TEST_F(MainWindowTest, TheMenuIsHiddenUntilAltAndListsEveryAction)
{
    EXPECT_FALSE(m_window->menuBar()->isVisible());
    press(Qt::Key_Alt);
    EXPECT_TRUE(m_window->menuBar()->isVisible());
    QSet<const QAction*> listed;
    for (const QMenu* menu : m_window->menuBar()->findChildren<QMenu*>()) {
        for (const QAction* action : menu->actions()) {
            listed.insert(action);
        }
    }
    for (const QAction* action : m_window->actions()) {
        EXPECT_TRUE(listed.contains(action)) << action->text().toStdString();
    }
    QTest::keyClick(m_window->menuBar(), Qt::Key_Escape);
    EXPECT_FALSE(m_window->menuBar()->isVisible());
}

TEST_F(MainWindowTest, F1ShowsTheKeysOfThePage)
{
    press(Qt::Key_F1);
    const auto* sheet = m_window->findChild<KeySheet*>();
    ASSERT_TRUE(sheet->isVisible());
    EXPECT_TRUE(sheet->accessibleDescription().contains(QStringLiteral("Enter: Open")));
    EXPECT_TRUE(sheet->accessibleDescription().contains(QStringLiteral("Ctrl+K: Find or do")));
    press(Qt::Key_Escape);
    EXPECT_FALSE(sheet->isVisible());
    EXPECT_EQ(page().escapes, 0);
}

TEST_F(MainWindowTest, NoTwoActionsShareAKey)
{
    QSet<QString> keys;
    for (const QAction* action : m_window->actions()) {
        for (const QKeySequence& key : action->shortcuts()) {
            EXPECT_FALSE(keys.contains(key.toString())) << key.toString().toStdString();
            keys.insert(key.toString());
        }
    }
    EXPECT_GE(keys.size(), 15);
}

TEST_F(MainWindowTest, EverythingThatTakesTheFocusHasAName)
{
    showClient(1);
    m_acts.add(base::ActId(5), QStringLiteral("Recorded"));
    EXPECT_EQ(tests::unnamedFocusables(*m_window), QStringList());
    EXPECT_GE(tests::focusableCount(*m_window), 6);
    m_window->startFind(QStringLiteral("r"));
    EXPECT_EQ(tests::unnamedFocusables(*m_window), QStringList());
}

TEST_F(MainWindowTest, NewsOfOthersIsReadAtOnceAndSaid)
{
    const int before = page().refreshes;
    m_window->takeNews(QStringLiteral("Changed by Ines: Joaquin’s squat"));
    EXPECT_EQ(page().refreshes, before + 1);
    EXPECT_TRUE(m_window->ledge()->note()->words().contains(QStringLiteral("Joaquin’s squat")));
    EXPECT_EQ(QApplication::focusWidget(), page().field()) << "the focus stays where it was";
}

TEST_F(MainWindowTest, WhatTheWindowsOwnWorkWroteIsReadAndNotSaid)
{
    m_acts.add(base::ActId(5), QStringLiteral("Imported: 3 new clients"));
    const int before = page().refreshes;
    m_window->takeNews({});
    EXPECT_EQ(page().refreshes, before + 1);
    EXPECT_TRUE(m_window->ledge()->note()->words().contains(QStringLiteral("3 new clients"))) << "with its undo";
}

TEST_F(MainWindowTest, NewsWaitsForWhatIsBeingTyped)
{
    auto* entry = new QLineEdit(&page());
    entry->show();
    entry->setFocus();
    QTest::keyClicks(entry, QStringLiteral("8 8 7"));
    const int before = page().refreshes;
    m_window->takeNews(QStringLiteral("Changed by Ines"));
    EXPECT_EQ(page().refreshes, before);
    EXPECT_EQ(entry->text(), QStringLiteral("8 8 7"));
    page().field()->setFocus();
    EXPECT_EQ(page().refreshes, before + 1);
}

TEST_F(MainWindowTest, TroubleStandsAcrossThePageAsLongAsItLasts)
{
    const auto* banner = m_window->findChild<common::Banner*>();
    ASSERT_NE(banner, nullptr);
    EXPECT_FALSE(banner->isVisible());
    m_window->showTrouble(common::BannerMessage{common::Signal::Warn, QStringLiteral("warning"), QStringLiteral("No connection since 14:02."), QStringLiteral("Kept here.")});
    EXPECT_TRUE(banner->isVisible());
    EXPECT_TRUE(banner->accessibleName().contains(QStringLiteral("14:02")));
    m_window->showTrouble({});
    EXPECT_FALSE(banner->isVisible());
}

}  // namespace chalk::ui::shell
