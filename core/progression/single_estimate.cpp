#include "core/progression/single_estimate.h"

#include "core/lifts/repetition_chart.h"

#include <algorithm>
#include <array>

namespace chalk::progression {

namespace {

constexpr std::int64_t kThousand = 1000;
constexpr std::int64_t kMostUp = 1025;    // thousandths of the estimate
constexpr std::int64_t kMostDown = 950;

constexpr std::array<std::int32_t, 5> kRoughRows{700, 670, 663, 657, 650};  // 11 to 15 repetitions

base::Milli shareAtFailure(int reps)
{
    const auto row = static_cast<std::size_t>(std::min(reps, kMostChartReps) - kSureReps - 1);
    return reps <= kSureReps ? *lifts::chartShare(base::Reps(reps)) : base::Milli(kRoughRows[row]);
}

base::Load part(base::Load load, std::int64_t thousandths)
{
    return base::Load::fromCenti(static_cast<std::int32_t>(load.centi() * thousandths / kThousand));
}

}  // namespace

std::optional<SpokenLoad> spokenFor(const PlannedSetResult& set)
{
    if (!set.reserve || set.reps.value() < 1) {
        return std::nullopt;
    }
    const int toFailure = set.reps.value() + *set.reserve;
    return SpokenLoad{lifts::wholeOfShare(set.load, shareAtFailure(toFailure), base::Load::fromCenti(1)), toFailure > kSureReps, toFailure > kMostChartReps};
}

base::Load estimateAfter(base::Load estimate, base::Load spoken)
{
    const base::Load halfWay = base::Load::fromCenti(estimate.centi() + (spoken.centi() - estimate.centi()) / 2);
    return std::clamp(halfWay, part(estimate, kMostDown), part(estimate, kMostUp));
}

base::Load loadAt(base::Load single, base::Milli share, const lifts::LoadTable& loads, base::Load bodyPart)
{
    return loads.atMost(part(single, share.value()) - bodyPart);
}

}  // namespace chalk::progression
