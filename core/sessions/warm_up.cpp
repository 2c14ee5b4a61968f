#include "core/sessions/warm_up.h"

#include <cstdint>

namespace chalk::sessions {

namespace {

using base::Load;
using base::Reps;

/// A step of the way: a share of the working load in per cent, 0 for the lightest load there is.
struct WarmUpStep {
    int percent = 0;
    Reps reps;
};

std::vector<WarmUpStep> stepsFor(const lifts::Equipment& equipment, lifts::Measure measure, WarmUpLength length)
{
    if (measure != lifts::Measure::Reps) {
        return {{50, Reps(5)}};
    }
    const bool isBar = std::holds_alternative<lifts::Barbell>(equipment);
    switch (length) {
    case WarmUpLength::Full:
        return isBar ? std::vector<WarmUpStep>{{0, Reps(10)}, {50, Reps(5)}, {70, Reps(3)}, {85, Reps(2)}}
                     : std::vector<WarmUpStep>{{50, Reps(5)}, {70, Reps(3)}};
    case WarmUpLength::Short:
        return isBar ? std::vector<WarmUpStep>{{50, Reps(5)}, {70, Reps(3)}} : std::vector<WarmUpStep>{{50, Reps(5)}};
    }
    return {};
}

/// Whether b is heavier than a by a tenth of `working` or more.
bool isStepBetween(Load a, Load b, Load working)
{
    return b > a && 10 * (std::int64_t{b.centi()} - a.centi()) >= working.centi();
}

std::vector<WarmUpSet> bodyFirst(const lifts::LoadTable& loads, Load working)
{
    const bool isBodyLighter = working > Load() && loads.canGive(Load());
    return isBodyLighter ? std::vector<WarmUpSet>{{Load(), Reps(5)}} : std::vector<WarmUpSet>{};
}

}  // namespace

std::vector<WarmUpSet> warmUpRamp(const lifts::Equipment& equipment, lifts::Measure measure, Load working, WarmUpLength length)
{
    const auto loads = lifts::LoadTable::of(equipment);
    if (!loads) {
        return {};
    }
    if (std::holds_alternative<lifts::BodyAdded>(equipment)) {
        return bodyFirst(*loads, working);
    }
    std::vector<WarmUpSet> ramp;
    for (const WarmUpStep& step : stepsFor(equipment, measure, length)) {
        const auto share = static_cast<std::int32_t>(std::int64_t{working.centi()} * step.percent / 100);
        const Load load = loads->atMost(Load::fromCenti(share));
        const bool isAboveLast = ramp.empty() || isStepBetween(ramp.back().load, load, working);
        if (isAboveLast && isStepBetween(load, working, working)) {
            ramp.push_back({load, step.reps});
        }
    }
    return ramp;
}

}  // namespace chalk::sessions
