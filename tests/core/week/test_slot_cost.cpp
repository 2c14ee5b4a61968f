#include "core/week/slot_cost.h"

#include <gtest/gtest.h>

namespace chalk::week {

namespace {

constexpr int kTuesdayAtEight = 1440 + 480;

WeekProblem oneClientWithStanding()
{
    WeekProblem problem;
    problem.coaches.resize(2);
    ClientWeek client;
    client.coaches = {{0, 0}, {1, 15}};
    client.preferred = {{1, 480, 510}, {2, 600, 600}};
    problem.clients.push_back(client);
    SessionWish session;
    session.standing = Slot{0, kTuesdayAtEight};
    problem.sessions.push_back(session);
    return problem;
}

}  // namespace

TEST(SlotCost, LeavingAStandingSlotCostsTheDayOrTheTimeAndTheCoach)
{
    const Weights weights;
    const Slot standing{0, kTuesdayAtEight};
    EXPECT_EQ(moveCost(weights, standing, standing), 0);
    EXPECT_EQ(moveCost(weights, standing, {1, kTuesdayAtEight}), 30);
    EXPECT_EQ(moveCost(weights, standing, {0, kTuesdayAtEight + 14}), 20) << "a move of less than a quarter costs the base";
    EXPECT_EQ(moveCost(weights, standing, {0, kTuesdayAtEight - 30}), 20 + 2 * 4);
    EXPECT_EQ(moveCost(weights, standing, {0, kTuesdayAtEight + 600}), 60) << "no more than the cap";
    EXPECT_EQ(moveCost(weights, standing, {1, kTuesdayAtEight + 1440}), 80 + 30) << "the day, and not the time besides";
}

TEST(SlotCost, StartsOutsideOfThePreferredOnesCostByTheQuarter)
{
    const Weights weights;
    const ClientWeek client = oneClientWithStanding().clients[0];
    EXPECT_EQ(preferenceCost(weights, client, 1440 + 480), 0);
    EXPECT_EQ(preferenceCost(weights, client, 1440 + 510), 0) << "the last minute is inside";
    EXPECT_EQ(preferenceCost(weights, client, 1440 + 511), 1);
    EXPECT_EQ(preferenceCost(weights, client, 1440 + 450), 2);
    EXPECT_EQ(preferenceCost(weights, client, 1440 + 1200), 12) << "no more than the cap";
    EXPECT_EQ(preferenceCost(weights, client, 2 * 1440 + 600), 0) << "a span of one minute";
    EXPECT_EQ(preferenceCost(weights, client, 480), 12) << "a day without one";
    EXPECT_EQ(preferenceCost(weights, ClientWeek{}, 480), 0) << "no preferences";
}

TEST(SlotCost, OnTheStandingSlotNothingCosts)
{
    const WeekProblem problem = oneClientWithStanding();
    EXPECT_EQ(slotCost(problem, problem.sessions[0], {0, kTuesdayAtEight}), 0);
    EXPECT_EQ(slotCost(problem, problem.sessions[0], {1, kTuesdayAtEight}), 30 + 15);
    EXPECT_EQ(slotCost(problem, problem.sessions[0], {0, kTuesdayAtEight - 30}), 28 + 2);
    SessionWish free;
    EXPECT_EQ(slotCost(problem, free, {1, 0}), 15 + 12);
}

TEST(SlotCost, RecoveryCountsHoursOrWholeDays)
{
    const Recovery hours{RecoveryKind::Hours, 36};
    EXPECT_FALSE(recovers(hours, 0, 36 * 60 - 1));
    EXPECT_TRUE(recovers(hours, 36 * 60, 0));
    const Recovery restDay{RecoveryKind::RestDay, 0};
    EXPECT_FALSE(recovers(restDay, 0, 2 * 1440 - 1)) << "Monday and Tuesday";
    EXPECT_TRUE(recovers(restDay, 1439, 2 * 1440)) << "Monday and Wednesday";
    EXPECT_FALSE(recovers(restDay, 1439, -1)) << "Sunday before and Monday";
    EXPECT_TRUE(recovers(restDay, 0, -1441)) << "Saturday before and Monday";
}

TEST(SlotCost, DaysBeforeMondayAreNegative)
{
    EXPECT_EQ(dayOfMinute(0), 0);
    EXPECT_EQ(dayOfMinute(1440), 1);
    EXPECT_EQ(dayOfMinute(-1), -1);
    EXPECT_EQ(dayOfMinute(-1440), -1);
    EXPECT_EQ(dayOfMinute(-1441), -2);
}

TEST(SlotCost, PatternsInCommon)
{
    EXPECT_TRUE(sharesPattern({"squat", "pull"}, {"push", "pull"}));
    EXPECT_FALSE(sharesPattern({"squat"}, {"pull"}));
    EXPECT_FALSE(sharesPattern({}, {"pull"}));
}

}  // namespace chalk::week
