#include "core/progression/swap_to.h"

namespace chalk::progression {

Swap swapTo(const lifts::SwapOption& option, std::optional<base::Load> startLoad)
{
    Swap swap;
    swap.equipment = option.equipment;
    swap.startLoad = startLoad;
    swap.bodyShare = option.exercise->bodyShare;
    swap.measure = option.exercise->measure;
    swap.exerciseKey = option.exercise->key;
    swap.pieces = option.exercise->pieces;
    return swap;
}

}  // namespace chalk::progression
