#pragma once

#include "core/lifts/swap_options.h"
#include "core/progression/lift_machine.h"
#include "core/store/database.h"

#include <span>
#include <vector>

namespace chalk::clients {
struct Caution;
}

namespace chalk::ui::decisions {

/// What is known of a lift whose exercise another may take.
struct SwappedLift {
    lifts::Exercise exercise;  ///< as it is done now, with the lift's pattern
    lifts::Equipment equipment;
    base::MassUnit unit = base::MassUnit::Kilogram;
    progression::Stage stage = progression::Stage::Pattern;
};
/// `exercise` is the one that the machine's lift is done with; `pattern` is the lift's own.
[[nodiscard]] SwappedLift swappedLiftOf(const progression::LiftMachine& machine, lifts::Exercise exercise, lifts::Pattern pattern);

using SwapOffer = lifts::SwapOption;

/// What could take the place of the lift's exercise: allowed by the client's cautions, possible with the studio's equipment in the lift's
/// unit; what is done with the lift's own equipment first, then the nearest in difficulty. Fails where the studio cannot be read.
[[nodiscard]] store::Result<std::vector<SwapOffer>> swapOffers(store::Database& database, const lifts::Catalogue& catalogue,
                                                               const SwappedLift& lift, std::span<const clients::Caution> cautions);

}  // namespace chalk::ui::decisions
