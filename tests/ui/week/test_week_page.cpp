#include "ui/week/week_page.h"

#include "core/store/server_logins.h"
#include "core/store/week_settings.h"
#include "tests/support/accessible_audit.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/ui/week/week_studio_fixture.h"
#include "ui/common/empty_state.h"
#include "ui/common/look.h"
#include "ui/week/left_over_tray.h"
#include "ui/week/month_grid.h"
#include "ui/week/proposal_bar.h"
#include "ui/week/slot_menu.h"
#include "ui/week/week_grid.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QListView>
#include <QMenu>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

namespace chalk::ui::week {

using chalk::week::kDayMinutes;
using test::weekMinute;

class WeekPageTest : public test::WeekStudioTest {
protected:
    WeekPageTest()
    {
        m_page.resize(1360, 856);
        m_page.setRoom(false, false);
        m_page.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_page));
        m_page.open({});
        EXPECT_TRUE(offersAreThere());
    }

    const WeekDesk& desk() const { return m_page.desk(); }
    const ProposalWords& bar() { return m_page.findChild<ProposalBar*>()->words(); }
    LeftOverModel& tray() { return *m_page.findChild<LeftOverModel*>(); }
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) { QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(key), modifiers); }
    void fill()
    {
        press(Qt::Key_F);
        EXPECT_TRUE(QTest::qWaitFor([this] { return !m_page.isFilling(); }, 20'000));
    }

    /// Waits until it is worked out what would help.
    bool offersAreThere()
    {
        return QTest::qWaitFor([this] { return !m_page.isLookingForOffers(); }, 20'000);
    }
    /// Ines is ill today.
    void awayToday()
    {
        EXPECT_TRUE(store::WeekSettings(m_studio.database()).addClosure({today(), today(), 8 * 60, 20 * 60, base::CoachId(1), {}, 0, "ill"}));
        m_page.refresh();
        EXPECT_TRUE(offersAreThere());
    }

    const common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
    WeekPage m_page{{m_look, studio(), m_dialogs}};
};

TEST_F(WeekPageTest, TheWeekOfTodayIsShownWithTheFocusOnTheNextSession)
{
    EXPECT_EQ(QApplication::focusWidget(), m_page.grid());
    ASSERT_NE(m_page.grid()->selectedBlock(), nullptr);
    EXPECT_TRUE(m_page.grid()->selectedBlock()->isNext);
    EXPECT_EQ(tray().rowCount(), 2);
    EXPECT_TRUE(bar().lead.isEmpty());
    EXPECT_TRUE(m_page.canPrint());
    const QAbstractItemModelTester tester(&tray(), QAbstractItemModelTester::FailureReportingMode::Fatal);
}

TEST_F(WeekPageTest, FillingProposesEnterKeepsAndUndoTakesItBack)
{
    const QSignalSpy changed(&m_page, &shell::Page::studioChanged);
    const QStringList before = bookings();
    fill();
    EXPECT_EQ(desk().proposed(), 1);
    EXPECT_EQ(bar().lead, QStringLiteral("1 session proposed,"));
    EXPECT_EQ(bookings(), before);
    press(Qt::Key_Return);
    EXPECT_EQ(desk().proposed(), 0);
    EXPECT_EQ(bookings().size(), 2);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_TRUE(bar().lead.isEmpty());
    m_acts.undo();
    m_page.refresh();
    EXPECT_EQ(bookings(), before);
}

TEST_F(WeekPageTest, EscDropsWhatIsProposed)
{
    fill();
    EXPECT_TRUE(m_page.closeOrClear());
    EXPECT_EQ(desk().proposed(), 0);
    EXPECT_FALSE(m_page.closeOrClear());
}

TEST_F(WeekPageTest, AProposalIsKeptByAClick)
{
    fill();
    const WeekScene& scene = desk().scene();
    const auto at = std::find_if(scene.blocks.begin(), scene.blocks.end(), [](const WeekBlock& block) { return block.state == BlockState::Proposed; });
    ASSERT_NE(at, scene.blocks.end());
    const QPoint point = (m_page.grid()->geometryNow().blockRect(*at).center() - m_page.grid()->offset()).toPoint();
    QTest::mouseClick(m_page.grid()->viewport(), Qt::LeftButton, {}, point);
    EXPECT_EQ(desk().proposed(), 0);
    EXPECT_EQ(bookings().size(), 2);
}

TEST_F(WeekPageTest, KeysLockMoveAndTakeAway)
{
    press(Qt::Key_L);
    EXPECT_TRUE(m_page.grid()->selectedBlock()->isLocked);
    press(Qt::Key_L);
    EXPECT_FALSE(m_page.grid()->selectedBlock()->isLocked);
    press(Qt::Key_M);
    EXPECT_TRUE(m_page.grid()->isMoving());
    EXPECT_TRUE(bar().lead.startsWith(QStringLiteral("Ada: Tue 09:00"))) << bar().lead.toStdString();
    for (int i = 0; i < 4; ++i) {
        press(Qt::Key_Down);
    }
    press(Qt::Key_Return);
    EXPECT_EQ(m_page.grid()->selectedBlock()->start(), weekMinute(1, 10)) << desk().refusal().toStdString();
    press(Qt::Key_Delete);
    EXPECT_TRUE(bookings().isEmpty());
    m_acts.undo();
    m_page.refresh();
    EXPECT_EQ(bookings().size(), 1);
}

TEST_F(WeekPageTest, AnEmptyWeekOffersTheTimesOfTheLast)
{
    press(Qt::Key_PageDown);
    auto* empty = m_page.findChild<common::EmptyState*>();
    EXPECT_TRUE(empty->isVisible());
    press(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_FALSE(empty->isVisible());
    EXPECT_EQ(desk().proposed(), 1);
    press(Qt::Key_T);
    EXPECT_EQ(desk().monday(), today() - 1);
    EXPECT_EQ(desk().proposed(), 0);
}

TEST_F(WeekPageTest, TheTrayTakesItsOffer)
{
    auto* list = m_page.findChild<QListView*>();
    list->setFocus();
    list->setCurrentIndex(tray().index(0));
    press(Qt::Key_Return);
    EXPECT_EQ(bookings().size(), 2) << "put on the nearest free place";
    EXPECT_TRUE(offersAreThere());
    QSignalSpy asked(&m_page, &shell::Page::placeAsked);
    list->setCurrentIndex(tray().index(0));
    press(Qt::Key_Return);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.front().front().value<shell::Place>().tab, QStringLiteral("health"));
}

TEST_F(WeekPageTest, TheMenuOfASlotSaysWhatCanBeDone)
{
    bool isMissed = false;
    SlotActs acts;
    acts.setState = [&isMissed](const BlockMember&, sessions::SessionState state) { isMissed = state == sessions::SessionState::Missed; };
    QMenu menu;
    fillSlotMenu(menu, desk(), desk().scene().blocks.front(), m_clock, acts);
    QMenu* own = menu.actions().front()->menu();
    ASSERT_NE(own, nullptr);
    for (QAction* action : own->actions()) {
        if (action->text().remove(QLatin1Char('&')) == QStringLiteral("Missed")) {
            action->trigger();
        }
    }
    EXPECT_TRUE(isMissed);
}

TEST_F(WeekPageTest, AMonthIsShownByTheDayAndOpensAWeek)
{
    press(Qt::Key_M, Qt::AltModifier);
    auto* month = m_page.findChild<MonthGrid*>();
    ASSERT_TRUE(month->isVisible());
    press(Qt::Key_PageUp);
    EXPECT_EQ(desk().monday(), *base::Date::fromYmd(2026, 10, 12)) << "the middle of the month before";
    press(Qt::Key_PageDown);
    const base::Date day = today() - 14;
    QTest::mouseClick(month, Qt::LeftButton, {}, month->cellRect(day).center().toPoint());
    EXPECT_FALSE(month->isVisible());
    EXPECT_EQ(desk().monday(), day - day.weekday());
}

TEST_F(WeekPageTest, OnPaperIsWhatIsSaved)
{
    fill();
    QSignalSpy asked(&m_page, &WeekPage::weekPaperAsked);
    m_page.print();
    EXPECT_EQ(asked.count(), 1);
    const print::RosterWeek paper = desk().onPaper();
    EXPECT_EQ(paper.title, QStringLiteral("Small Studio"));
    EXPECT_EQ(paper.bookings.size(), 1U);
}

TEST_F(WeekPageTest, AfterAChangeOnlyWhatMustMoveMovesAndSaysWhoHasToBeTold)
{
    awayToday();
    ASSERT_EQ(desk().scene().faults.size(), 1U);
    const QStringList before = bookings();
    press(Qt::Key_R);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_page.isFilling(); }, 20'000));
    ASSERT_EQ(desk().changes().size(), 1U);
    EXPECT_TRUE(bar().lead.startsWith(QStringLiteral("1 session moves"))) << bar().lead.toStdString();
    EXPECT_EQ(bar().text, QStringLiteral("To be told: Ada. Nothing is saved until you keep it."));
    EXPECT_EQ(bookings(), before);
    EXPECT_TRUE(m_page.findChild<LeftOverModel*>()->item(0).isChange);
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_NE(bookings(), before);
    EXPECT_EQ(bar().text, QStringLiteral("One person has to be told."));
    press(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(QApplication::clipboard()->text().startsWith(QStringLiteral("Ada, your session on Tue 24 Nov 09:00 with Ines moves to"))) << QApplication::clipboard()->text().toStdString();
    EXPECT_TRUE(m_page.closeOrClear());
    EXPECT_TRUE(bar().lead.isEmpty());
    m_acts.undo();
    m_page.refresh();
    EXPECT_EQ(bookings(), before);
}

TEST_F(WeekPageTest, AWeekWithoutAFaultStaysAsItIs)
{
    fill();
    press(Qt::Key_Return);
    const QStringList before = bookings();
    press(Qt::Key_R);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !m_page.isFilling(); }, 20'000));
    EXPECT_EQ(bar().lead, QStringLiteral("Nothing has to move."));
    EXPECT_EQ(desk().proposed(), 0);
    EXPECT_EQ(bookings(), before);
}

TEST_F(WeekPageTest, AClickOnTheOfferBesideAConflictTakesIt)
{
    awayToday();
    const LeftOverItem item = tray().item(0);
    ASSERT_EQ(item.kind, OfferKind::Place) << item.offer.toStdString();
    const WeekBlock& block = desk().scene().blocks[*desk().scene().blockOf(*item.wish)];
    const QRectF rect = m_page.grid()->geometryNow().blockRect(block);
    const QPoint below = (rect.bottomLeft() + QPointF(20, 14) - m_page.grid()->offset()).toPoint();
    QTest::mouseClick(m_page.grid()->viewport(), Qt::LeftButton, {}, below);
    EXPECT_TRUE(desk().scene().faults.empty());
}

TEST_F(WeekPageTest, TheWeekLeavesAsACalendarATableAndLines)
{
    const QTemporaryDir folder;
    m_dialogs.paths = {folder.filePath(QStringLiteral("ines.ics")), folder.filePath(QStringLiteral("week.csv")), folder.filePath(QStringLiteral("no/such/week.csv"))};
    const WeekToSend week{desk().monday(), desk().bookings(), QStringLiteral("2026-11-24T08:42:00Z")};
    const SendingOutcome calendar = saveCalendar(week, {{{}, std::string("1")}, QStringLiteral("Ines")}, m_dialogs, &m_page);
    EXPECT_EQ(calendar.file, folder.filePath(QStringLiteral("ines.ics"))) << calendar.failure.toStdString();
    EXPECT_EQ(m_dialogs.askedFiles.front().suggestion, QStringLiteral("week-2026-W48-ines.ics"));
    EXPECT_FALSE(saveTable(week, m_dialogs, &m_page).file.isEmpty());
    QFile table(folder.filePath(QStringLiteral("week.csv")));
    ASSERT_TRUE(table.open(QIODevice::ReadOnly));
    EXPECT_EQ(table.readAll().count("\r\n"), 2) << "a header and Ada's booking";
    const SendingOutcome failed = saveTable(week, m_dialogs, &m_page);
    EXPECT_TRUE(failed.failure.contains(QStringLiteral("no/such/week.csv"))) << failed.failure.toStdString();
    EXPECT_TRUE(saveTable(week, m_dialogs, &m_page).failure.isEmpty()) << "called off";
    EXPECT_EQ(copyLines(week, {}), 1);
    EXPECT_EQ(QApplication::clipboard()->text(), QStringLiteral("Tue 24 Nov 09:00, 60 min with Ines\n"));
}

TEST_F(WeekPageTest, EverythingHasAName)
{
    EXPECT_GT(tests::focusableCount(m_page), 5);
    EXPECT_EQ(tests::unnamedFocusables(m_page), QStringList());
}

TEST_F(WeekPageTest, TheFrontDeskBooksAndHasNoKeysForCardsBoardsAndHours)
{
    if (!m_studio.database().isOnServer()) {
        GTEST_SKIP() << "a file has an owner only";
    }
    const QString login = QStringLiteral("w%1_desk").arg(QCoreApplication::applicationPid());
    const QString password = QStringLiteral("a long enough one");
    const auto added = store::ServerLogins(m_studio.database()).add({login, store::Role::FrontDesk, "Piet"}, password);
    ASSERT_TRUE(added) << added.error().message.toStdString();
    store::Access access(QString(m_studio.file()).replace(QStringLiteral("chalk@"), login + QLatin1Char('@')));
    access.password = password;
    auto database = store::Database::open(access, store::OpenMode::MustExist).value();
    {
        const WeekStudio atDesk{*database, m_catalogue, m_clock, m_acts, test::someMoment};
        WeekPage page({m_look, atDesk, m_dialogs});
        page.resize(1360, 856);
        page.setRoom(false, false);
        page.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
        page.open({});
        EXPECT_TRUE(QTest::qWaitFor([&page] { return !page.isLookingForOffers(); }, 20'000));
        EXPECT_FALSE(page.desk().scene().isEmpty()) << page.desk().failure().toStdString();
        QStringList actions;
        for (const QAction* action : page.actions()) {
            actions.append(action->text());
        }
        EXPECT_TRUE(actions.contains(QStringLiteral("Add a session")));
        EXPECT_FALSE(actions.contains(QStringLiteral("The cards of the week")));
        EXPECT_FALSE(actions.contains(QStringLiteral("Hours and closures")));
        for (const LeftOverItem& item : page.desk().items()) {
            EXPECT_TRUE(item.kind != OfferKind::OpenHealth && item.kind != OfferKind::OpenHours && item.kind != OfferKind::EditHours &&
                        item.kind != OfferKind::OneFewer && item.kind != OfferKind::UsualNumber)
                << item.offer.toStdString();
        }
    }
    database.reset();
    EXPECT_TRUE(store::ServerLogins(m_studio.database()).remove(login));
}

}  // namespace chalk::ui::week
