#pragma once

#include "ui/common/backup_keeper.h"
#include "ui/common/banner.h"

#include <QString>

#include <optional>
#include <vector>

namespace chalk::ui::settings {

/// One backup in the list.
struct BackupRow {
    QString file;
    QString text;  ///< `today 06:02 · 4.2 MB`

    bool operator==(const BackupRow&) const = default;
};

/// What the section of backups says, as plain values.
struct BackupScene {
    bool canRestore = true;                               ///< not where the studio is on a server
    std::optional<common::BannerMessage> trouble;         ///< the last one did not go
    QString last;                                         ///< when, how large, verified
    QString place;                                        ///< where it is
    QString rule;
    std::vector<BackupRow> rows;                          ///< the latest first
    std::vector<BackupRow> damaged;                       ///< what was kept when a backup took its place, the latest first
    QString further;                                      ///< of the folder on another disk
    std::optional<common::BannerMessage> furtherTrouble;  ///< it is not there, or could not be written
    bool hasFurther = false;
};

/// Reads the folder of backups and what the keeper knows.
[[nodiscard]] BackupScene backupScene(const common::BackupKeeper& keeper);
/// What is said where a backup did not go; the words for damage are others.
[[nodiscard]] common::BannerMessage backupTrouble(const store::StoreError& why);

}  // namespace chalk::ui::settings
