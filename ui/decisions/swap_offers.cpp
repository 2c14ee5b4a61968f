#include "ui/decisions/swap_offers.h"

#include "core/clients/client.h"
#include "core/exchange/studio_document.h"
#include "core/store/studio_reader.h"

namespace chalk::ui::decisions {

namespace {

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
    std::vector<lifts::EquipmentAtHand> usable;
    for (const exchange::StudioEquipment& one : *equipment) {
        if (one.unit == lift.unit) {
            usable.push_back({one.name, one.kind, one.equipment});
        }
    }
    return lifts::swapOptions(catalogue, lift.exercise, lift.equipment, usable, tagsOf(cautions));
}

}  // namespace chalk::ui::decisions
