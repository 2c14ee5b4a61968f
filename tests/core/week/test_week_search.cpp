#include "core/week/week_search.h"

#include "core/week/plan_cost.h"
#include "core/week/slot_cost.h"
#include "tests/support/every_plan.h"
#include "tests/support/tiny_week.h"
#include "tests/support/usual_week.h"
#include "tests/support/week_judge.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::week {

namespace {

/// One coach, open on Monday and Wednesday morning; each client goes to her and has one session of an hour.
WeekProblem twoMornings(std::size_t clients)
{
    WeekProblem problem;
    problem.open = {{0, 420, 600}, {2, 420, 600}};
    problem.coaches = {{"Mia", 1, 480, problem.open, {}, {}}};
    for (std::size_t i = 0; i < clients; ++i) {
        ClientWeek client;
        client.id = "K" + std::to_string(i);
        client.available = problem.open;
        client.coaches = {{0, 0}};
        problem.clients.push_back(client);
        SessionWish session;
        session.id = "S" + std::to_string(i);
        session.client = i;
        problem.sessions.push_back(session);
    }
    return problem;
}

WeekPlan planAfter(const WeekProblem& problem, const FillOptions& options, std::int64_t iterations)
{
    WeekSearch search(problem, options);
    search.advance(iterations);
    return search.best();
}

}  // namespace

TEST(WeekSearch, SolvesTenThousandTinyWeeksLikeTryingEveryPlan)
{
    int leftOver = 0;
    long plans = 0;
    for (std::uint64_t seed = 0; seed < 10'000; ++seed) {
        const WeekProblem problem = test::tinyWeek(seed);
        test::EveryPlan every(problem);
        const long cheapest = every.cheapest();
        WeekSearch search(problem, {});
        while (search.advance(200)) {
            ASSERT_LT(search.iterations(), 5000) << "seed " << seed << " is not proved";
        }
        ASSERT_TRUE(search.isProved());
        ASSERT_EQ(search.objective().total(), cheapest) << "seed " << seed;
        leftOver += search.objective().leftOver > 0 ? 1 : 0;
        plans += every.count();
        if (seed % 8 == 0) {
            const auto judgement = test::judged(problem, search.best());
            ASSERT_EQ(judgement.faults, std::vector<std::string>()) << "seed " << seed;
            ASSERT_EQ(judgement.objective, search.objective()) << "seed " << seed;
        }
    }
    EXPECT_GT(leftOver, 1000) << "weeks that are too small for everybody";
    EXPECT_GT(plans, 1'000'000);
}

TEST(WeekSearch, FindsTheCheapestPlanBeforeItIsProved)
{
    int found = 0;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        const WeekProblem problem = test::tinyWeek(seed);
        FillOptions options;
        options.canProve = false;
        WeekSearch search(problem, options);
        search.advance(900);
        found += search.objective().total() == test::EveryPlan(problem).cheapest() ? 1 : 0;
    }
    EXPECT_EQ(found, 300) << "ruin and recreate alone, without the search to the end";
}

TEST(WeekSearch, TheSameSeedAndIterationsGiveTheSamePlanInAnySlices)
{
    const WeekProblem problem = twoMornings(9);
    WeekSearch slices(problem, {});
    for (int i = 0; i < 50; ++i) {
        slices.advance(17);
    }
    EXPECT_EQ(slices.best(), planAfter(problem, {}, 50 * 17));
}

TEST(WeekSearch, PlansOfUsualWeeksKeepTheRulesRoomyOrCrowded)
{
    for (const int clientsACoach : {8, 40}) {
        const WeekProblem problem = test::usualWeek({40, clientsACoach, clientsACoach == 8 ? 30 : 15, 5});
        WeekSearch search(problem, {});
        const long first = search.objective().total();
        search.advance(4000);
        const auto judgement = test::judged(problem, search.best());
        EXPECT_EQ(judgement.faults, std::vector<std::string>());
        EXPECT_EQ(judgement.objective, search.objective());
        EXPECT_LT(search.objective().total(), first);
        EXPECT_EQ(search.objective().leftOver > 10, clientsACoach == 40) << search.objective().leftOver;
    }
}

TEST(WeekSearch, HasAPlanAtOnceAndNeverGetsWorse)
{
    const WeekProblem problem = twoMornings(9);
    WeekSearch search(problem, {});
    EXPECT_EQ(search.iterations(), 0);
    long last = search.objective().total();
    EXPECT_TRUE(test::judged(problem, search.best()).faults.empty());
    for (int i = 0; i < 20; ++i) {
        search.advance(50);
        EXPECT_LE(search.objective().total(), last);
        last = search.objective().total();
    }
}

TEST(WeekSearch, LeavesOverWhoHasTheLowestPriority)
{
    WeekProblem problem = twoMornings(8);
    problem.clients[2].priority = 2;
    problem.clients[5].priority = 4;
    const WeekPlan plan = planAfter(problem, {}, 3000);
    EXPECT_EQ(std::count(plan.begin(), plan.end(), std::nullopt), 2) << "six hours for eight";
    EXPECT_TRUE(plan[2]);
    EXPECT_TRUE(plan[5]);
}

