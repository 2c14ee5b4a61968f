#include "core/direction/block_plan.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::test {

namespace {

using direction::Phase;
using direction::WeekKind;

direction::PlanWishes soundWishes()
{
    return {direction::Direction::Strength, direction::Wave::Linear, 12, 3, true, base::Date::fromYmd(2026, 11, 30).value(),
            {{base::LiftId(1), direction::LiftRole::Main, 2}}};
}

}  // namespace

TEST(BlockPlan, WishesThatCannotBeAreNamed)
{
    EXPECT_FALSE(faultOf(soundWishes()).has_value());
    auto wishes = soundWishes();
    wishes.weeks = 7;
    EXPECT_EQ(faultOf(wishes)->field, "weeks");
    wishes.weeks = 17;
    EXPECT_EQ(faultOf(wishes)->field, "weeks");
    wishes = soundWishes();
    wishes.sessionsAWeek = 0;
    EXPECT_EQ(faultOf(wishes)->field, "sessions");
    wishes = soundWishes();
    wishes.start = wishes.start + 1;
    EXPECT_EQ(faultOf(wishes)->field, "start");
    wishes = soundWishes();
    wishes.lifts.clear();
    EXPECT_EQ(faultOf(wishes)->field, "lifts");
    wishes = soundWishes();
    wishes.lifts[0].exposures = 4;
    EXPECT_EQ(faultOf(wishes)->field, "exposures");
}

TEST(BlockPlan, TwelveWeeksAreThreeOfEachPhaseTwoLighterOnesAndATest)
{
    const auto frames = direction::weekFrames(12, true);
    const auto count = [&](Phase phase, WeekKind kind) {
        return std::count_if(frames.begin(), frames.end(), [&](const auto& f) { return f.phase == phase && f.kind == kind; });
    };
    ASSERT_EQ(frames.size(), 12U);
    EXPECT_EQ(count(Phase::Base, WeekKind::Work), 3);
    EXPECT_EQ(count(Phase::Build, WeekKind::Work), 3);
    EXPECT_EQ(count(Phase::Peak, WeekKind::Work), 3);
    EXPECT_EQ(frames[3].kind, WeekKind::Lighter);
    EXPECT_EQ(frames[7].kind, WeekKind::Lighter);
    EXPECT_EQ(frames[11].kind, WeekKind::Test);
}

TEST(BlockPlan, EveryLengthHasItsWeeksAndNoPhaseGoesBack)
{
    for (int weeks = direction::kLeastWeeks; weeks <= direction::kMostWeeks; ++weeks) {
        for (const bool endsWithTest : {true, false}) {
            const auto frames = direction::weekFrames(weeks, endsWithTest);
            ASSERT_EQ(frames.size(), static_cast<std::size_t>(weeks));
            EXPECT_EQ(frames.back().kind, endsWithTest ? WeekKind::Test : WeekKind::Work) << weeks;
            EXPECT_TRUE(std::is_sorted(frames.begin(), frames.end(), [](const auto& a, const auto& b) { return a.phase < b.phase; })) << weeks;
            for (std::size_t i = 1; i < frames.size(); ++i) {
                EXPECT_FALSE(frames[i].kind == WeekKind::Lighter && frames[i - 1].kind == WeekKind::Lighter) << weeks;
                EXPECT_LT(frames[i].step, frames[i].steps);
            }
            if (endsWithTest) {
                EXPECT_EQ(frames[frames.size() - 2].kind, WeekKind::Work) << "the peak is not cut before the test";
            }
        }
    }
}

TEST(BlockPlan, WeeksFollowEachOtherAcrossAYearOf53Weeks)
{
    const auto plan = direction::planFor(soundWishes());
    ASSERT_EQ(plan.weeks.size(), 12U);
    EXPECT_EQ(toString(plan.weeks[4].monday.isoWeek()), "2026-W53");
    EXPECT_EQ(toString(plan.weeks[5].monday.isoWeek()), "2027-W01");
    EXPECT_EQ(plan.weeks[11].monday - plan.weeks[0].monday, 77);
}

TEST(BlockPlan, KeysGoThereAndBack)
{
    EXPECT_EQ(direction::waveOf("undulating"), direction::Wave::Undulating);
    EXPECT_EQ(direction::phaseOf(keyOf(Phase::Peak)), Phase::Peak);
    EXPECT_EQ(direction::weekKindOf(keyOf(WeekKind::Lighter)), WeekKind::Lighter);
    EXPECT_EQ(direction::liftRoleOf(keyOf(direction::LiftRole::Upkeep)), direction::LiftRole::Upkeep);
    EXPECT_FALSE(direction::waveOf("flat").has_value());
}

}  // namespace chalk::test
