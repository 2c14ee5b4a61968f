#include "core/plateau/light_rule.h"

#include "core/plateau/detector_figures.h"
#include "core/plateau/median.h"
#include "core/plateau/strength_index.h"

namespace chalk::plateau {

bool LightRule::isLight(const LoggedExposure& exposure)
{
    const bool isBelow = !m_targets.empty() && numberOf(exposure.targetLoad) < kFigures.lightShare * medianOf(lastOf(m_targets, kFigures.lightMemory));
    m_run = isBelow ? m_run + 1 : 0;
    return isBelow && m_run < kFigures.lightRunAccepted;
}

void LightRule::take(const LoggedExposure& exposure)
{
    m_targets.push_back(numberOf(exposure.targetLoad));
}

}  // namespace chalk::plateau
