#pragma once

#include "core/lifts/catalogue.h"
#include "core/lifts/equipment.h"

#include <span>
#include <string>
#include <vector>

namespace chalk::lifts {

/// Something that a studio has to load lifts with.
struct EquipmentAtHand {
    std::string name;  ///< `Olympic bar`
    EquipmentKind kind = EquipmentKind::Barbell;
    Equipment equipment;
};

/// Another exercise for a lift, and what it can be done with.
struct SwapOption {
    const Exercise* exercise = nullptr;  ///< of the catalogue
    std::string equipmentName;           ///< empty where it needs none
    Equipment equipment;
};

/// What could take the place of `exercise`, which is done with `present` now: allowed by the cautions and possible with what is at hand, all of it in the
/// lift's unit. A pair is two of the single ones, so whoever has one kind can do with the other. What is done with the lift's own equipment first,
/// then the nearest in difficulty.
[[nodiscard]] std::vector<SwapOption> swapOptions(const Catalogue& catalogue, const Exercise& exercise, const Equipment& present,
                                                  std::span<const EquipmentAtHand> atHand, std::span<const CautionTag> cautions);

}  // namespace chalk::lifts
