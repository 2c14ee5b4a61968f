#pragma once

#include "core/store/database.h"
#include "core/store/studio_import.h"

#include <QString>

#include <cstdint>

namespace chalk::store {

class KeyRing;

/// What a studio's file holds, as far as it can be told without bringing it up to the present schema.
struct StudioContents {
    QString name;
    int schema = 0;
    qint64 bytes = 0;
    int clients = 0;
    int lifts = 0;
    int sessions = 0;
    int entries = 0;        ///< of the log, with all versions
    QString lastActAtUtc;   ///< of the act that was done last, whatever the clock said then; ISO 8601; empty where nothing was done

    bool operator==(const StudioContents&) const = default;
};

/// What a file holds, without changing it or anything beside it. Fails with what `checkSqliteFile` says, and where the schema is newer than ours.
[[nodiscard]] Result<StudioContents> contentsOf(const QString& file);

/// The same of a file that is sound: its structure and its references are looked at too. Damaged where they are not; Cancelled where `progress` says stop. A
/// sealed one is opened by `keys` first, and Locked where they do not fit or there are none.
[[nodiscard]] Result<StudioContents> verifyBackup(const QString& file, const Progress& progress = {}, const KeyRing* keys = nullptr);

/// Writes a copy of a studio to a file that is not there yet, in one state of the data, whoever else writes meanwhile: by SQLite's own backup interface, into a
/// file beside it that nobody else can read, which is synced, opened and verified (its structure and its references) before it gets its name. `progress`
/// is told pages. The copy of a sealed studio is sealed whole (see sealed_copy.h); a studio on a server is copied row by row and compared. Nothing is
/// left behind where it fails.
[[nodiscard]] Result<void> copyStudio(Database& studio, const QString& file, const Progress& progress = {});

/// Puts a backup in the place of a studio's file: the backup is verified, what is there now is kept as `kept` (which is not there yet) where there is
/// something (a log that waits beside it as `kept`-wal), and the exchange is one renaming. Refused while another program holds the studio. Nothing is changed where it fails.
[[nodiscard]] Result<void> restoreStudio(const QString& backup, const QString& studio, const QString& kept, const Progress& progress = {});

}  // namespace chalk::store
