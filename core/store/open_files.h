#pragma once

#include "core/store/database.h"
#include "core/store/studio_import.h"

#include <QString>

namespace chalk::store {

/// Which open files are wanted.
struct OpenFilesWish {
    bool isJson = true;     ///< `studio.json`, `clients/` and a README.md that describes the format
    bool isCsv = true;      ///< `tables/` with a README.txt that describes every column
    base::ClientId client;  ///< only of this one; none: of everybody
};

/// Writes a studio as open files into a folder, which is made where it is not there; client by client, so that a big studio takes no more
/// memory than a small one. Files are readable by their owner only. They take the places of older ones of their names all at the end: what was
/// stopped or cannot be written leaves the folder as it was. Answers how many clients were written, and notes in the audit who took the data out.
[[nodiscard]] Result<int> writeOpenFiles(Database& database, const QString& folder, const OpenFilesWish& wish, base::Date today, const Progress& progress = {});

/// Takes a studio from open files into a database that holds none yet: from JSON where that is there, else from tables, in the folder itself or in
/// its `tables/`. Everything or nothing; what is wrong names the file, the line and the column. Answers how many clients there are.
[[nodiscard]] Result<int> readOpenFiles(Database& database, const QString& folder, const QString& atUtc, const Progress& progress = {});

}  // namespace chalk::store
