#include "core/plateau/entry_rules.h"

#include "core/plateau/detector_figures.h"
#include "core/plateau/effort.h"
#include "core/plateau/strength_index.h"

namespace chalk::plateau {

bool isLoadDoubtful(const LoggedExposure& exposure)
{
    const double share = numberOf(exposure.load) / numberOf(exposure.targetLoad);
    return !(share >= kFigures.loadShareLowest && share <= kFigures.loadShareHighest);
}

bool areRepsDoubtful(const LoggedExposure& exposure)
{
    const int reps = exposure.reps.front().value();
    return reps <= 0 || reps > kFigures.repsMost || reps > exposure.targetReps.value() + kFigures.repsOverTargetMost;
}

bool isReserveDoubtful(const LoggedExposure& exposure)
{
    return exposure.reserve && !soundReserve(exposure);
}

}  // namespace chalk::plateau
