#include "core/progression/single_estimate.h"

#include "core/lifts/repetition_chart.h"

#include <algorithm>

namespace chalk::progression {

namespace {

constexpr std::int64_t kThousand = 1000;
constexpr std::int64_t kMostUp = 1025;    // thousandths of the estimate
constexpr std::int64_t kMostDown = 950;

base::Load part(base::Load load, std::int64_t thousandths)
{
    return base::Load::fromCenti(static_cast<std::int32_t>(load.centi() * thousandths / kThousand));
}

}  // namespace

std::optional<base::Load> spokenFor(const PlannedSetResult& set)
{
    if (!set.reserve || set.reps.value() < 1) {
        return std::nullopt;
    }
    const auto share = lifts::chartShare(base::Reps(set.reps.value() + *set.reserve));
    return share ? std::optional(lifts::wholeOfShare(set.load, *share, base::Load::fromCenti(1))) : std::nullopt;
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
