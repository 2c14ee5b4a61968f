#pragma once

#include "core/progression/stage.h"

#include <cstdint>
#include <span>

namespace chalk::checkin {

/// Where a client as a whole is: most lifts in stages 1 to 3, or most in 4 to 7.
enum class Phase : std::uint8_t { NotScreened, Learning, Building };

/// The phase of a client whose lifts stand in these stages. A tie is still learning (common practice: the slower half sets the pace).
[[nodiscard]] Phase phaseOf(std::span<const progression::Stage> stages);

}  // namespace chalk::checkin
