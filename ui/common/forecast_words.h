#pragma once

#include "core/checkin/check_in.h"
#include "core/checkin/forecast.h"
#include "core/lifts/catalogue.h"

#include <QString>

namespace chalk::ui::common {

/// Where a lift would stand after four, eight and twelve weeks, a line each, with the slow and the fast end beside it; first of all that it is
/// a forecast, not a promise.
[[nodiscard]] QString forecastText(const checkin::Forecast& forecast, const checkin::LiftEvidence& lift, const lifts::Catalogue& catalogue);
/// Why there is none; with the number of sessions that are missing where that is the reason.
[[nodiscard]] QString forecastLackText(const checkin::ForecastLack& lack);

}  // namespace chalk::ui::common
