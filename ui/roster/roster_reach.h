#pragma once

#include <cstdint>

namespace chalk::ui::roster {

/// What whoever works at the roster may see and do there.
enum class RosterReach : std::uint8_t {
    Training,  ///< everything
    Names      ///< who comes and when: nothing of health and training, and what leads there is not on offer
};

}  // namespace chalk::ui::roster
