#pragma once

#include "core/clients/body_measures.h"
#include "core/clients/profile.h"
#include "core/exchange/json_reading.h"

#include <QJsonObject>

namespace chalk::exchange {

/// Reads a profile: `pronouns`, `sex`, `phone`, `email`, `emergency` (`name`, `phone`), `training_history`, `session_minutes`, `in_group`,
/// `free` and `preferred` (lists of `{"day": "mon", "from": "07:00", "to": "09:30"}`), `home_kit`, `consent`, `guardian`, `guardian_consent`.
/// All may be absent.
[[nodiscard]] JsonResult<clients::Profile> readProfile(const QJsonValue& value, const std::string& path);
[[nodiscard]] QJsonObject toJson(const clients::Profile& profile);

/// Reads what was measured on one day: `date`, `mass_kg`, `height_cm`, `waist_cm`, `skinfolds_mm` (three), `heart_rate`, `systolic`, `diastolic`.
/// Ranges are those of BodyMeasures; a mass is in whole grams.
[[nodiscard]] JsonResult<clients::BodyMeasures> readBodyMeasures(const QJsonValue& value, const std::string& path);
[[nodiscard]] QJsonObject toJson(const clients::BodyMeasures& measures);

}  // namespace chalk::exchange
