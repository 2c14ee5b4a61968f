#include "ui/onboarding/studio_kit.h"

#include "core/store/studio_reader.h"

namespace chalk::ui::onboarding {

std::vector<studio::StudioEquipment> studioEquipment(store::Database& database, base::MassUnit unit)
{
    auto items = store::StudioReader(database).equipment().value_or(std::vector<studio::StudioEquipment>());
    std::erase_if(items, [unit](const studio::StudioEquipment& item) { return item.unit != unit; });
    return items;
}

std::vector<planning::EquipmentOnHand> studioKit(store::Database& database, base::MassUnit unit)
{
    const auto items = studioEquipment(database, unit);
    std::vector<planning::EquipmentOnHand> kit;
    for (const studio::StudioEquipment& item : items) {
        kit.push_back({item.key, item.kind, item.equipment});
    }
    return kit;
}

}  // namespace chalk::ui::onboarding
