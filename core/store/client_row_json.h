#pragma once

#include "core/clients/client.h"

#include <QJsonObject>

namespace chalk::store {

// A client's own values and cautions as JSON, to set two versions of them side by side. What is not known is left out.

/// `name`, `birth_date`, `goal`, `coach` (its id), `unit`, `body_mass` (in that unit), `started_on`, `sessions_per_week`, `away_until`.
[[nodiscard]] QJsonObject rowJson(const clients::Client& client);
/// The client that was written so; the id is that of `whose`, and so is what cannot be read.
[[nodiscard]] clients::Client clientIn(const QJsonObject& row, const clients::Client& whose);

/// `body_part`, `text`, `short`, `tags`, `until`.
[[nodiscard]] QJsonObject rowJson(const clients::Caution& caution);
/// The caution that was written so; the id is that of `whose`. A tag that is unknown is left out.
[[nodiscard]] clients::Caution cautionIn(const QJsonObject& row, const clients::Caution& whose);

}  // namespace chalk::store
