#pragma once

#include "core/clients/health_intake.h"
#include "core/exchange/json_reading.h"

#include <QJsonObject>

namespace chalk::exchange {

/// Reads a health intake: `answers` by question, each `true`, `false` or `{"yes": …, "marks": […], "detail": …}`; `regular_exerciser`,
/// `intended`, `resting` (`heart_rate`, `systolic`, `diastolic`), `note`, `agreed`. All may be absent; what is there is checked.
[[nodiscard]] JsonResult<clients::HealthIntake> readHealthIntake(const QJsonValue& value, const std::string& path);

/// The same again. What was not answered is left out.
[[nodiscard]] QJsonObject toJson(const clients::HealthIntake& intake);

}  // namespace chalk::exchange
