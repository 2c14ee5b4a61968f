#include "ui/week/week_desk.h"

#include "core/store/session_reader.h"
#include "core/store/week_changes.h"
#include "core/store/week_settings.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/ui/week/week_studio_fixture.h"
#include "ui/common/write_desk.h"

namespace chalk::ui::week {

using chalk::week::Slot;
using test::weekMinute;

class WeekDeskTest : public test::WeekStudioTest {
protected:
    WeekDeskTest() { m_desk.read(); }

    /// Ada's booking of today, and the session that she has no place for.
    static constexpr std::size_t kBooked = 0;
    static constexpr std::size_t kMissing = 1;

    WeekDesk m_desk{studio()};
};

TEST_F(WeekDeskTest, ReadsTheWeekOfToday)
{
    ASSERT_TRUE(m_desk.failure().isEmpty()) << m_desk.failure().toStdString();
    EXPECT_EQ(m_desk.monday(), today() - 1);
    EXPECT_EQ(m_desk.placed(), 1);
    EXPECT_EQ(m_desk.wanted(), 3);
    EXPECT_EQ(m_desk.leftOver(), 2);
    ASSERT_EQ(m_desk.items().size(), 2U);
    EXPECT_EQ(m_desk.items()[0].name, QStringLiteral("Ada Lund"));
    EXPECT_EQ(m_desk.items()[1].kind, OfferKind::OpenHealth);
    EXPECT_EQ(m_desk.strip().weeks.size(), static_cast<std::size_t>(kStripWeeks));
    EXPECT_EQ(m_desk.strip().weeks[kWeeksBefore].days[1].sessions, 1);
}

TEST_F(WeekDeskTest, OneFewerThisWeekCanBeTakenBack)
{
    const base::ClientId ada = m_desk.facts().clients.front().client.id;
    EXPECT_TRUE(m_desk.wantOneFewer(ada)) << m_desk.refusal().toStdString();
    EXPECT_EQ(m_desk.wanted(), 2);
    const auto& items = m_desk.items();
    EXPECT_TRUE(std::any_of(items.begin(), items.end(), [ada](const LeftOverItem& one) { return one.client == ada && one.kind == OfferKind::UsualNumber; }));
    m_desk.goTo(today() + 7);
    EXPECT_EQ(m_desk.facts().clients.front().sessionsWanted(), 2) << "the week after is as usual";
    m_desk.goTo(today());
    EXPECT_TRUE(m_desk.wantUsual(ada));
    EXPECT_EQ(m_desk.wanted(), 3);
}

TEST_F(WeekDeskTest, ANumberOfSessionsThatSomebodyElseSetMeanwhileIsNotWrittenOver)
{
    const base::ClientId ada = m_desk.facts().clients.front().client.id;
    tests::ScriptedDialogs dialogs;
    common::WriteDesk writes(m_studio.database(), dialogs, test::someMoment, m_studio.folder() + QStringLiteral("/waiting.jsonl"));
    WeekStudio shared = studio();
    shared.writes = &writes;
    WeekDesk desk(shared);
    desk.goTo(today());
    store::WeekSettings settings(m_studio.database());
    ASSERT_TRUE(settings.setQuota(ada, desk.monday(), 3));
    EXPECT_FALSE(desk.wantOneFewer(ada)) << "theirs is kept where nothing else is said";
    ASSERT_EQ(dialogs.asked.size(), 1U);
    EXPECT_EQ(dialogs.asked[0].versions, (std::vector<common::VersionRow>{{QStringLiteral("Sessions"), QStringLiteral("1"), QStringLiteral("3")}}));
    EXPECT_EQ(settings.quotas(desk.monday())->at(ada), 3);
    EXPECT_EQ(desk.facts().clients.front().sessionsWanted(), 3) << "theirs is on show";
    ASSERT_TRUE(settings.setQuota(ada, desk.monday(), 0));
    dialogs.answers = {1};
    EXPECT_TRUE(desk.wantUsual(ada)) << desk.refusal().toStdString();
    EXPECT_TRUE(settings.quotas(desk.monday())->empty());
    EXPECT_EQ(dialogs.asked.size(), 2U);
}

TEST_F(WeekDeskTest, AMonthHasAllOfItsWeeks)
{
    const MonthWeeks november = m_desk.monthOf(today());
    ASSERT_EQ(november.weeks.size(), 6U);
    EXPECT_EQ(november.weeks.front().monday, *base::Date::fromYmd(2026, 10, 26));
    EXPECT_EQ(november.weeks.back().monday, *base::Date::fromYmd(2026, 11, 30));
}

TEST_F(WeekDeskTest, MovesABookingAndUndoTakesItBack)
{
    const QStringList before = bookings();
    EXPECT_TRUE(m_desk.move({kBooked}, {0, weekMinute(3, 10)})) << m_desk.refusal().toStdString();
    EXPECT_NE(bookings(), before);
    EXPECT_EQ(m_desk.plan()[kBooked], (Slot{0, weekMinute(3, 10)}));
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("Ada moved to Thu 10:00"));
    m_acts.undo();
    m_desk.read();
    EXPECT_EQ(bookings(), before);
    EXPECT_EQ(m_desk.plan()[kBooked], (Slot{0, weekMinute(1, 9)}));
}

