#pragma once

#include "core/exchange/studio_document.h"
#include "core/store/database.h"
#include "core/store/studio_import.h"

namespace chalk::store {

/// The whole studio as plain values, as `importStudio` takes them: people and sessions in the order in which they came in, every entry
/// of the log with its former versions in the order in which it was entered. `today` becomes the document's day. Stops where
/// `progress` answers false.
[[nodiscard]] Result<exchange::StudioDocument> exportStudio(Database& database, base::Date today, const Progress& progress = {});

}  // namespace chalk::store
