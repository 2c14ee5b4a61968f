#include "core/planning/group_session.h"
#include "tests/bench/goal.h"

#include <algorithm>
#include <array>

namespace chalk::bench {

namespace {

using lifts::Pattern;
using lifts::Station;
using sessions::CardContent;
using sessions::CardLift;

constexpr double kMostMillisecondsForFour = 50;
constexpr double kMostMillisecondsForSix = 300;

/// A lift of the kind that most cards hold.
struct UsualLift {
    const char* name;
    Pattern pattern;
    Station station;
    int rest;
};

constexpr std::array<UsualLift, 8> kUsualLifts{{{"Back squat", Pattern::Squat, Station::Rack, 150},
                                                {"Bench press", Pattern::HorizontalPush, Station::Bench, 150},
                                                {"Pulldown", Pattern::VerticalPull, Station::Machine, 90},
                                                {"Split squat", Pattern::SingleLeg, Station::Floor, 120},
                                                {"Suitcase carry", Pattern::CarryBrace, Station::Lane, 90},
                                                {"Trap-bar deadlift", Pattern::Hinge, Station::Rack, 180},
                                                {"Seated row", Pattern::HorizontalPull, Station::Machine, 90},
                                                {"Overhead press", Pattern::VerticalPush, Station::Rack, 120}}};

/// Cards of five lifts, each client with others of them and other sets.
std::vector<CardContent> usualGroup(std::size_t clients, std::size_t variant)
{
    constexpr std::size_t kLifts = 5;
    std::vector<CardContent> cards(clients);
    for (std::size_t c = 0; c < clients; ++c) {
        for (std::size_t i = 0; i < kLifts; ++i) {
            const UsualLift& usual = kUsualLifts[(i + c * 3 + variant) % kUsualLifts.size()];
            CardLift lift;
            lift.name = usual.name;
            lift.pattern = usual.pattern;
            lift.station = usual.station;
            lift.sets = static_cast<int>(3 + (c + i + variant) % 3);
            lift.amountHigh = 8;
            lift.rest = base::Seconds(usual.rest);
            cards[c].lifts.push_back(lift);
        }
    }
    return cards;
}

constexpr std::size_t kVariants = 8;

/// One floor of two racks, two benches, two machines and two lanes; eight different groups, three times each. The hardest group is judged, by
/// the quickest of its runs: others who use the machine only ever make one slower.
void rotateGroup(benchmark::State& state)
{
    const auto clients = static_cast<std::size_t>(state.range(0));
    std::array<double, kVariants> quickest{};
    Goal cpu("milliseconds of CPU", clients <= 4 ? kMostMillisecondsForFour : kMostMillisecondsForSix, "ms");
    std::size_t run = 0;
    double proved = 0;
    for (auto _ : state) {
        const std::size_t variant = run++ % kVariants;
        const auto cards = usualGroup(clients, variant);
        const double before = cpuSeconds();
        const planning::GroupSession group = planning::groupSessionOf(cards, planning::usualStations());
        const double seconds = cpuSeconds() - before;
        cpu.add(seconds * 1000);
        quickest[variant] = run <= kVariants ? seconds * 1000 : std::min(quickest[variant], seconds * 1000);
        proved += group.isProved ? 1 : 0;
        state.SetIterationTime(seconds);
    }
    state.counters["proved"] = benchmark::Counter(proved, benchmark::Counter::kAvgIterations);
    cpu.report(state, *std::max_element(quickest.begin(), quickest.end()));
}

BENCHMARK(rotateGroup)->Name("rotating a group of")->DenseRange(2, 6)->Iterations(3 * kVariants)->UseManualTime()->Unit(benchmark::kMillisecond);

}  // namespace

}  // namespace chalk::bench
