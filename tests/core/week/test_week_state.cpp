#include "core/week/week_state.h"

#include "core/simulation/chance.h"
#include "core/week/plan_cost.h"
#include "core/week/week_trial.h"
#include "tests/support/tiny_week.h"
#include "tests/support/week_judge.h"

#include <gtest/gtest.h>

namespace chalk::week {

namespace {

WeekPlan planOf(const PackedWeek& week, const WeekState& state)
{
    WeekPlan plan;
    for (const Place place : state.places()) {
        plan.push_back(week.slotOf(place));
    }
    return plan;
}

/// Puts a session somewhere or takes it out, by chance; what does not fit is left.
void changeOne(const PackedWeek& week, const WeekState& state, WeekTrial& trial, simulation::Chance& chance)
{
    const int session = chance.below(static_cast<int>(week.sessions.size()));
    const PackedSession& packed = week.session(session);
    if (packed.candidates.size() == 0) {
        return;
    }
    const Place place = week.candidate(packed, chance.below(packed.candidates.size())).place;
    if (state.at(session).isSomewhere()) {
        trial.take(session);
    } else if (state.fits(session, place)) {
        trial.put(session, place);
    }
}

}  // namespace

TEST(WeekState, CostsByDeltasWhatThePlanCostsFromScratch)
{
    for (std::uint64_t seed = 0; seed < 100; ++seed) {
        const WeekProblem problem = test::tinyWeek(seed);
        const PackedWeek week(problem, {});
        WeekState state(week);
        WeekTrial trial(state, week);
        simulation::Chance chance(seed);
        for (int step = 0; step < 40; ++step) {
            changeOne(week, state, trial, chance);
            EXPECT_EQ(state.total(), objectiveOf(problem, planOf(week, state)).total()) << "seed " << seed << ", step " << step;
        }
    }
}

TEST(WeekState, FitsExactlyWhereThePlanKeepsTheRules)
{
    int refused = 0;
    for (std::uint64_t seed = 0; seed < 100; ++seed) {
        const WeekProblem problem = test::tinyWeek(seed);
        const PackedWeek week(problem, {});
        WeekState state(week);
        WeekTrial trial(state, week);
        simulation::Chance chance(seed);
        for (int step = 0; step < 20; ++step) {
            changeOne(week, state, trial, chance);
            ASSERT_TRUE(test::judged(problem, planOf(week, state)).faults.empty());
            const int session = chance.below(static_cast<int>(week.sessions.size()));
            const PackedSession& packed = week.session(session);
            for (int i = 0; !state.at(session).isSomewhere() && i < packed.candidates.size(); ++i) {
                WeekPlan plan = planOf(week, state);
                plan[static_cast<std::size_t>(session)] = week.slotOf(week.candidate(packed, i).place);
                const bool isAllowed = test::judged(problem, plan).faults.empty();
                EXPECT_EQ(state.fits(session, week.candidate(packed, i).place), isAllowed) << "seed " << seed << ", step " << step;
                refused += isAllowed ? 0 : 1;
            }
        }
    }
    EXPECT_GT(refused, 100);
}

TEST(WeekTrial, TakesEveryChangeBackOrKeepsIt)
{
    for (std::uint64_t seed = 0; seed < 50; ++seed) {
        const WeekProblem problem = test::tinyWeek(seed);
        const PackedWeek week(problem, {});
        WeekState state(week);
        WeekTrial trial(state, week);
        simulation::Chance chance(seed);
        for (int round = 0; round < 10; ++round) {
            const std::vector<Place> before = state.places();
            const long total = state.total();
            for (int step = 0; step < 6; ++step) {
                changeOne(week, state, trial, chance);
            }
            if (chance.happens(50)) {
                trial.keep();
                continue;
            }
            trial.undo();
            EXPECT_EQ(state.places(), before);
            EXPECT_EQ(state.total(), total);
            for (const int session : trial.leftOver()) {
                EXPECT_FALSE(state.at(session).isSomewhere());
                EXPECT_FALSE(trial.isChanged(session));
            }
        }
    }
}

TEST(WeekState, LacksNamesTheFirstStationThatIsFull)
{
    WeekProblem problem;
    problem.grid = 30;
    problem.open = {{0, 420, 600}};
    problem.stations = {{"rack", 1, {}}, {"bench", 1, {{{0, 450, 480}, 0}}}};
    problem.coaches = {{"Mia", 2, 480, problem.open, {}, {}}};
    problem.clients.resize(1);
    problem.clients[0].available = problem.open;
    problem.clients[0].coaches = {{0, 0}};
    problem.sessions.resize(1);
    problem.sessions[0].needs = {{0, 100, 0, 60}, {1, 40, 30, 60}};
    const PackedWeek week(problem, {});
    const WeekState state(week);
    const Place atSeven = week.placeOf({0, 420});
    EXPECT_FALSE(state.hasStations(week.session(0), atSeven));
    EXPECT_EQ(state.lackOf(week.session(0), atSeven).station, 1);
    EXPECT_EQ(state.lackOf(week.session(0), atSeven).slot, 450 / 30);
    const Place atHalfPast = week.placeOf({0, 450});
    EXPECT_TRUE(state.hasStations(week.session(0), atHalfPast)) << "the bench is needed in the second half alone";
    EXPECT_EQ(state.lackOf(week.session(0), atHalfPast).station, -1);
}

}  // namespace chalk::week
