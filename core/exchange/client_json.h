#pragma once

#include "core/exchange/json_reading.h"
#include "core/exchange/line_writer.h"
#include "core/exchange/studio_document.h"
#include "core/lifts/catalogue.h"

#include <set>
#include <string>

namespace chalk::exchange {

/// Reads the file of a client of `studio`, whose header is read already. `codes` are those of the sessions read before and get those
/// of this client: no two sessions of a studio have the same. The client's id is left to the caller.
[[nodiscard]] JsonResult<DocumentClient> readClient(const QJsonValue& value, const StudioDocument& studio, const lifts::Catalogue& catalogue,
                                                    std::set<std::string>& codes);

/// The file of a client, and the object in it.
[[nodiscard]] WrittenObject writtenClient(const DocumentClient& client, const StudioDocument& studio);

}  // namespace chalk::exchange
