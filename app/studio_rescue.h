#pragma once

#include "core/store/database.h"

#include <QString>

namespace chalk::ui::common {
class BackupKeeper;
class Dialogs;
class Look;
}

namespace chalk::app {

/// What came of opening a studio.
struct StudioOpening {
    store::Result<std::unique_ptr<store::Database>> database;
    bool isTold = false;  ///< the person has read in a box why there is none
};

/// Opens a studio for its window. Where it is damaged, its last sound backup is looked for and offered: only where the person agrees it takes the damaged
/// one's place, which is kept. Else the damage is the answer.
[[nodiscard]] StudioOpening openOrRescue(const store::Access& access, store::OpenMode mode, const ui::common::Look& look, ui::common::Dialogs& dialogs);

/// Puts a backup in the place of a studio that nobody holds open any more, and tells what became of it: false where nothing was restored.
bool restoreForWindow(const QString& backup, const store::Access& access, const ui::common::Look& look, ui::common::Dialogs& dialogs);

/// Makes the last backup before the end and waits for it; the person can stop it. Where it did not go, that is said.
void makeClosingBackup(ui::common::BackupKeeper& keeper, const ui::common::Look& look, ui::common::Dialogs& dialogs);

/// Asks for the passphrase of a sealed backup; null where the person leaves it sealed.
[[nodiscard]] std::shared_ptr<store::KeyRing> keysOfBackup(const ui::common::Look& look, const QString& backup);

/// On standard error, and where nobody reads that, in a box of its own, unless the person was told already.
void sayThatItCannotOpen(const store::StoreError& error, bool isTold);

}  // namespace chalk::app
