#pragma once

#include "core/lifts/swap_options.h"
#include "core/progression/event.h"

#include <optional>

namespace chalk::progression {

/// The event of such a swap. Without a start load a loaded lift begins at the least that the equipment gives.
[[nodiscard]] Swap swapTo(const lifts::SwapOption& option, std::optional<base::Load> startLoad);

}  // namespace chalk::progression
