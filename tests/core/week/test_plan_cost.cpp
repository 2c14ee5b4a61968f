#include "core/week/plan_cost.h"

#include "core/simulation/chance.h"
#include "tests/support/tiny_week.h"
#include "tests/support/week_judge.h"

#include <gtest/gtest.h>

namespace chalk::week {

namespace {

/// Any plan, also one that breaks rules, on the grid and inside of its day.
WeekPlan anyPlan(const WeekProblem& problem, std::uint64_t seed)
{
    simulation::Chance chance(seed);
    WeekPlan plan(problem.sessions.size());
    for (auto& slot : plan) {
        if (chance.happens(80)) {
            slot = Slot{static_cast<std::size_t>(chance.below(static_cast<int>(problem.coaches.size()))), chance.below(3) * 1440 + 420 + 30 * chance.below(6)};
        }
    }
    return plan;
}

}  // namespace

TEST(PlanCost, IsWhatAMinuteByMinuteJudgeSays)
{
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        const WeekProblem problem = test::tinyWeek(seed);
        const WeekPlan plan = anyPlan(problem, seed);
        EXPECT_EQ(objectiveOf(problem, plan), test::judged(problem, plan).objective) << "seed " << seed;
    }
}

TEST(PlanCost, HasEveryPart)
{
    WeekProblem problem;
    problem.open = {{0, 420, 720}, {1, 420, 720}};
    problem.coaches = {{"Mia", 2, 60, problem.open, {{0, 540, 555}}, {}}};
    problem.clients.resize(2);
    problem.clients[1].priority = 4;
    problem.sessions.resize(4);
    problem.sessions[3].client = 1;
    problem.sessions[0].standing = Slot{0, 420};
    problem.clients[0].preferred = {{1, 480, 480}};
    // Monday 7:15 (a quarter off) to 8:15 and 10:00 to 11:00: idle from 8:15 to 10:00 but for the break of a quarter, busy for two hours.
    const Objective objective = objectiveOf(problem, {Slot{0, 435}, Slot{0, 600}, Slot{0, 1440 + 480}, std::nullopt});
    EXPECT_EQ(objective.unplaced, 4000);
    EXPECT_EQ(objective.leftOver, 1);
    EXPECT_EQ(objective.standing, 20 + 4 + 12);
    EXPECT_EQ(objective.moved, 1);
    EXPECT_EQ(objective.preference, 12);
    EXPECT_EQ(objective.gaps, 6 * 2);
    EXPECT_EQ(objective.over, 4);
    EXPECT_EQ(objective.consecutive, 6);
    EXPECT_EQ(objective.total(), 4000 + 36 + 12 + 12 + 4 + 6);
}

}  // namespace chalk::week
