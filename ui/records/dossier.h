#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/database.h"
#include "core/store/studio_import.h"

#include <QString>
#include <QStringList>

namespace chalk::ui::records {

/// `dossier-ada-lund`: what the folder or the files are called. No letter of it parts folders.
[[nodiscard]] QString dossierName(const QString& clientName);

/// Writes all that is kept of a client into a folder, which is made where it is not there: the client in the open format, the history of changes as
/// JSON and CSV, copies of letters, and `dossier.pdf` in plain words on A4. Readable by its owner only. It is noted in the audit, before it is made.
/// Where it is stopped, the folder is as it was. Answers the files by their names in the folder. Needs QGuiApplication and loadFonts(), any thread.
[[nodiscard]] store::Result<QStringList> writeDossier(store::Database& database, const lifts::Catalogue& catalogue, base::ClientId client, base::Date today,
                                                      const QString& folder, const store::Progress& progress = {});

}  // namespace chalk::ui::records
