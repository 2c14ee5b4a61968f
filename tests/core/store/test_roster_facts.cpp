#include "core/store/roster_facts.h"

#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

void expectSame(const checkin::ClientFacts& a, const checkin::ClientFacts& b)
{
    EXPECT_EQ(a.clearance, b.clearance);
    EXPECT_EQ(a.lastSessions, b.lastSessions);
    EXPECT_EQ(a.lastCame, b.lastCame);
    EXPECT_EQ(a.isBooked, b.isBooked);
    EXPECT_EQ(a.startedOn, b.startedOn);
    EXPECT_EQ(a.awayUntil, b.awayUntil);
    EXPECT_EQ(a.direction, b.direction);
    ASSERT_EQ(a.lifts.size(), b.lifts.size());
    for (std::size_t i = 0; i < a.lifts.size(); ++i) {
        EXPECT_EQ(a.lifts[i].pattern, b.lifts[i].pattern);
        EXPECT_EQ(a.lifts[i].exerciseKey, b.lifts[i].exerciseKey);
        EXPECT_EQ(a.lifts[i].stage, b.lifts[i].stage);
        EXPECT_EQ(a.lifts[i].isOnHold, b.lifts[i].isOnHold);
        EXPECT_EQ(a.lifts[i].flags, b.lifts[i].flags);
        EXPECT_EQ(a.lifts[i].stageSince, b.lifts[i].stageSince);
        EXPECT_EQ(a.lifts[i].lastWork, b.lifts[i].lastWork);
        EXPECT_EQ(a.lifts[i].firstWork, b.lifts[i].firstWork);
    }
}

}  // namespace

TEST(RosterFacts, AreTheSameOfTheRosterAndOfAFile)
{
    test::StudioOnTest studio;
    for (int later = 0; later < 60; later += 20) {
        const base::Date day = test::smallStudioDay() + later;
        const auto roster = RosterReader(studio.database()).read(day).value();
        ASSERT_FALSE(roster.empty());
        for (const RosterEntry& entry : roster) {
            const auto file = ClientReader(studio.database()).read(entry.client.id, day).value();
            const auto sessions = SessionReader(studio.database()).of(entry.client.id).value();
            expectSame(factsOf(entry), factsOf(file, sessions, day));
        }
    }
}

TEST(RosterFacts, ALayoffChangesStageAndFlagsFromTwoWeeksOn)
{
    checkin::LiftFacts lift;
    lift.stage = progression::Stage::LoadBuild;
    lift.lastWork = test::smallStudioDay();
    lift.stageSince = test::smallStudioDay() - 30;
    EXPECT_FALSE(mayHaveLayoff(lift, test::smallStudioDay() + 13));
    EXPECT_TRUE(mayHaveLayoff(lift, test::smallStudioDay() + 14));
    progression::Prescription next;
    next.stage = progression::Stage::LoadBuild;
    next.flags.raise(progression::Flag::Stalled);
    applyLayoff(lift, next);
    EXPECT_TRUE(lift.stageSince);
    EXPECT_TRUE(lift.flags.has(progression::Flag::Stalled));
    next.stage = progression::Stage::Control;
    applyLayoff(lift, next);
    EXPECT_EQ(lift.stage, progression::Stage::Control);
    EXPECT_FALSE(lift.stageSince);
    lift.stage = progression::Stage::BaseLoad;
    lift.isOnHold = true;
    EXPECT_FALSE(mayHaveLayoff(lift, test::smallStudioDay() + 100));
}

}  // namespace chalk::store
