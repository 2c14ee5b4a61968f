#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/database.h"
#include "ui/records/dossier_sheet.h"

namespace chalk::ui::records {

/// Reads all that is kept of a client and puts it into words: the person, health, screens, lifts, sessions, the log, decisions, plans, and
/// who changed what.
[[nodiscard]] store::Result<DossierContent> readDossierContent(store::Database& database, const lifts::Catalogue& catalogue, base::ClientId client,
                                                                      base::Date today);

}  // namespace chalk::ui::records
