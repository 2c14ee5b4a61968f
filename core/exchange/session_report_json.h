#pragma once

#include "core/exchange/json_reading.h"
#include "core/sessions/session_report.h"

#include <QJsonObject>

#include <string>

namespace chalk::exchange {

/// Reads a session's report, strictly: `sleep`, `soreness`, `stress` (1 to 5), `effort` (0 to 10 in halves), `minutes` (1 to 480) and `note`,
/// each where it was said.
[[nodiscard]] JsonResult<sessions::SessionReport> readSessionReport(const QJsonValue& value, const std::string& path);
/// An empty object for an empty report.
[[nodiscard]] QJsonObject toJson(const sessions::SessionReport& report);

}  // namespace chalk::exchange