TEST(WeekSearch, AWeekWhereEveryStandingSlotIsFreeIsProvedAtOnce)
{
    WeekProblem problem = twoMornings(3);
    for (std::size_t i = 0; i < 3; ++i) {
        problem.sessions[i].standing = Slot{0, 420 + 60 * static_cast<int>(i)};
    }
    WeekSearch search(problem, {});
    EXPECT_FALSE(search.advance(1));
    EXPECT_TRUE(search.isProved());
    EXPECT_EQ(search.objective(), Objective());
    EXPECT_EQ(search.iterations(), 0);
}

TEST(WeekSearch, NothingToPlanIsProved)
{
    WeekSearch search(WeekProblem{}, {});
    EXPECT_FALSE(search.advance(10));
    EXPECT_TRUE(search.best().empty());
}

TEST(WeekSearch, ALockedSessionStaysAndTakesItsRoom)
{
    WeekProblem problem = twoMornings(6);
    problem.sessions[3].standing = Slot{0, 450};
    problem.sessions[3].isLocked = true;
    WeekSearch search(problem, {});
    search.advance(2000);
    EXPECT_EQ(search.best()[3], problem.sessions[3].standing);
    EXPECT_TRUE(search.contradictions().empty());
    EXPECT_TRUE(test::judged(problem, search.best()).faults.empty());
    EXPECT_EQ(search.objective().leftOver, 1) << "an hour from half past seven leaves room for one more hour that morning";
}

TEST(WeekSearch, ALockedSessionAgainstTheRulesIsNamedAndTheOthersPlannedAroundIt)
{
    WeekProblem problem = twoMornings(5);
    problem.sessions[0].standing = Slot{0, 1440 + 420};
    problem.sessions[1].standing = Slot{0, 487};
    problem.sessions[2].standing = Slot{0, 480};
    problem.sessions[3].standing = Slot{0, 2 * 1440 + 480};
    for (std::size_t i = 0; i < 4; ++i) {
        problem.sessions[i].isLocked = true;
    }
    problem.clients[4].available = {{0, 480, 600}};
    WeekSearch search(problem, {});
    search.advance(2000);
    EXPECT_EQ(search.contradictions(), (std::vector<std::size_t>{0, 1, 2})) << "on a day off, off the grid, and at once with another";
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(search.best()[i], problem.sessions[i].standing);
    }
    EXPECT_EQ(search.best()[4], std::nullopt) << "from nine on there are 53 minutes left";
}

TEST(WeekSearch, WhoCanGoNowhereIsLeftOverAndTheRestIsPlanned)
{
    WeekProblem problem = twoMornings(3);
    problem.clients[0].available.clear();
    problem.sessions[1].minutes = 200;
    WeekSearch search(problem, {});
    search.advance(2000);
    EXPECT_FALSE(search.best()[0]);
    EXPECT_FALSE(search.best()[1]);
    EXPECT_TRUE(search.best()[2]);
}

TEST(WeekSearch, StaysNearToThePresentPlan)
{
    const WeekProblem problem = twoMornings(4);
    const WeekPlan present{Slot{0, 540}, Slot{0, 2 * 1440 + 420}, Slot{0, 2 * 1440 + 540}, Slot{0, 420}};
    FillOptions options;
    options.present = &present;
    EXPECT_EQ(planAfter(problem, options, 3000), present) << "its gaps cost less than any move";
    EXPECT_NE(planAfter(problem, {}, 3000), present);
}

TEST(WeekSearch, FixedSessionsStayOrStayLeftOver)
{
    const WeekProblem problem = twoMornings(4);
    const WeekPlan present{Slot{0, 450}, std::nullopt, std::nullopt, std::nullopt};
    FillOptions options;
    options.present = &present;
    options.fixed = {true, true, false, false};
    const WeekPlan plan = planAfter(problem, options, 3000);
    EXPECT_EQ(plan[0], present[0]);
    EXPECT_EQ(plan[1], std::nullopt);
    EXPECT_TRUE(plan[2]);
    EXPECT_TRUE(plan[3]);
    EXPECT_TRUE(test::judged(problem, plan).faults.empty());
}

TEST(WeekSearch, AFixedSessionThatIsAgainstTheRulesNowStaysToo)
{
    WeekProblem problem = twoMornings(2);
    problem.coaches[0].absences = {{0, 0, 1440}};
    const WeekPlan present{Slot{0, 420}, Slot{0, 480}};
    FillOptions options;
    options.present = &present;
    options.fixed = {true, false};
    const WeekPlan plan = planAfter(problem, options, 1000);
    EXPECT_EQ(plan[0], present[0]);
    ASSERT_TRUE(plan[1]);
    EXPECT_EQ(plan[1]->start / 1440, 2);
}

}  // namespace chalk::week
