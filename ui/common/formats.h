#pragma once

#include "core/base/date.h"
#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/lifts/pattern.h"
#include "core/progression/lift_state.h"
#include "core/progression/policy.h"

#include <QString>

#include <string_view>

namespace chalk::ui::common {

// How numbers, days and names are written for people: in one place, so that the screen, the cards and the command line agree.

[[nodiscard]] QString qstring(std::string_view utf8);

/// `77.5`, `−10`: no unit, no needless zeros.
[[nodiscard]] QString numberText(base::Load load);
/// `kg` or `lb`.
[[nodiscard]] QString unitText(base::MassUnit unit);
/// `77.5 kg`; `2 × 12 kg` for a pair; added to a body: `bodyweight` for 0, `+10 kg`, `10 kg of help` for assistance.
[[nodiscard]] QString loadText(base::Load load, base::MassUnit unit, int pieces = 1, bool isAddedToBody = false);
/// A target of `reps` in the measure: `8`, `24 s`, `32 m`.
[[nodiscard]] QString amountText(base::Reps reps, lifts::Measure measure, const progression::Policy& policy);
/// `8` or `5–10`, in the measure.
[[nodiscard]] QString targetText(const progression::Prescription& next, lifts::Measure measure, const progression::Policy& policy);
/// `2:30`.
[[nodiscard]] QString restText(base::Seconds rest);
/// `Tue 24 Nov`.
[[nodiscard]] QString dayText(base::Date date);
/// `Lighter week, to Sun 29 Nov`.
[[nodiscard]] QString lighterWeekText(base::Date lastDay);
/// `24 Nov`.
[[nodiscard]] QString shortDayText(base::Date date);
/// `Tuesday 24 November`.
[[nodiscard]] QString longDayText(base::Date date);

/// `Rep build`.
[[nodiscard]] QString stageName(progression::Stage stage);
/// `Horizontal push`.
[[nodiscard]] QString patternName(lifts::Pattern pattern);

}  // namespace chalk::ui::common
