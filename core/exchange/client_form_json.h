#pragma once

#include "core/exchange/json_reading.h"
#include "core/studio/client_form.h"

#include <QJsonObject>

#include <string>

namespace chalk::exchange {

/// Reads what a form of a kind says, strictly: see the readers of the kinds. An unknown kind is a fault of `path` itself.
[[nodiscard]] JsonResult<studio::FormContent> readFormContent(const std::string& kind, const QJsonValue& value, const std::string& path);
[[nodiscard]] QJsonObject toJson(const studio::FormContent& content);

/// Reads a form: `kind`, `day`, `finished` and `detail`. Nothing in it lies after `today`.
[[nodiscard]] JsonResult<studio::DocumentForm> readForm(const QJsonValue& value, const std::string& path, base::Date today);
[[nodiscard]] QJsonObject toJson(const studio::DocumentForm& form);

/// Reads a doctor's answer: `written_by`, `day`, `limits`, `answers` (marks of the intake), and where they are there `valid_until`, `file_name` and
/// `copy`, its bytes as Base64.
[[nodiscard]] JsonResult<studio::DocumentLetter> readLetter(const QJsonValue& value, const std::string& path, base::Date today);
[[nodiscard]] QJsonObject toJson(const studio::DocumentLetter& letter);

}  // namespace chalk::exchange