TEST_F(WeekDeskTest, WhereARuleIsBrokenNothingMovesAndTheRuleIsSaid)
{
    const QStringList before = bookings();
    EXPECT_FALSE(m_desk.move({kBooked}, {0, weekMinute(1, 7)}));
    EXPECT_FALSE(m_desk.refusal().isEmpty());
    EXPECT_FALSE(m_desk.move({kBooked}, {1, weekMinute(3, 10)}));
    EXPECT_EQ(m_desk.refusal(), QStringLiteral("Ada does not go to Tobias."));
    EXPECT_EQ(bookings(), before);
    const std::vector<Slot> closed = m_desk.closedFor({kBooked});
    EXPECT_NE(std::find(closed.begin(), closed.end(), Slot{1, weekMinute(3, 10)}), closed.end());
    EXPECT_EQ(std::find(closed.begin(), closed.end(), Slot{0, weekMinute(3, 10)}), closed.end());
}

TEST_F(WeekDeskTest, WhatIsLeftOverIsBookedWhereItIsPut)
{
    EXPECT_TRUE(m_desk.move({kMissing}, {0, weekMinute(4, 11)})) << m_desk.refusal().toStdString();
    EXPECT_EQ(bookings().size(), 2);
    EXPECT_EQ(m_desk.placed(), 2);
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("Ada booked for Fri 11:00"));
}

TEST_F(WeekDeskTest, ALockedSessionDoesNotMove)
{
    const WeekBlock block = m_desk.scene().blocks.front();
    EXPECT_TRUE(m_desk.toggleLock(block)) << m_desk.refusal().toStdString();
    EXPECT_TRUE(m_desk.scene().blocks.front().isLocked);
    EXPECT_FALSE(m_desk.move({kBooked}, {0, weekMinute(3, 10)}));
    EXPECT_TRUE(m_desk.refusal().endsWith(QStringLiteral("L unlocks it."))) << m_desk.refusal().toStdString();
    EXPECT_TRUE(m_desk.toggleLock(WeekBlock(m_desk.scene().blocks.front())));
    EXPECT_FALSE(m_desk.scene().blocks.front().isLocked);
}

TEST_F(WeekDeskTest, ProposalsAreSavedOnlyWhenTheyAreKept)
{
    const QStringList before = bookings();
    chalk::week::WeekPlan plan = m_desk.plan();
    plan[kMissing] = Slot{0, weekMinute(4, 11)};
    m_desk.propose(plan);
    EXPECT_EQ(m_desk.proposed(), 1);
    EXPECT_EQ(m_desk.leftOver(), 1);
    EXPECT_EQ(bookings(), before);
    m_desk.dropProposals();
    EXPECT_EQ(m_desk.proposed(), 0);
    m_desk.propose(plan);
    EXPECT_TRUE(m_desk.move({kMissing}, {0, weekMinute(4, 12)}));
    EXPECT_EQ(bookings(), before) << "a proposal that is moved stays one";
    EXPECT_TRUE(m_desk.keepAll()) << m_desk.refusal().toStdString();
    EXPECT_EQ(m_desk.proposed(), 0);
    EXPECT_EQ(bookings().size(), 2);
    EXPECT_FALSE(m_desk.keepAll()) << "nothing is left to keep";
    m_acts.undo();
    m_desk.read();
    EXPECT_EQ(bookings(), before);
}

