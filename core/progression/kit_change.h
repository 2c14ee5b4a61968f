#pragma once

#include "core/progression/event.h"
#include "core/progression/lift_state.h"

namespace chalk::progression {

/// The kit that a lift goes on with after a swap: what the swap leaves open stays as it was.
[[nodiscard]] inline Kit kitAfter(const Swap& swap, const Kit& before)
{
    return {swap.equipment, swap.bodyShare.value_or(before.bodyShare), swap.measure.value_or(before.measure), swap.startLoad,
            swap.exerciseKey,   swap.pieces};
}

}  // namespace chalk::progression
