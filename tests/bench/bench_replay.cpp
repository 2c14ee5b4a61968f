#include "tests/bench/goal.h"
#include "tests/bench/training_life.h"

#include <array>
#include <string>

#include <fmt/core.h>

namespace chalk::bench {

namespace {

constexpr int kExposures = 1'000'000;
constexpr int kPerLife = 400;
constexpr double kMostSeconds = 1.5;

std::vector<TrainingLife> someLives()
{
    TrainingLives lives(20'261'125);
    std::vector<TrainingLife> all;
    for (int i = 0; i < kExposures / kPerLife; ++i) {
        all.push_back(lives.next(kPerLife));
    }
    return all;
}

/// How often each rule fired.
using RuleCounts = std::array<int, progression::kRuleCount>;

void count(RuleCounts& counts, const std::vector<progression::Decision>& decisions)
{
    for (const progression::Decision& decision : decisions) {
        for (const progression::Rule rule : decision.rules) {
            ++counts[static_cast<std::size_t>(rule)];
        }
    }
}

/// The rules that never fired, `B-4 X-1`. P-5 needs a release out of place, V-1 and U-3 an exposure or a rehearsal out of place.
std::string silentRules(const RuleCounts& counts)
{
    using progression::Rule;
    std::string names;
    for (int i = 0; i < progression::kRuleCount; ++i) {
        const auto rule = static_cast<Rule>(i);
        const bool isOutOfPlace = rule == Rule::P5 || rule == Rule::V1 || rule == Rule::U3 || rule == Rule::K3 || rule == Rule::D4;
        if (counts[static_cast<std::size_t>(i)] == 0 && !isOutOfPlace) {
            names.append(names.empty() ? "" : " ").append(progression::nameOf(rule));
        }
    }
    return names;
}

void replayAMillionExposures(benchmark::State& state)
{
    const std::vector<TrainingLife> lives = someLives();
    Goal goal("seconds of CPU", kMostSeconds, "s");
    RuleCounts counts{};
    for (auto _ : state) {
        std::size_t decided = 0;
        const double before = cpuSeconds();
        for (const TrainingLife& life : lives) {
            auto machine = progression::LiftMachine::create(life.setup).value();
            const auto decisions = progression::replay(machine, life.events);
            decided += decisions->size();
            benchmark::DoNotOptimize(decisions->back().after);
        }
        goal.add(cpuSeconds() - before);
        state.SetIterationTime(cpuSeconds() - before);
        state.counters["decisions"] = static_cast<double>(decided);
    }
    for (const TrainingLife& life : lives) {
        auto machine = progression::LiftMachine::create(life.setup).value();
        count(counts, progression::replay(machine, life.events).value());
    }
    if (const std::string silent = silentRules(counts); !silent.empty()) {
        state.SkipWithError(fmt::format("these rules never fired: {}", silent).c_str());
        return;
    }
    goal.report(state, goal.least());
}

BENCHMARK(replayAMillionExposures)->Name("replay of 1,000,000 exposures of ten sets")->Iterations(5)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace chalk::bench
