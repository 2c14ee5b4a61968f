#include "ui/trends/trends_page.h"

#include "tests/support/accessible_audit.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/ui/trends/made_up_trends.h"
#include "ui/common/banner.h"
#include "ui/common/look.h"
#include "ui/trends/trend_cards.h"
#include "ui/trends/trend_tables.h"

#include <QAbstractButton>
#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QGuiApplication>
#include <QMenu>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::trends {

class TrendsPageTest : public ::testing::Test {
protected:
    TrendsPageTest()
    {
        auto source = std::make_unique<MadeUpTrends>();
        m_source = source.get();
        m_page = std::make_unique<TrendsPage>(TrendsServices{m_look, m_clock, m_dialogs}, std::move(source));
        QObject::connect(m_page.get(), &shell::Page::placeAsked, m_page.get(), [this](const shell::Place& place) { m_asked = place; });
        m_page->resize(1360, 856);
        m_page->show();
        m_page->activateWindow();
    }

    void show(int client)
    {
        shell::Place place;
        place.client = base::ClientId(client);
        const int before = m_source->readings;
        m_page->open(place);
        EXPECT_TRUE(QTest::qWaitFor([&] { return m_source->readings > before && cards().selectedWeek() >= 0 && isShown(client); }));
        bars().setFocus();
    }

    bool isShown(int client) const
    {
        return client == 0 ? !m_page->openClient() : m_page->openClient() && m_page->openClient()->id == base::ClientId(client);
    }

    TrendCards& cards() const { return *m_page->findChild<TrendCards*>(); }
    TrendTables& tables() const { return *m_page->findChild<TrendTables*>(); }
    ChartView& bars() const { return *cards().views().front(); }
    QComboBox& who() const { return *m_page->findChild<QComboBox*>(); }
    QStringList visibleBanners() const
    {
        QStringList said;
        for (const common::Banner* banner : m_page->findChildren<common::Banner*>()) {
            if (banner->isVisible()) {
                said.append(banner->accessibleName());
            }
        }
        return said;
    }
    /// The export whose text holds these words.
    void triggerExport(const QString& words)
    {
        QTest::keyClick(&bars(), Qt::Key_E);
        auto* menu = m_page->findChild<QMenu*>();
        ASSERT_NE(menu, nullptr);
        for (QAction* action : menu->actions()) {
            if (action->text().contains(words)) {
                action->trigger();
            }
        }
        menu->close();
    }

    common::Look m_look;
    chalk::tests::FakeClock m_clock{"2026-11-25"};
    chalk::tests::ScriptedDialogs m_dialogs;
    MadeUpTrends* m_source;
    std::unique_ptr<TrendsPage> m_page;
    std::optional<shell::Place> m_asked;
};

TEST_F(TrendsPageTest, AClientsReportIsAskedForAndNobodysIsNot)
{
    std::vector<base::ClientId> asked;
    QObject::connect(m_page.get(), &TrendsPage::reportAsked, m_page.get(), [&asked](base::ClientId client) { asked.push_back(client); });
    show(0);
    EXPECT_FALSE(m_page->canPrint());
    m_page->print();
    EXPECT_TRUE(asked.empty());
    show(1);
    EXPECT_TRUE(m_page->canPrint());
    m_page->print();
    EXPECT_EQ(asked, std::vector{base::ClientId(1)});
}

TEST_F(TrendsPageTest, OpensForAClient)
{
    show(1);
    EXPECT_EQ(m_page->title(), QStringLiteral("Trends, Joaquin Ferro"));
    EXPECT_EQ(m_page->place().client, base::ClientId(1));
    EXPECT_EQ(who().currentText(), QStringLiteral("Joaquin Ferro"));
    EXPECT_EQ(m_source->lastWeeks, 12);
    EXPECT_EQ(visibleBanners(), QStringList());
    EXPECT_EQ(chalk::tests::unnamedFocusables(*m_page), QStringList());
    EXPECT_GE(chalk::tests::focusableCount(*m_page), 6);
}

TEST_F(TrendsPageTest, WithoutAClientItKeepsWhatWasShown)
{
    show(0);
    EXPECT_EQ(m_page->title(), QStringLiteral("Trends"));
    show(1);
    m_page->open({});
    QTest::qWait(30);
    EXPECT_TRUE(isShown(1));
}

