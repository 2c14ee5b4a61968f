#pragma once

#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/lifts/equipment.h"

#include <QString>

#include <optional>

namespace chalk::ui::decisions {

/// A number as somebody typed it, with a point or a comma, at most two decimals and within the loads that there are; nothing
/// for anything else. A minus, the sign or the hyphen, is help from the machine.
[[nodiscard]] std::optional<base::Load> loadOf(const QString& text);
/// A whole number from `least` to `most`.
[[nodiscard]] std::optional<int> wholeNumberOf(const QString& text, int least, int most);
/// `2:30`, or seconds: `150`. At most an hour.
[[nodiscard]] std::optional<base::Seconds> restOf(const QString& text);
/// `This equipment gives 80 or 85 kg.`: the loads next to one that cannot be set up.
[[nodiscard]] QString nearestLoadsText(const lifts::LoadTable& loads, base::Load wanted, base::MassUnit unit);

}  // namespace chalk::ui::decisions
