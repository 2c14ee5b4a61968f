#include "ui/direction/direction_desk.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/decision_reader.h"
#include "core/store/record_writer.h"
#include "core/store/week_settings.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

using chalk::direction::Direction;
using chalk::direction::FitNote;

/// Ada: a squat with an estimated single, a hinge on hold, a press that was never loaded, a caution about the lower back, two sessions a week.
class DirectionDeskTest : public ::testing::Test {
protected:
    DirectionCase read(base::Date day = test::smallStudioDay()) { return *m_desk.read(m_ada, day); }
    void undo(base::ActId act) { ASSERT_TRUE(store::RecordWriter(m_studio.database(), test::someMoment).undo(act)); }
    store::Result<store::ActOutcome> begin(const DirectionCase& client, Direction direction = Direction::Strength)
    {
        const DirectionOffer& offer = client.offer(direction);
        return m_desk.begin(m_ada, client.today, offer.plan, offer.singles);
    }
    static const DirectionLift& liftOf(const DirectionCase& client, lifts::Pattern pattern)
    {
        return *std::ranges::find_if(client.lifts, [pattern](const DirectionLift& one) { return one.lift.pattern == pattern; });
    }

    test::StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    DirectionDesk m_desk{m_studio.database(), m_catalogue, test::someMoment};
    const base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
};

TEST_F(DirectionDeskTest, ReadsWhatTheTabShows)
{
    const DirectionCase client = read();
    EXPECT_EQ(client.client.name, "Ada Lund");
    ASSERT_EQ(client.lifts.size(), 3U);
    EXPECT_EQ(client.lifts[0].name, "Back squat");
    EXPECT_FALSE(client.running);
    EXPECT_FALSE(client.over);
    EXPECT_FALSE(client.decided);
    EXPECT_FALSE(client.suggested()) << "a lift is on hold";
    EXPECT_EQ(client.cautions.size(), 1U) << "the other one is over";
    const auto& notes = client.offer(Direction::Strength).fit.notes;
    for (const FitNote note : {FitNote::FewerThanWanted, FitNote::LiftOnHold, FitNote::CareWithHeavyLoads, FitNote::FewLiftsGoneRound}) {
        EXPECT_NE(std::ranges::find(notes, note), notes.end());
    }
}

TEST_F(DirectionDeskTest, TheTalkIsDueHalfAYearAfterTheFirstLoad)
{
    const TalkState talk = read().talk;
    ASSERT_TRUE(talk.firstLoad);
    EXPECT_FALSE(talk.isDue);
    EXPECT_EQ(*talk.dueFrom, *talk.firstLoad + 180);  // progression: Direction
    EXPECT_EQ(*talk.dueEarly, *talk.firstLoad + 90);
    EXPECT_FALSE(read(*talk.firstLoad + 179).talk.isDue);
    EXPECT_TRUE(read(*talk.firstLoad + 180).talk.isDue);
}

TEST_F(DirectionDeskTest, OffersStartOnTheNextMondayWithTheLiftsThatWereLoaded)
{
    const DirectionCase client = read();
    for (const DirectionOffer& offer : client.offers) {
        EXPECT_EQ(offer.plan.wishes.start, *base::Date::parse("2026-11-30"));
        EXPECT_EQ(offer.plan.weeks.size(), 12U);
        EXPECT_EQ(offer.singles.size(), offer.plan.wishes.lifts.size());
    }
    const auto aside = asideLifts(client, client.offer(Direction::Strength).plan, client.offer(Direction::Strength).singles, false);
    ASSERT_EQ(aside.size(), 1U);
    EXPECT_EQ(aside[0].why, AsideWhy::OnHold);
    EXPECT_FALSE(startBarOf(client, client.offer(Direction::Strength)));
}

TEST_F(DirectionDeskTest, WhyNoPlanCanBegin)
{
    const auto bo = m_desk.read(test::clientNamed(m_studio.database(), "Bo Arden"), test::smallStudioDay());
    ASSERT_TRUE(bo);
    EXPECT_EQ(startBarOf(*bo, bo->offers[0]), StartBar::Clearance);
    DirectionCase client = read();
    DirectionOffer offer = client.offer(Direction::Strength);
    std::ranges::fill(offer.singles, chalk::direction::PlanSingle());
    EXPECT_EQ(startBarOf(client, offer), StartBar::NoSingle);
    std::erase_if(client.lifts, [](const DirectionLift& lift) { return !lift.lift.machine.state().isOnHold; });
    std::erase_if(offer.plan.wishes.lifts, [&client](const auto& one) { return client.lift(one.lift) == nullptr; });
    offer.singles.resize(offer.plan.wishes.lifts.size());
    EXPECT_EQ(startBarOf(client, offer), StartBar::AllOnHold);
    offer.plan.wishes.lifts.clear();
    EXPECT_EQ(startBarOf(client, offer), StartBar::NothingLoaded);
}

