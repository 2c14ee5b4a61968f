#include "core/plateau/strength_index.h"

#include "core/plateau/detector_figures.h"

#include <algorithm>
#include <cmath>

namespace chalk::plateau {

namespace {

constexpr double square(double value)
{
    return value * value;
}

}  // namespace

double numberOf(base::Load load)
{
    constexpr double kCenti = 100;
    return load.centi() / kCenti;
}

StrengthIndex strengthIndexOf(const LoggedExposure& exposure, const Effort& effort)
{
    const double reps = exposure.reps.front().value() + effort.reserve;
    const double beyond = std::max(0.0, reps - kFigures.manyReps);
    return {std::log(numberOf(exposure.load) * (1 + reps / kFigures.repsOfDoubling)),
            square(kFigures.readinessSpread) + square(effort.spread / (kFigures.repsOfDoubling + reps)) + square(kFigures.manyRepsSpread * beyond)};
}

}  // namespace chalk::plateau
