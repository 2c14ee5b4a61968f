#include "core/plateau/stage_lever.h"

#include "core/plateau/detector_figures.h"

#include <algorithm>

namespace chalk::plateau {

namespace {

using progression::Stage;

bool isRestKept(const LoggedExposure& exposure)
{
    const double target = exposure.targetRest.value();
    return !exposure.rest || exposure.rest->value() <= target + std::max<double>(kFigures.restGraceSeconds, kFigures.restGraceShare * target);
}

}  // namespace

bool isComplete(const LoggedExposure& exposure)
{
    const bool hasSets = static_cast<int>(exposure.reps.size()) >= exposure.targetSets.value();
    const bool hasReps = std::none_of(exposure.reps.begin(), exposure.reps.end(), [&](base::Reps reps) { return reps < exposure.targetReps; });
    return hasSets && hasReps && (exposure.planSingle || exposure.stage != Stage::RestCut || isRestKept(exposure));
}

int leverOf(const LoggedExposure& exposure)
{
    if (exposure.planSingle) {
        return exposure.planSingle->centi();
    }
    switch (exposure.stage) {
    case Stage::Pattern:
    case Stage::Control:
    case Stage::BaseLoad:
    case Stage::LoadBuild:
        return exposure.targetLoad.centi();
    case Stage::RepBuild:
        return exposure.targetReps.value();
    case Stage::SetBuild:
        return exposure.targetSets.value();
    case Stage::RestCut:
        return -exposure.targetRest.value();
    }
    return 0;
}

double strengthShareOf(Stage stage)
{
    switch (stage) {
    case Stage::Pattern:
    case Stage::Control:
    case Stage::BaseLoad:
    case Stage::LoadBuild:
        return 1;
    case Stage::RepBuild:
        return kFigures.strengthShareOfReps;
    case Stage::SetBuild:
        return kFigures.strengthShareOfSets;
    case Stage::RestCut:
        return kFigures.strengthShareOfRest;
    }
    return 1;
}

bool LeverBest::take(int lever)
{
    if (m_best && lever <= *m_best) {
        return false;
    }
    m_best = lever;
    return true;
}

}  // namespace chalk::plateau
