#include "ui/settings/backup_scene.h"

#include "ui/settings/backup_words.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

namespace chalk::ui::settings {

namespace {

QString backupSceneWords(const char* text)
{
    return QCoreApplication::translate("BackupScene", text);
}

/// `shape` takes the moment and the size.
std::vector<BackupRow> rowsOf(const std::vector<store::KeptBackup>& backups, const QString& shape, base::Date today)
{
    const std::vector<QString> moments = momentTexts(backups, today);
    std::vector<BackupRow> rows;
    for (std::size_t i = 0; i < backups.size(); ++i) {
        rows.push_back({backups[i].file, shape.arg(moments[i], sizeText(QFileInfo(backups[i].file).size()))});
    }
    return rows;
}

void addFurther(BackupScene& scene, const common::BackupKeeper& keeper)
{
    const QString& folder = keeper.furtherFolder();
    scene.hasFurther = !folder.isEmpty();
    if (!scene.hasFurther) {
        scene.further = backupSceneWords("Nowhere yet. A stick or another disk keeps the studio where this machine is lost.");
        return;
    }
    const QString shown = QDir::toNativeSeparators(folder);
    scene.further = backupSceneWords("Each backup is copied to %1 too, and read again there.").arg(shown);
    const QString fault = keeper.last() ? keeper.last()->furtherFault : QString();
    if (!QFileInfo(folder).isDir()) {
        scene.furtherTrouble = {common::Signal::Warn, QStringLiteral("warning"), backupSceneWords("%1 is not there.").arg(shown),
                                backupSceneWords("Plug it in and back up: until then the backups are on this machine only. Nothing is lost.")};
    } else if (!fault.isEmpty()) {
        scene.furtherTrouble = {common::Signal::Warn, QStringLiteral("warning"), backupSceneWords("The last backup was not copied."),
                                backupSceneWords("%1. It is on this machine all the same.").arg(fault)};
    }
}

}  // namespace

common::BannerMessage backupTrouble(const store::StoreError& why)
{
    if (why.kind == store::StoreError::Kind::Damaged) {
        return {common::Signal::Pain, QStringLiteral("warning"), backupSceneWords("The studio file is damaged."),
                backupSceneWords("%1. Go back to the last sound backup; what is open now is kept beside it.").arg(why.message)};
    }
    if (why.kind == store::StoreError::Kind::Cancelled) {
        return {common::Signal::Warn, QStringLiteral("backup"), backupSceneWords("The backup was stopped."), backupSceneWords("The studio itself is saved.")};
    }
    return {common::Signal::Warn, QStringLiteral("backup"), backupSceneWords("No backup was made."), backupSceneWords("%1. The studio itself is saved.").arg(why.message)};
}

BackupScene backupScene(const common::BackupKeeper& keeper)
{
    BackupScene scene;
    scene.canRestore = !keeper.isOnServer();
    const base::Date today = keeper.now().at.day;
    const store::BackupShelf shelf = keeper.shelf();
    scene.rows = rowsOf(shelf.list(), backupSceneWords("%1 · %2"), today);
    scene.damaged = rowsOf(shelf.damaged(), backupSceneWords("Kept %1 · %2"), today);
    if (const auto& fault = keeper.fault()) {
        scene.trouble = backupTrouble(*fault);
    }
    if (scene.rows.empty()) {
        scene.last = backupSceneWords("None yet. One is made on every day that the studio is open, and when it is closed.");
    } else {
        QString text = scene.rows.front().text;
        text[0] = text[0].toUpper();
        scene.last = backupSceneWords("%1 · opened and verified after it was written.").arg(text);
    }
    scene.place = QDir::toNativeSeparators(shelf.folder());
    scene.rule = rotationText();
    addFurther(scene, keeper);
    return scene;
}

}  // namespace chalk::ui::settings
