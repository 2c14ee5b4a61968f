#pragma once

#include "core/checkin/check_in.h"
#include "core/checkin/suggestion.h"
#include "core/lifts/swap_options.h"
#include "core/progression/lift_machine.h"

#include <optional>
#include <span>
#include <vector>

namespace chalk::checkin {

/// The neighbours of an exercise that could take its place.
struct NeighbourSwaps {
    std::optional<lifts::SwapOption> easier;
    std::optional<lifts::SwapOption> harder;
};

/// The first of `options` among the easier neighbours of the exercise, and the first among the harder ones.
[[nodiscard]] NeighbourSwaps neighbourSwaps(const lifts::Catalogue& catalogue, const lifts::Exercise& exercise, std::span<const lifts::SwapOption> options);

/// Everything that makes sense to decide about a lift, the suggested one first, the others in the order of kChoiceKinds; of two swaps the easier
/// one first. What comes next is what the rules give after the event. The reason of a `set` is left empty: it is for the one who decides to say, and the
/// event is refused without it.
/// Hold, numbers by hand: always. A lighter week: of a loaded lift that is not on hold. Moving on: the same; the last stage leads back to
/// Load build. A screen: of a lift that is on hold, learning or flagged for it. The direction: three months after the first load, until it is settled.
/// A lift that follows a plan of weeks does not move on; the direction opens the plan instead.
[[nodiscard]] std::vector<Choice> choicesFor(const progression::LiftMachine& machine, const LiftEvidence& evidence, const ClientSigns& client,
                                             const NeighbourSwaps& swaps, base::Date day);

}  // namespace chalk::checkin
