#include "core/plateau/load_step.h"

#include "core/plateau/detector_figures.h"

namespace chalk::plateau {

double weeksPerLoadStep(base::Load load, base::Load step)
{
    return static_cast<double>(step.centi()) / load.centi() / kFigures.weeklyGain;
}

}  // namespace chalk::plateau
