#pragma once

#include "core/progression/lift_state.h"
#include "core/store/statement.h"

#include <optional>

namespace chalk::store {

/// The columns of a lift's setup from `first` on: unit, region, body_mass_centi, kit, start_stage, policy. Nothing where one of them cannot be read.
[[nodiscard]] std::optional<progression::LiftSetup> setupIn(const Statement& row, int first);

}  // namespace chalk::store