TEST_F(DirectionDeskTest, BeginsAPlanAndTakesItBack)
{
    const auto outcome = begin(read());
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    const DirectionCase during = read();
    ASSERT_TRUE(during.running);
    EXPECT_EQ(during.running->plan, read().offer(Direction::Strength).plan);
    EXPECT_EQ(during.running->begunOn, test::smallStudioDay());
    EXPECT_EQ(during.done.size(), during.running->plan.wishes.lifts.size());
    EXPECT_TRUE(liftOf(during, lifts::Pattern::Squat).lift.machine.state().block);
    EXPECT_FALSE(liftOf(during, lifts::Pattern::Hinge).lift.machine.state().block);
    undo(outcome->act);
    EXPECT_FALSE(read().running);
    EXPECT_FALSE(liftOf(read(), lifts::Pattern::Squat).lift.machine.state().block);
}

TEST_F(DirectionDeskTest, OneMoreCycleIsADecisionForTwelveWeeks)
{
    const auto outcome = m_desk.oneMoreCycle(m_ada, test::smallStudioDay());
    ASSERT_TRUE(outcome);
    const DirectionCase client = read();
    ASSERT_TRUE(client.decided);
    EXPECT_EQ(client.decided->about, checkin::FindingKind::Direction);
    EXPECT_EQ(client.decided->choice, checkin::ChoiceKind::Direction);
    EXPECT_EQ(client.decided->nextReview, test::smallStudioDay() + 84);
    EXPECT_EQ(client.decided->note, "One more cycle");
    undo(outcome->act);
    EXPECT_FALSE(read().decided);
}

TEST_F(DirectionDeskTest, APlanThatWasEndedIsOverUntilSomethingIsDecided)
{
    ASSERT_TRUE(begin(read()));
    const base::Date later = test::smallStudioDay() + 20;
    ASSERT_TRUE(m_desk.end(*read(later).running, later));
    const DirectionCase over = read(later);
    EXPECT_FALSE(over.running);
    ASSERT_TRUE(over.over);
    EXPECT_EQ(over.done.size(), over.over->plan.wishes.lifts.size());
    EXPECT_FALSE(liftOf(over, lifts::Pattern::Squat).lift.machine.state().block);
    ASSERT_TRUE(m_desk.oneMoreCycle(m_ada, later));
    EXPECT_FALSE(read(later).over);
}

TEST_F(DirectionDeskTest, ALiftThatWasReleasedTakesThePlanUp)
{
    ASSERT_TRUE(begin(read()));
    const base::LiftId hinge = liftOf(read(), lifts::Pattern::Hinge).lift.lift;
    store::RecordWriter record(m_studio.database(), test::someMoment);
    progression::CoachSet loaded;
    loaded.stage = progression::Stage::LoadBuild;
    loaded.load = base::Load::fromCenti(6000);
    loaded.reason = "well again";
    ASSERT_TRUE(record.record(m_ada, {}, {{hinge, {test::smallStudioDay(), progression::Release{"seen by the physio"}}}}));
    ASSERT_TRUE(record.record(m_ada, {}, {{hinge, {test::smallStudioDay(), loaded}}}));
    ASSERT_TRUE(record.record(m_ada, {}, {{hinge, {test::smallStudioDay(), test::exposureOf({{60, 6, 3}})}}}));
    const DirectionCase client = read();
    const auto aside = asideLifts(client, client.running->plan, client.running->singles, true);
    ASSERT_EQ(aside.size(), 1U);
    EXPECT_EQ(aside[0].why, AsideWhy::LeftThePlan);
    ASSERT_TRUE(m_desk.change(withLiftsTakenUp(client), test::smallStudioDay(), client.running));
    EXPECT_TRUE(liftOf(read(), lifts::Pattern::Hinge).lift.machine.state().block);
    EXPECT_TRUE(liftOf(read(), lifts::Pattern::Squat).lift.machine.state().block);
}

TEST_F(DirectionDeskTest, OnlyWholeDaysOfTheWholeStudioAreClosed)
{
    store::WeekSettings settings(m_studio.database());
    week::Closure feast;
    feast.first = *base::Date::parse("2026-12-24");
    feast.last = *base::Date::parse("2027-01-02");
    week::Closure away = feast;
    away.coach = base::CoachId(1);
    week::Closure evening = feast;
    evening.fromMinute = 18 * 60;
    for (const week::Closure& closure : {feast, away, evening}) {
        ASSERT_TRUE(settings.addClosure(closure));
    }
    EXPECT_EQ(read().closures, (std::vector{ClosedDays{feast.first, feast.last}}));
}

TEST_F(DirectionDeskTest, NobodyWithThatIdIsAFault)
{
    EXPECT_FALSE(m_desk.read(base::ClientId(999), test::smallStudioDay()));
}

}  // namespace chalk::ui::direction