TEST_F(TrendsPageTest, KeysGoThroughTheWeeks)
{
    show(1);
    QTest::keyClick(&bars(), Qt::Key_Left);
    EXPECT_EQ(cards().selectedWeek(), 1);
    QTest::keyClick(&bars(), Qt::Key_Right);
    QTest::keyClick(&bars(), Qt::Key_Right);
    QTest::keyClick(&bars(), Qt::Key_Right);
    EXPECT_EQ(cards().selectedWeek(), 3) << "the last one";
}

TEST_F(TrendsPageTest, TShowsTheNumbersAsATable)
{
    show(1);
    EXPECT_FALSE(tables().isVisible());
    QTest::keyClick(&bars(), Qt::Key_T);
    EXPECT_TRUE(tables().isVisible());
    ASSERT_EQ(tables().tables().size(), 3U);
    QTest::keyClick(tables().tables().front(), Qt::Key_C, Qt::ControlModifier);
    EXPECT_TRUE(QGuiApplication::clipboard()->text().contains(QStringLiteral("95 (92–99)")));
    EXPECT_EQ(visibleBanners().size(), 1);
    EXPECT_TRUE(m_page->closeOrClear()) << "what was said goes first";
    EXPECT_TRUE(tables().isVisible());
    EXPECT_TRUE(m_page->closeOrClear());
    EXPECT_FALSE(tables().isVisible());
    EXPECT_FALSE(m_page->closeOrClear());
}

TEST_F(TrendsPageTest, WeeksAndClientsAreChosen)
{
    show(1);
    const int before = m_source->readings;
    for (QAbstractButton* button : m_page->findChildren<QAbstractButton*>()) {
        if (button->text() == QStringLiteral("26 weeks")) {
            button->click();
        }
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_source->readings > before; }));
    EXPECT_EQ(m_source->lastWeeks, 26);
    who().setFocus();
    QTest::keyClick(&who(), Qt::Key_Home);
    ASSERT_TRUE(QTest::qWaitFor([this] { return isShown(0); }));
    EXPECT_TRUE(m_page->place().client.isNone());
    EXPECT_EQ(m_source->lastWeeks, 26) << "the span stays";
}

TEST_F(TrendsPageTest, ALearnerIsWatchedOnTheBoard)
{
    show(2);
    ASSERT_EQ(visibleBanners().size(), 1);
    EXPECT_TRUE(cards().charts().empty());
    QTest::keyClick(&bars(), Qt::Key_B);
    ASSERT_TRUE(m_asked);
    EXPECT_EQ(m_asked->page, QStringLiteral("client"));
    EXPECT_EQ(m_asked->client, base::ClientId(2));
}

TEST_F(TrendsPageTest, NumbersAndChartsLeaveAsFiles)
{
    show(1);
    const QTemporaryDir folder;
    m_dialogs.paths = {folder.filePath(QStringLiteral("a.csv")), folder.filePath(QStringLiteral("b.svg")), folder.filePath(QStringLiteral("no/such/c.png"))};
    triggerExport(QStringLiteral("CSV"));
    ASSERT_EQ(m_dialogs.askedFiles.size(), 1U);
    EXPECT_EQ(m_dialogs.askedFiles[0].suggestion, QStringLiteral("joaquin-ferro-trends-2026-W48.csv"));
    QFile csv(folder.filePath(QStringLiteral("a.csv")));
    ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
    EXPECT_TRUE(csv.readAll().contains("Joaquin Ferro,2026-W45,2026-11-02,load_volume,squat,3000,,,kg*reps\r\n"));
    triggerExport(QStringLiteral("Monotony as SVG"));
    EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("b.svg"))));
    EXPECT_TRUE(m_page->closeOrClear()) << "it says where it is";
    triggerExport(QStringLiteral("Load-volume by week as PNG"));
    ASSERT_EQ(visibleBanners().size(), 1);
    EXPECT_EQ(m_dialogs.askedFiles.size(), 3U);
}

TEST_F(TrendsPageTest, AFailureSaysSoAndLeavesWhatWasRead)
{
    show(1);
    m_source->isBroken = true;
    m_page->refresh();
    ASSERT_TRUE(QTest::qWaitFor([this] { return visibleBanners().size() == 1; }));
    EXPECT_TRUE(isShown(1));
}

TEST_F(TrendsPageTest, ANarrowWindowLeavesMoreRoomForTheBars)
{
    show(1);
    m_page->setRoom(false, false);
    QTest::qWait(10);
    const int wide = bars().width();
    m_page->setRoom(true, true);
    QTest::qWait(10);
    EXPECT_GT(bars().width(), wide);
}

}  // namespace chalk::ui::trends
