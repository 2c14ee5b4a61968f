#pragma once

#include "core/base/load.h"
#include "core/planning/starting_plan.h"
#include "core/store/database.h"
#include "core/studio/studio_document.h"

#include <vector>

namespace chalk::ui::onboarding {

/// What the studio has in a unit; nothing where it cannot be read.
[[nodiscard]] std::vector<studio::StudioEquipment> studioEquipment(store::Database& database, base::MassUnit unit);
/// The same for a plan; nothing where it cannot be read.
[[nodiscard]] std::vector<planning::EquipmentOnHand> studioKit(store::Database& database, base::MassUnit unit);

}  // namespace chalk::ui::onboarding
