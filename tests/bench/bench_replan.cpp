#include "core/week/replan.h"
#include "core/week/week_checker.h"
#include "core/week/week_search.h"
#include "tests/bench/goal.h"
#include "tests/support/usual_week.h"

#include <algorithm>

namespace chalk::bench {

namespace {

using week::WeekPlan;
using week::WeekProblem;

constexpr double kMostSeconds = 0.5;
constexpr std::size_t kChanges = 12;
constexpr std::int64_t kFirstIterations = 100'000;

WeekPlan filled(const WeekProblem& problem)
{
    week::WeekSearch search(problem, {});
    search.advance(kFirstIterations);
    return search.best();
}

/// One session after the other that has a place is cancelled, each in the week as it was, in which some are left over; the slowest answer is judged.
void replanWeek(benchmark::State& state)
{
    const WeekProblem whole = test::usualWeek({.clients = 150, .clientsACoach = 45});
    const WeekPlan plan = filled(whole);
    Goal cpu("seconds of CPU", kMostSeconds, "s");
    std::size_t run = 0;
    double moves = 0;
    double faults = 0;
    for (auto _ : state) {
        auto gone = static_cast<std::ptrdiff_t>(++run * 23 % whole.sessions.size());
        while (!plan[static_cast<std::size_t>(gone)]) {
            gone = (gone + 1) % static_cast<std::ptrdiff_t>(plan.size());
        }
        WeekProblem problem = whole;
        WeekPlan present = plan;
        problem.sessions.erase(problem.sessions.begin() + gone);
        present.erase(present.begin() + gone);
        const double before = cpuSeconds();
        const week::Replan after = week::replanned(problem, present);
        const double seconds = cpuSeconds() - before;
        cpu.add(seconds);
        moves += static_cast<double>(after.moves.size());
        faults += static_cast<double>(week::faultsOf(problem, after.plan).size());
        state.SetIterationTime(seconds);
    }
    state.counters["sessions"] = static_cast<double>(whole.sessions.size());
    state.counters["left over"] = static_cast<double>(std::count(plan.begin(), plan.end(), std::nullopt));
    state.counters["moves"] = benchmark::Counter(moves, benchmark::Counter::kAvgIterations);
    if (faults > 0) {
        state.SkipWithError("a plan breaks the rules");
    }
    cpu.report(state, cpu.most());
}

BENCHMARK(replanWeek)->Name("replanning a week of 150 clients")->Iterations(kChanges)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace chalk::bench
