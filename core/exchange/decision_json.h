#pragma once

#include "core/exchange/json_reading.h"
#include "core/exchange/studio_document.h"

#include <QJsonObject>

#include <map>

namespace chalk::exchange {

/// `day`, `about`, `choice`, `note`, `next_review`, and `lift`, a pattern, where it is about one.
[[nodiscard]] JsonResult<DocumentDecision> readDecision(const QJsonValue& value, const std::string& path);
[[nodiscard]] QJsonObject toJson(const DocumentDecision& decision);

/// Reads `decisions` and `quotas` of a client, where they are there: after the client's lifts. No decision lies after `today`; what is
/// wrong becomes the fault of the reader.
void readCheckIn(ObjectReader& reader, DocumentClient& client, base::Date today);
/// Sessions by Monday: `{"2026-11-23": 1}`.
[[nodiscard]] QJsonObject toJson(const std::map<base::Date, int>& quotas);

}  // namespace chalk::exchange
