#include "ui/roster/roster_page.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/fake_clock.h"
#include "tests/support/small_studio.h"
#include "ui/common/look.h"
#include "ui/roster/attention_list.h"
#include "ui/roster/roster_table.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QApplication>
#include <QLineEdit>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <atomic>

namespace chalk::ui::roster {

/// A roster that was made up; it can be told to fail.
class MadeUpSource final : public RosterSource {
public:
    RosterView view;
    std::atomic<bool> isBroken = false;

    [[nodiscard]] store::Result<RosterView> read(base::Date /*today*/) override
    {
        if (isBroken) {
            return tl::make_unexpected(store::StoreError{store::StoreError::Kind::Damaged, QStringLiteral("the disk is gone")});
        }
        return view;
    }
};

namespace {

RosterRow rowNamed(std::int64_t id, const char* name, const char* lift)
{
    RosterRow row;
    row.client = base::ClientId(id);
    row.coach = base::CoachId(1);
    row.name = QString::fromUtf8(name);
    row.when = QStringLiteral("Not booked");
    row.searchWords = folded(row.name).split(QLatin1Char(' ')) + folded(QString::fromUtf8(lift)).split(QLatin1Char(' '));
    row.lifts.push_back({lifts::Pattern::Squat, QString::fromUtf8(lift), progression::Stage::RepBuild, 1, {}});
    return row;
}

RosterView threeRows()
{
    RosterView view;
    view.sessionsToday = 2;
    view.coaches = {{base::CoachId(1), "Ines"}};
    view.rows = {rowNamed(1, "Adaeze Quill", "Goblet squat"), rowNamed(2, "Joaquin Ferro", "Back squat"), rowNamed(3, "Zoë Hart", "Box squat")};
    view.rows[2].flags = {checkin::ClientFlag::Pain};
    view.rows[2].position.isFlagged = true;
    view.attention = {{base::ClientId(3), QStringLiteral("Zoë Hart"), checkin::ClientFlag::Pain, QStringLiteral("Pain 5 of 10."),
                       QStringLiteral("Look at the lift"), {}, lifts::Pattern::Squat, {}}};
    return view;
}

}  // namespace

class RosterPageTest : public ::testing::Test {
protected:
    RosterPageTest() { make(RosterReach::Training); }

    void make(RosterReach reach)
    {
        auto source = std::make_unique<MadeUpSource>();
        source->view = threeRows();
        m_source = source.get();
        m_page = std::make_unique<RosterPage>(m_look, m_clock, std::move(source), nullptr, reach);
        QObject::connect(m_page.get(), &shell::Page::placeAsked, m_page.get(), [this](const shell::Place& place) { m_asked = place; });
        m_page->resize(1360, 856);
        m_page->show();
        m_page->activateWindow();
        EXPECT_TRUE(QTest::qWaitFor([this] { return table().model()->rowCount() == 3; }));
        m_page->open({});
    }

    RosterTable& table() { return *m_page->findChild<RosterTable*>(); }
    QLineEdit& field() { return *qobject_cast<QLineEdit*>(m_page->filterField()); }
    void press(Qt::Key key) { QTest::keyClick(m_page->focusWidget() == nullptr ? m_page.get() : m_page->focusWidget(), key); }
    std::int64_t selected() { return table().selectedRow() == nullptr ? 0 : table().selectedRow()->client.value(); }

    common::Look m_look;
    const tests::FakeClock m_clock;
    MadeUpSource* m_source = nullptr;
    std::unique_ptr<RosterPage> m_page;
    shell::Place m_asked;
};

TEST_F(RosterPageTest, ArrowsMoveAndEnterOpens)
{
    const std::int64_t first = selected();
    press(Qt::Key_Down);
    EXPECT_NE(selected(), first);
    press(Qt::Key_Return);
    EXPECT_EQ(m_asked.page, QStringLiteral("client"));
    EXPECT_EQ(m_asked.client.value(), selected());
}

TEST_F(RosterPageTest, PrintingAsksForTheCardOfTheSelectedClient)
{
    QSignalSpy asked(m_page.get(), &RosterPage::cardAsked);
    QSignalSpy changed(m_page.get(), &shell::Page::pageChanged);
    ASSERT_TRUE(m_page->canPrint());
    m_page->print();
    ASSERT_EQ(asked.size(), 1);
    EXPECT_EQ(asked.front().front().value<base::ClientId>().value(), selected());
    field().setText(QStringLiteral("nobody of that name"));
    EXPECT_FALSE(m_page->canPrint());
    EXPECT_FALSE(changed.isEmpty());
}

TEST_F(RosterPageTest, TheFilterLeavesWhatFitsAndDownGoesIntoIt)
{
    field().setFocus();
    QTest::keyClicks(&field(), QStringLiteral("back"));
    ASSERT_EQ(table().model()->rowCount(), 1);
    QTest::keyClick(&field(), Qt::Key_Down);
    EXPECT_EQ(m_page->focusWidget(), &table());
    EXPECT_EQ(selected(), 2);
    EXPECT_TRUE(m_page->closeOrClear());
    EXPECT_EQ(table().model()->rowCount(), 3);
    EXPECT_TRUE(field().text().isEmpty());
    EXPECT_FALSE(m_page->closeOrClear());
}

TEST_F(RosterPageTest, EnterInTheFilterOpensWhatIsSelected)
{
    field().setFocus();
    QTest::keyClicks(&field(), QStringLiteral("zoe"));
    QTest::keyClick(&field(), Qt::Key_Return);
    EXPECT_EQ(m_asked.client, base::ClientId(3));
}

TEST_F(RosterPageTest, TheLoadLeadsToTheTrends)
{
    const std::int64_t client = selected();
    ASSERT_GT(client, 0);
    press(Qt::Key_T);
    EXPECT_EQ(m_asked.page, QStringLiteral("trends"));
    EXPECT_EQ(m_asked.client, base::ClientId(client));
    m_asked = {};
    const QRect load = table().visualRect(table().model()->index(0, 4));
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, load.center());
    EXPECT_EQ(m_asked.page, QStringLiteral("trends"));
}

