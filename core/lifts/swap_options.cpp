#include "core/lifts/swap_options.h"

#include <algorithm>

namespace chalk::lifts {

namespace {

/// A pair is two of the single ones, so whoever has one kind can do with the other.
EquipmentKind singleOf(EquipmentKind kind)
{
    switch (kind) {
    case EquipmentKind::DumbbellPair:
        return EquipmentKind::Dumbbell;
    case EquipmentKind::KettlebellPair:
        return EquipmentKind::Kettlebell;
    case EquipmentKind::None:
    case EquipmentKind::Barbell:
    case EquipmentKind::TrapBar:
    case EquipmentKind::Dumbbell:
    case EquipmentKind::Kettlebell:
    case EquipmentKind::Bag:
    case EquipmentKind::Stack:
    case EquipmentKind::AddedToBody:
        break;
    }
    return kind;
}

std::vector<EquipmentKind> kindsOf(std::span<const EquipmentAtHand> atHand)
{
    std::vector<EquipmentKind> kinds;
    for (const EquipmentAtHand& one : atHand) {
        kinds.push_back(one.kind);
        if (one.kind == EquipmentKind::Dumbbell) {
            kinds.push_back(EquipmentKind::DumbbellPair);
        } else if (one.kind == EquipmentKind::Kettlebell) {
            kinds.push_back(EquipmentKind::KettlebellPair);
        }
    }
    return kinds;
}

/// The body alone: one load, nothing added.
Equipment bodyAlone()
{
    return BodyAdded{{base::Load()}};
}

}  // namespace

std::vector<SwapOption> swapOptions(const Catalogue& catalogue, const Exercise& exercise, const Equipment& present,
                                    std::span<const EquipmentAtHand> atHand, std::span<const CautionTag> cautions)
{
    std::vector<SwapOption> options;
    for (const Exercise* other : catalogue.alternativesTo(exercise, kindsOf(atHand), cautions)) {
        if (other->equipment == EquipmentKind::None) {
            options.push_back({other, {}, bodyAlone()});
        }
        for (const EquipmentAtHand& one : atHand) {
            if (singleOf(one.kind) == singleOf(other->equipment)) {
                options.push_back({other, one.name, one.equipment});
            }
        }
    }
    // The same difficulty order, but what is done with the lift's own equipment stands before other equipment.
    std::stable_sort(options.begin(), options.end(),
                     [&present](const SwapOption& a, const SwapOption& b) { return (a.equipment == present) > (b.equipment == present); });
    return options;
}

}  // namespace chalk::lifts
