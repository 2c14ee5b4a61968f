#include "core/checkin/phase.h"

#include <algorithm>

namespace chalk::checkin {

Phase phaseOf(std::span<const progression::Stage> stages)
{
    if (stages.empty()) {
        return Phase::NotScreened;
    }
    const auto building = std::count_if(stages.begin(), stages.end(), [](progression::Stage stage) { return stage >= progression::Stage::LoadBuild; });
    return 2 * building > static_cast<std::ptrdiff_t>(stages.size()) ? Phase::Building : Phase::Learning;
}

}  // namespace chalk::checkin
