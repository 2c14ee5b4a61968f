#include "app/commands/way_back.h"

#include "app/system_clock.h"
#include "core/store/backup_shelf.h"

namespace chalk::app {

namespace {

/// As a shell takes it for one word.
QString shellWord(QString text)
{
    return QLatin1Char('\'') + text.replace(QLatin1Char('\''), QStringLiteral("'\\''")) + QLatin1Char('\'');
}

}  // namespace

QString wayBackFrom(const QString& studioFile)
{
    const auto last = store::BackupShelf(store::BackupShelf::folderFor(studioFile), SystemClock::localMoment).latestSound();
    if (!last) {
        return {};
    }
    if (last->isLocked) {
        return QStringLiteral("the last backup is sealed; to go back to it: chalkrung restore %1 --studio %2").arg(shellWord(last->backup.file), shellWord(studioFile));
    }
    return QStringLiteral("the last sound backup holds %1 clients and %2 sessions; to go back to it: chalkrung restore %3 --studio %4")
        .arg(last->contents.clients)
        .arg(last->contents.sessions)
        .arg(shellWord(last->backup.file), shellWord(studioFile));
}

}  // namespace chalk::app
