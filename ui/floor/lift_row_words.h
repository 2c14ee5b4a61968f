#pragma once

#include "ui/floor/entry_reading.h"
#include "ui/floor/lift_rows.h"

namespace chalk::ui::floor {

/// A lift as a row of the table: what is typed, else what is saved, else what is planned, in grey.
[[nodiscard]] LiftRow liftRowOf(const FloorClient& client, const FloorLift& lift);

}  // namespace chalk::ui::floor
