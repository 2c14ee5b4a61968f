#include "app/studio_rescue.h"

#include "app/logging.h"
#include "app/studio_opening.h"
#include "app/system_clock.h"
#include "core/store/backup_shelf.h"
#include "core/store/key_ring.h"
#include "ui/common/backup_keeper.h"
#include "ui/common/dialogs.h"
#include "ui/common/look.h"
#include "ui/lock/lock_desk.h"
#include "ui/settings/backup_scene.h"
#include "ui/settings/backup_words.h"
#include "ui/settings/waited_work.h"

#include <QApplication>

#include <cstdio>

#include <unistd.h>

namespace chalk::app {

namespace {

using Kind = store::StoreError::Kind;
using Restored = store::Result<store::RestoredStudio>;
using MaybeSound = std::optional<store::SoundBackup>;

store::BackupShelf shelfFor(const QString& studioFile)
{
    return {store::BackupShelf::folderFor(studioFile), SystemClock::localMoment};
}

/// Whether there is somebody to ask.
bool hasScreen()
{
    return QGuiApplication::platformName() != QLatin1String("offscreen");
}

/// The last sound backup; where that is sealed, its passphrase is asked for before it is looked at.
MaybeSound lookForSound(const store::BackupShelf& shelf, const store::Access& access, const ui::common::Look& look)
{
    const auto latest = [&] {
        return ui::settings::waitFor<MaybeSound>(look, nullptr, QApplication::translate("StudioRescue", "Looking for the last sound backup…"),
                                                 [&](const store::Progress& progress) { return shelf.latestSound(progress, access.keys.get()); });
    };
    MaybeSound sound = latest();
    while (sound && sound->isLocked && ui::lock::askForBackup(look, access, sound->backup.file)) {
        sound = latest();
    }
    return sound;
}

void sayThatNothingWasRestored(ui::common::Dialogs& dialogs, const store::StoreError& error)
{
    qCWarning(appLog) << "nothing was restored: kind" << static_cast<int>(error.kind);
    dialogs.ask(nullptr, {ui::common::Signal::Warn, QApplication::translate("StudioRescue", "Nothing was restored."), error.message, {}, {}, 0});
}

}  // namespace

StudioOpening openOrRescue(const store::Access& access, store::OpenMode mode, const ui::common::Look& look, ui::common::Dialogs& dialogs)
{
    auto opened = openForWindow(access, mode);
    if (opened || !hasScreen() || (opened.error().kind != Kind::Damaged && opened.error().kind != Kind::NotAStudio)) {
        return {std::move(opened)};
    }
    const store::BackupShelf shelf = shelfFor(access.target);
    if (opened.error().kind == Kind::NotAStudio && shelf.list().empty()) {
        return {std::move(opened)};  // somebody else's file
    }
    ui::common::applyTheme(*qApp, look.theme());
    const auto sound = lookForSound(shelf, access, look);
    const int answer = dialogs.ask(nullptr, ui::settings::rescueQuestion(opened.error(), sound, shelf.folder(), SystemClock::localMoment().at.day));
    qCInfo(appLog) << "the studio is damaged; sound backup" << sound.has_value() << "answer" << answer;
    if (answer == 0 || (sound && sound->isLocked)) {
        return {std::move(opened), true};
    }
    const auto backup = sound ? std::optional(sound->backup.file)
                              : dialogs.fileToOpen(nullptr, {QApplication::translate("StudioRescue", "A backup of the studio"), shelf.folder(), {},
                                                             QApplication::translate("StudioRescue", "Studios (*.chalkrung)"), {}});
    if (!backup) {
        return {std::move(opened), true};
    }
    const bool isRestored = restoreForWindow(*backup, access, look, dialogs);
    return {openForWindow(access, mode), !isRestored};
}

bool restoreForWindow(const QString& backup, const store::Access& access, const ui::common::Look& look, ui::common::Dialogs& dialogs)
{
    const auto restored = ui::settings::waitFor<Restored>(look, nullptr, QApplication::translate("StudioRescue", "Restoring the backup…"), [&](const store::Progress& progress) {
        auto done = shelfFor(access.target).restore(backup, access.target, progress, access.keys.get());
        if (const auto noted = done ? store::noteRestored(access, backup) : store::Result<void>(); !noted) {
            qCWarning(appLog) << "the audit does not know of the restore: kind" << static_cast<int>(noted.error().kind);
        }
        return done;
    });
    if (!restored) {
        sayThatNothingWasRestored(dialogs, restored.error());
        return false;
    }
    qCInfo(appLog) << "a backup was restored";
    dialogs.ask(nullptr, ui::settings::rescuedMessage(*restored));
    return true;
}

void makeClosingBackup(ui::common::BackupKeeper& keeper, const ui::common::Look& look, ui::common::Dialogs& dialogs)
{
    keeper.end();
    std::optional<store::StoreError> fault;
    ui::settings::runAndWait(look, nullptr, QApplication::translate("StudioRescue", "Making the last backup of the day's work…"),
                           [&](const store::Progress& progress) { fault = keeper.makeLast(progress); });
    if (!fault || fault->kind == Kind::Cancelled) {
        return;
    }
    qCWarning(appLog) << "no backup at the end: kind" << static_cast<int>(fault->kind);
    std::fprintf(stderr, "chalkrung: no backup was made: %s\n", qUtf8Printable(fault->message));
    if (hasScreen()) {
        const ui::common::BannerMessage said = ui::settings::backupTrouble(*fault);
        dialogs.ask(nullptr, {said.signal, said.lead, said.text, {}, {}, 0});
    }
}

std::shared_ptr<store::KeyRing> keysOfBackup(const ui::common::Look& look, const QString& backup)
{
    store::Access access(backup);
    access.keys = std::make_shared<store::KeyRing>();
    return ui::lock::askForBackup(look, access, backup) ? access.keys : nullptr;
}

void sayThatItCannotOpen(const store::StoreError& error, bool isTold)
{
    qCWarning(appLog) << "the studio cannot be opened: kind" << static_cast<int>(error.kind);
    std::fprintf(stderr, "chalkrung: %s\n", qUtf8Printable(error.message));
    if (!isTold && ::isatty(STDERR_FILENO) == 0 && hasScreen()) {
        ui::common::applyTheme(*qApp, ui::common::Look().theme());
        ui::common::ScreenDialogs().ask(nullptr, {ui::common::Signal::Warn, QApplication::translate("StudioRescue", "The studio cannot be opened."),
                                                  error.message, {}, {}, 0});
    }
}

}  // namespace chalk::app
