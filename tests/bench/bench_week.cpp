#include "core/week/week_search.h"
#include "tests/bench/goal.h"
#include "tests/support/usual_week.h"

namespace chalk::bench {

namespace {

constexpr double kMostMicrosecondsAnIteration = 10;
constexpr double kMostMillisecondsToBegin = 50;
constexpr std::int64_t kIterations = 200'000;

/// A week of 150 clients is filled for a second or so of CPU: each iteration of the search, while the plan cools down once.
void fillWeek(benchmark::State& state)
{
    const week::WeekProblem problem = test::usualWeek({});
    Goal cpu("microseconds of CPU an iteration", kMostMicrosecondsAnIteration, "us");
    double leftOver = 0;
    for (auto _ : state) {
        week::WeekSearch search(problem, {});
        const double before = cpuSeconds();
        search.advance(kIterations);
        const double seconds = cpuSeconds() - before;
        cpu.add(seconds * 1e6 / static_cast<double>(kIterations));
        leftOver = search.objective().leftOver;
        state.SetIterationTime(seconds);
    }
    state.counters["sessions"] = static_cast<double>(problem.sessions.size());
    state.counters["left over"] = leftOver;
    cpu.report(state, cpu.least());
}

/// The first plan, made greedily, is there at once.
void beginWeek(benchmark::State& state)
{
    const week::WeekProblem problem = test::usualWeek({});
    Goal cpu("milliseconds of CPU", kMostMillisecondsToBegin, "ms");
    for (auto _ : state) {
        const double before = cpuSeconds();
        const week::WeekSearch search(problem, {});
        benchmark::DoNotOptimize(search.best().data());
        const double seconds = cpuSeconds() - before;
        cpu.add(seconds * 1000);
        state.SetIterationTime(seconds);
    }
    cpu.report(state, cpu.least());
}

BENCHMARK(beginWeek)->Name("a first plan for 150 clients")->Iterations(10)->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK(fillWeek)->Name("filling a week of 150 clients")->Iterations(3)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace chalk::bench
