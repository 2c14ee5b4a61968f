#include "core/week/replan.h"
#include "core/week/week_checker.h"
#include "core/week/week_search.h"
#include "tests/bench/goal.h"

#include <algorithm>
#include <random>

namespace chalk::bench {

namespace {

using week::WeekPlan;
using week::WeekProblem;

constexpr double kMostSeconds = 0.5;
constexpr std::size_t kClients = 150;
constexpr std::size_t kCoaches = 6;
constexpr std::size_t kChanges = 12;
constexpr std::int64_t kFirstIterations = 100'000;

int draw(std::mt19937& random, int least, int most)
{
    return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1));
}

std::vector<week::DaySpan> hours(int firstDay, int lastDay, int from, int to)
{
    std::vector<week::DaySpan> spans;
    for (int day = firstDay; day <= lastDay; ++day) {
        spans.push_back({day, from, to});
    }
    return spans;
}

week::ClientWeek usualClient(std::mt19937& random, std::size_t index)
{
    week::ClientWeek client;
    client.id = std::to_string(index);
    client.maxGroup = draw(random, 1, 3);
    const int from = draw(random, 0, 1) == 0 ? draw(random, 12, 18) * 30 : draw(random, 30, 34) * 30;
    client.available = hours(0, 5, from, from + 5 * 60);
    client.preferred = {{draw(random, 0, 4), from, from + 60}};
    const auto coach = index % kCoaches;
    client.coaches = {{coach, 0}, {(coach + 1) % kCoaches, 10}};
    return client;
}

/// 300 sessions for six coaches, of whom half are there in the morning, half in the evening, and six racks: not all of them have a place.
WeekProblem busyWeek()
{
    std::mt19937 random(7);
    WeekProblem problem;
    problem.name = "busy";
    problem.open = hours(0, 5, 6 * 60, 22 * 60);
    problem.stations = {{"rack", 6, {}}};
    for (std::size_t coach = 0; coach < kCoaches; ++coach) {
        week::CoachWeek one;
        one.id = std::to_string(coach);
        one.capacity = coach < 2 ? 1 : 2;
        one.windows = coach % 2 == 0 ? hours(0, 5, 6 * 60, 13 * 60) : hours(0, 5, 14 * 60, 22 * 60);
        problem.coaches.push_back(one);
    }
    for (std::size_t client = 0; client < kClients; ++client) {
        problem.clients.push_back(usualClient(random, client));
        for (int count = 1 + static_cast<int>(client) % 3; count > 0; --count) {
            week::SessionWish wish;
            wish.id = std::to_string(problem.sessions.size());
            wish.client = client;
            wish.patterns = {"squat"};
            wish.needs = {{0, 100, 10, 40}};
            problem.sessions.push_back(wish);
        }
    }
    return problem;
}

WeekPlan filled(const WeekProblem& problem)
{
    week::WeekSearch search(problem, {});
    search.advance(kFirstIterations);
    return search.best();
}

/// One session after the other that has a place is cancelled, each in the week as it was; the slowest answer is judged.
void replanWeek(benchmark::State& state)
{
    const WeekProblem whole = busyWeek();
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
