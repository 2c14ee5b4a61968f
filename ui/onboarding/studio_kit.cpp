#include "ui/onboarding/studio_kit.h"

#include "core/store/studio_reader.h"

namespace chalk::ui::onboarding {

std::vector<planning::EquipmentOnHand> studioKit(store::Database& database, base::MassUnit unit)
{
    std::vector<planning::EquipmentOnHand> kit;
    const auto items = store::StudioReader(database).equipment();
    if (!items) {
        return kit;
    }
    for (const auto& item : *items) {
        if (item.unit == unit) {
            kit.push_back({item.key, item.kind, item.equipment});
        }
    }
    return kit;
}

}  // namespace chalk::ui::onboarding