TEST_F(RosterPageTest, TheOrderIsChosenByKeyboard)
{
    press(Qt::Key_O);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    EXPECT_GE(menu->actions().size(), 4);
    menu->actions().at(2)->trigger();
    menu->close();
    EXPECT_EQ(table().model()->index(0, 0).data(Qt::AccessibleTextRole).toString().left(6), QStringLiteral("Adaeze"));
}

TEST_F(RosterPageTest, ADigitRunsWhatNeedsAttentionAndALeadsThere)
{
    press(Qt::Key_1);
    EXPECT_EQ(m_asked.client, base::ClientId(3));
    EXPECT_EQ(m_asked.lift, lifts::Pattern::Squat);
    m_asked = {};
    press(Qt::Key_9);
    EXPECT_TRUE(m_asked.client.isNone());
    press(Qt::Key_A);
    auto* list = m_page->findChild<AttentionList*>();
    EXPECT_EQ(m_page->focusWidget(), list);
    QTest::keyClick(list, Qt::Key_Return);
    EXPECT_EQ(m_asked.client, base::ClientId(3));
}

TEST_F(RosterPageTest, AFailureKeepsTheRowsThatWereRead)
{
    m_source->isBroken = true;
    m_page->refresh();
    EXPECT_TRUE(QTest::qWaitFor([this] {
        for (const QWidget* widget : m_page->findChildren<QWidget*>()) {
            if (widget->isVisible() && widget->accessibleName().contains(QStringLiteral("the disk is gone"))) {
                return true;
            }
        }
        return false;
    }));
    EXPECT_EQ(table().model()->rowCount(), 3);
}

TEST_F(RosterPageTest, TheModelKeepsItsPromisesAndEverythingHasAName)
{
    const QAbstractItemModelTester tester(table().model(), QAbstractItemModelTester::FailureReportingMode::Warning);
    m_page->refresh();
    QTest::qWait(50);
    EXPECT_GT(tests::focusableCount(*m_page), 5);
    EXPECT_EQ(tests::unnamedFocusables(*m_page), QStringList());
}

TEST_F(RosterPageTest, WhoSeesNamesOnlyIsOfferedNothingElse)
{
    const std::size_t all = m_page->keyHints().size();
    const qsizetype actions = m_page->actions().size();
    make(RosterReach::Names);
    EXPECT_LT(m_page->actions().size(), actions);
    QStringList hints;
    for (const shell::KeyHint& hint : m_page->keyHints()) {
        hints.append(hint.does);
    }
    EXPECT_EQ(hints, (QStringList{QStringLiteral("Move"), QStringLiteral("Peek"), QStringLiteral("Order"), QStringLiteral("Filter")}));
    EXPECT_NE(m_page->keyHints().size(), all);
    EXPECT_FALSE(m_page->canPrint());
    EXPECT_FALSE(m_page->findChild<AttentionList*>()->isVisible());
    QSignalSpy cards(m_page.get(), &RosterPage::cardAsked);
    QSignalSpy places(m_page.get(), &shell::Page::placeAsked);
    const std::int64_t first = selected();
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_P, Qt::Key_T, Qt::Key_A, Qt::Key_I, Qt::Key_M, Qt::Key_1}) {
        table().setFocus();
        press(key);
    }
    QTest::keyClick(&field(), Qt::Key_Return);
    EXPECT_TRUE(cards.isEmpty());
    EXPECT_TRUE(places.isEmpty());
    table().setFocus();
    press(Qt::Key_Down);
    EXPECT_NE(selected(), first) << "the list itself is there";
    press(Qt::Key_Space);
    ASSERT_NE(QApplication::activePopupWidget(), nullptr);
    EXPECT_FALSE(QApplication::activePopupWidget()->accessibleName().contains(QStringLiteral("Squat"), Qt::CaseInsensitive));
    QTest::keyClick(QApplication::activePopupWidget(), Qt::Key_P);
    EXPECT_TRUE(cards.isEmpty());
}

}  // namespace chalk::ui::roster
