#pragma once

#include "core/store/backup.h"
#include "core/studio/backup_rotation.h"

#include <QString>

#include <functional>
#include <optional>
#include <vector>

namespace chalk::store {

/// A backup on a shelf.
struct KeptBackup {
    QString file;
    studio::BackupMoment made;
    int second = 0;

    bool operator==(const KeptBackup&) const = default;
};

/// The backups of one studio's file: a folder, whose files are named by the moment they were made, `2026-11-24 17.45.09.chalkrung`.
class BackupShelf {
public:
    /// `folder` is made when the first backup is. `clock` is the studio's: the day, the minute and the second.
    struct Moment {
        studio::BackupMoment at;
        int second = 0;
    };
    BackupShelf(QString folder, std::function<Moment()> clock);

    /// `backups/NAME` beside a studio's file NAME.chalkrung.
    [[nodiscard]] static QString folderFor(const QString& studioFile);

    /// The latest first; what has another name is no backup of ours and left alone.
    [[nodiscard]] std::vector<KeptBackup> list() const;
    /// Whether a day has one already.
    [[nodiscard]] bool hasOneOf(base::Date day) const;
    /// Makes one (see copyStudio), then takes away those that may go. Answers its file. One that cannot be taken away stays.
    [[nodiscard]] Result<QString> add(Database& studio, const Progress& progress = {});
    /// The name for a file that is to be kept here now; its folder is made. Nobody has it yet.
    [[nodiscard]] Result<QString> nextFile() const;
    /// Takes away what may go by the rotation; answers how many went.
    int rotate() const;

private:
    QString m_folder;
    std::function<Moment()> m_clock;
};

}  // namespace chalk::store
