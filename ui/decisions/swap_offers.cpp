#include "ui/decisions/swap_offers.h"

#include "core/clients/client.h"
#include "core/exchange/studio_document.h"
#include "core/store/studio_reader.h"

#include <algorithm>

namespace chalk::ui::decisions {

namespace {

using exchange::StudioEquipment;
using lifts::EquipmentKind;

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

std::vector<EquipmentKind> kindsOf(const std::vector<StudioEquipment>& equipment)
{
    std::vector<EquipmentKind> kinds;
    for (const StudioEquipment& one : equipment) {
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
lifts::Equipment nothing()
{
    return lifts::BodyAdded{{base::Load()}};
}

std::vector<lifts::CautionTag> tagsOf(std::span<const clients::Caution> cautions)
{
    std::vector<lifts::CautionTag> tags;
    for (const clients::Caution& caution : cautions) {
        tags.insert(tags.end(), caution.tags.begin(), caution.tags.end());
    }
    return tags;
}

}  // namespace

SwappedLift swappedLiftOf(const progression::LiftMachine& machine, lifts::Exercise exercise, lifts::Pattern pattern)
{
    exercise.pattern = pattern;
    return {std::move(exercise), machine.kit().equipment, machine.setup().unit, machine.state().stage};
}

store::Result<std::vector<SwapOffer>> swapOffers(store::Database& database, const lifts::Catalogue& catalogue, const SwappedLift& lift,
                                                 std::span<const clients::Caution> cautions)
{
    const auto equipment = store::StudioReader(database).equipment();
    if (!equipment) {
        return tl::make_unexpected(equipment.error());
    }
    std::vector<StudioEquipment> usable = *equipment;
    std::erase_if(usable, [&lift](const StudioEquipment& one) { return one.unit != lift.unit; });
    std::vector<SwapOffer> offers;
    for (const lifts::Exercise* exercise : catalogue.alternativesTo(lift.exercise, kindsOf(usable), tagsOf(cautions))) {
        if (exercise->equipment == EquipmentKind::None) {
            offers.push_back({exercise, {}, nothing()});
        }
        for (const StudioEquipment& one : usable) {
            if (singleOf(one.kind) == singleOf(exercise->equipment)) {
                offers.push_back({exercise, one.name, one.equipment});
            }
        }
    }
    // The same difficulty order, but what is done with the lift's own equipment stands before other equipment.
    std::stable_sort(offers.begin(), offers.end(),
                     [&lift](const SwapOffer& a, const SwapOffer& b) { return (a.equipment == lift.equipment) > (b.equipment == lift.equipment); });
    return offers;
}

progression::Swap swapOf(const SwapOffer& offer, std::optional<base::Load> startLoad)
{
    progression::Swap swap;
    swap.equipment = offer.equipment;
    swap.startLoad = startLoad;
    swap.bodyShare = offer.exercise->bodyShare;
    swap.measure = offer.exercise->measure;
    swap.exerciseKey = offer.exercise->key;
    swap.pieces = offer.exercise->pieces;
    return swap;
}

}  // namespace chalk::ui::decisions
