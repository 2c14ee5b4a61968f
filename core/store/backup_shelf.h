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

/// A backup that was opened and found sound just now.
struct SoundBackup {
    KeptBackup backup;
    StudioContents contents;
    bool isLocked = false;  ///< it is sealed and was not opened: nothing is known of its contents
};

/// What became of a studio's file when a backup took its place.
struct RestoredStudio {
    QString kept;             ///< where what was there is now; empty where nothing was
    bool wasDamaged = false;  ///< then no rotation takes it away
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

    [[nodiscard]] const QString& folder() const { return m_folder; }
    /// The latest first; those with a moment after now (a clock that was wrong) after all others. What has another name is no backup of ours and left alone.
    [[nodiscard]] std::vector<KeptBackup> list() const;
    /// Damaged studios that were kept when a backup took their place, the latest first. They stay until somebody deletes them.
    [[nodiscard]] std::vector<KeptBackup> damaged() const;
    /// Deletes one of these, with the log that was kept beside it. Fails where it cannot be taken away, and where it is none of these.
    [[nodiscard]] Result<void> discardDamaged(const QString& file) const;
    /// Whether a day has one already.
    [[nodiscard]] bool hasOneOf(base::Date day) const;
    /// Makes one (see copyStudio), then takes away those that may go. Answers its file. One that cannot be taken away stays.
    [[nodiscard]] Result<QString> add(Database& studio, const Progress& progress = {});
    /// Copies one of these to `folder`/NAME, on another disk, and takes away there what may go by the same rule; answers its file. Fails where `folder` is not
    /// there (a stick that is not plugged in): it is never made.
    [[nodiscard]] Result<QString> copyTo(const QString& folder, const QString& backup, const Progress& progress = {}) const;
    /// The latest that is sound, or that is sealed and no `keys` open; none where there is none or `progress` says stop. It is told how many were looked at.
    [[nodiscard]] std::optional<SoundBackup> latestSound(const Progress& progress = {}, const KeyRing* keys = nullptr) const;
    /// Puts a backup in the place of a studio (see restoreStudio); one that is sealed is opened by `keys`. What was there becomes one of these; where it is damaged, it is kept beside them as
    /// `damaged MOMENT.chalkrung`, which is no backup and stays until somebody deletes it.
    [[nodiscard]] Result<RestoredStudio> restore(const QString& backup, const QString& studioFile, const Progress& progress = {}, const KeyRing* keys = nullptr) const;
    /// The name for a file that is to be kept here now, with `before` in front of the moment; its folder is made. Nobody has it yet.
    [[nodiscard]] Result<QString> nextFile(const QString& before = {}) const;
    /// Takes away what may go by the rotation; answers how many went.
    int rotate() const;

private:
    QString m_folder;
    std::function<Moment()> m_clock;
};

/// Writes into the audit of a studio that `backup` took its place. Locked where `studio` is sealed and its keys are not at hand.
[[nodiscard]] Result<void> noteRestored(const Access& studio, const QString& backup);

}  // namespace chalk::store
