#pragma once

#include "core/store/backup_shelf.h"
#include "ui/common/dialogs.h"

#include <QString>

#include <vector>

namespace chalk::ui::settings {

// What backups are in words.

/// `today 06:02`, `yesterday 19:40`, `Mon 23 Nov 2026, 19:40`.
[[nodiscard]] QString momentText(const store::KeptBackup& backup, base::Date today);
/// The same of a list, in its order; `today 06:02:41` where another has the minute too, and `(2)` behind it where its file has that for the second.
[[nodiscard]] std::vector<QString> momentTexts(const std::vector<store::KeptBackup>& backups, base::Date today);
/// `4.2 MB`.
[[nodiscard]] QString sizeText(qint64 bytes);
/// Which backups are kept, one sentence.
[[nodiscard]] QString rotationText(const studio::BackupRotation& rotation = {});
/// `2026-11-24T17:45:09Z` as the wall had it then: `24 Nov 2026, 18:45`; `nothing yet` for an empty one.
[[nodiscard]] QString lastActText(const QString& atUtc);

/// One line of what a backup holds beside what is open now.
struct ContentLine {
    QString what;
    QString backup;
    QString present;
    bool differs = false;
};
[[nodiscard]] std::vector<ContentLine> contentLines(const store::StudioContents& backup, const std::optional<store::StudioContents>& present);

/// What is asked where a studio cannot be opened because it is damaged: `Close` is the first answer and the safe one. Without a sound backup it is only told.
[[nodiscard]] common::Question rescueQuestion(const store::StoreError& damage, const std::optional<store::SoundBackup>& sound, const QString& folder, base::Date today);
/// What is told after it was restored.
[[nodiscard]] common::Question rescuedMessage(const store::RestoredStudio& restored);

}  // namespace chalk::ui::settings
