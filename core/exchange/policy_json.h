#pragma once

#include "core/exchange/json_reading.h"
#include "core/progression/policy.h"

namespace chalk::exchange {

/// Reads the fields that are there over `base`; the result is sound.
[[nodiscard]] JsonResult<progression::Policy> readPolicy(const QJsonValue& value, const std::string& path, const progression::Policy& base);

/// The fields in which `policy` differs from `base`.
[[nodiscard]] QJsonObject differences(const progression::Policy& policy, const progression::Policy& base);

}  // namespace chalk::exchange
