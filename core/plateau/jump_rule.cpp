#include "core/plateau/jump_rule.h"

#include "core/plateau/detector_figures.h"
#include "core/plateau/median.h"

#include <cmath>
#include <cstdlib>

namespace chalk::plateau {

JumpRule::Step JumpRule::step(double index)
{
    if (m_indices.size() < kFigures.jumpNeeds) {
        return Step::Usual;
    }
    const double distance = index - medianOf(lastOf(m_indices, kFigures.jumpMemory));
    if (std::abs(distance) <= kFigures.jump) {
        m_run = 0;
        return Step::Usual;
    }
    const int way = distance > 0 ? 1 : -1;
    m_run = m_run * way > 0 ? m_run + way : way;
    return std::abs(m_run) >= kFigures.jumpRunAccepted ? Step::NewLevel : Step::Jump;
}

}  // namespace chalk::plateau
