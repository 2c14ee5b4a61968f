#include "core/lifts/repetition_chart.h"

#include <array>

namespace chalk::lifts {

namespace {

constexpr std::array<std::int32_t, 10> kChart{1000, 950, 930, 900, 870, 850, 830, 800, 770, 750};
constexpr std::int64_t kWholeMilli = 1000;

/// numerator / denominator in steps, a half rounded up. Neither is negative.
base::Load inSteps(std::int64_t numerator, std::int64_t denominator, base::Load step)
{
    const std::int64_t unit = denominator * step.centi();
    return base::Load::fromCenti(static_cast<std::int32_t>((2 * numerator + unit) / (2 * unit) * step.centi()));
}

}  // namespace

std::optional<base::Milli> chartShare(base::Reps reps)
{
    const std::int32_t row = reps.value() - 1;
    return row >= 0 && row < std::int32_t{kChart.size()} ? std::optional(base::Milli(kChart[static_cast<std::size_t>(row)])) : std::nullopt;
}

base::Load shareOfLoad(base::Load load, base::Milli share, base::Load step)
{
    return inSteps(std::int64_t{load.centi()} * share.value(), kWholeMilli, step);
}

base::Load wholeOfShare(base::Load load, base::Milli share, base::Load step)
{
    return inSteps(load.centi() * kWholeMilli, share.value(), step);
}

}  // namespace chalk::lifts