TEST_F(WeekDeskTest, AProposalOutlivesAnotherChange)
{
    chalk::week::WeekPlan plan = m_desk.plan();
    plan[kMissing] = Slot{0, weekMinute(4, 11)};
    m_desk.propose(plan);
    EXPECT_TRUE(m_desk.toggleLock(WeekBlock(m_desk.scene().blocks.front())));
    EXPECT_EQ(m_desk.proposed(), 1);
    EXPECT_EQ(m_desk.plan()[kMissing], (Slot{0, weekMinute(4, 11)}));
}

TEST_F(WeekDeskTest, LastWeeksTimesAreProposedForAnEmptyWeek)
{
    m_desk.goTo(today() + 7);
    EXPECT_EQ(m_desk.placed(), 0);
    EXPECT_EQ(m_desk.proposeLastWeek(), 1);
    ASSERT_EQ(m_desk.scene().blocks.size(), 1U);
    EXPECT_EQ(m_desk.scene().blocks[0].start(), weekMinute(1, 9));
    EXPECT_TRUE(m_desk.keepAll());
    EXPECT_EQ(bookings().size(), 2);
}

TEST_F(WeekDeskTest, TakenAwayOrMissedItLeavesItsPlaceAndUndoBringsItBack)
{
    const QStringList before = bookings();
    EXPECT_TRUE(m_desk.takeAway(std::vector<BlockMember>(m_desk.scene().blocks.front().members)));
    EXPECT_TRUE(bookings().isEmpty());
    m_acts.undo();
    m_desk.read();
    EXPECT_EQ(bookings(), before);
    EXPECT_TRUE(m_desk.setState(BlockMember(m_desk.scene().blocks.front().members.front()), sessions::SessionState::Missed));
    EXPECT_EQ(m_desk.scene().blocks.front().taken(), 0);
    m_acts.undo();
    m_desk.read();
    EXPECT_EQ(bookings(), before);
}

TEST_F(WeekDeskTest, ABookingThatSomebodyElseMovedIsNotTakenAwayUnseen)
{
    const BlockMember member = m_desk.scene().blocks.front().members.front();
    const auto second = store::Database::open(m_studio.file(), store::OpenMode::MustExist).value();
    const auto sessions = store::SessionReader(*second).of(member.client).value();
    const auto at = std::find_if(sessions.begin(), sessions.end(), [&member](const store::NamedSession& one) { return one.session.id == member.booking; });
    ASSERT_NE(at, sessions.end());
    chalk::week::BookingPlace place = store::placeOf(at->session);
    place.isLocked = !place.isLocked;
    ASSERT_TRUE(store::SessionWriter(*second, test::someMoment).move(member.booking, place));
    const QStringList before = bookings();
    EXPECT_FALSE(m_desk.takeAway({member}));
    EXPECT_FALSE(m_desk.refusal().isEmpty());
    EXPECT_EQ(bookings(), before);
    EXPECT_TRUE(m_desk.takeAway({m_desk.scene().blocks.front().members.front()})) << "what the other one did is on show now";
    EXPECT_NE(bookings(), before);
}

TEST_F(WeekDeskTest, ABookingThatTheStoreRefusesIsSaid)
{
    sessions::Session session;
    session.client = base::ClientId(1);
    session.coach = base::CoachId(1);
    session.date = today();
    session.startMinute = 540;
    session.place = "Floor";
    EXPECT_FALSE(m_desk.book(session));
    EXPECT_FALSE(m_desk.refusal().isEmpty());
    session.startMinute = 900;
    EXPECT_TRUE(m_desk.book(session)) << m_desk.refusal().toStdString();
    EXPECT_TRUE(m_desk.refusal().isEmpty());
    EXPECT_FALSE(m_desk.scene().faults.empty()) << "two on one day: booked by hand, and shown as what it is";
}

}  // namespace chalk::ui::week
