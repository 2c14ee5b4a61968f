#include "app/commands/backup_command.h"

#include "app/commands/opened_backup.h"
#include "app/commands/stop_request.h"
#include "app/commands/way_back.h"
#include "app/system_clock.h"
#include "core/store/backup_shelf.h"
#include "core/store/server_target.h"
#include "core/store/studio_check.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

using store::StudioContents;

constexpr double kBytesAMegabyte = 1'000'000;

store::Progress untilStopped()
{
    return [](int, int) { return !StopRequest::isMade(); };
}

store::BackupShelf shelfOf(const CommandContext& context)
{
    return {store::BackupShelf::folderFor(context.studioFile), SystemClock::localMoment};
}

QString megabytesText(qint64 bytes)
{
    return QString::number(static_cast<double>(bytes) / kBytesAMegabyte, 'f', 1) + QStringLiteral(" MB");
}

void writeJson(const CommandContext& context, const QJsonObject& object)
{
    context.out << QJsonDocument(object).toJson(QJsonDocument::Indented);
}

QJsonObject contentsJson(const QString& file, const StudioContents& contents)
{
    return {{QStringLiteral("file"), file},
            {QStringLiteral("studio"), contents.name},
            {QStringLiteral("schema"), contents.schema},
            {QStringLiteral("bytes"), contents.bytes},
            {QStringLiteral("clients"), contents.clients},
            {QStringLiteral("lifts"), contents.lifts},
            {QStringLiteral("sessions"), contents.sessions},
            {QStringLiteral("entries"), contents.entries},
            {QStringLiteral("last_act"), contents.lastActAtUtc}};
}

QString contentsText(const QString& file, const StudioContents& contents)
{
    const QString last = contents.lastActAtUtc.isEmpty() ? QStringLiteral("nothing done yet") : QStringLiteral("last change %1").arg(contents.lastActAtUtc);
    return QStringLiteral("%1\n  %2: %3 clients, %4 lifts, %5 sessions, %6 entries in the log; %7; %8\n")
        .arg(file, contents.name)
        .arg(contents.clients)
        .arg(contents.lifts)
        .arg(contents.sessions)
        .arg(contents.entries)
        .arg(last, megabytesText(contents.bytes));
}

/// The same of a backup that may be sealed.
store::Result<StudioContents> contentsOfBackup(const CommandContext& context, const QString& file, store::KeyRing& keys)
{
    return openBackup(context, file, keys, false).and_then([](const store::OpenedCopy& copy) { return store::contentsOf(copy.path()); });
}

/// Tells what each backup on the shelf holds; one that cannot be read says why.
int listBackups(const CommandContext& context)
{
    store::KeyRing keys;
    QJsonArray list;
    QString text;
    for (const store::KeptBackup& backup : shelfOf(context).list()) {
        const auto contents = contentsOfBackup(context, backup.file, keys);
        list.append(contents ? contentsJson(backup.file, *contents)
                             : QJsonObject{{QStringLiteral("file"), backup.file}, {QStringLiteral("fault"), contents.error().message}});
        text += contents ? contentsText(backup.file, *contents) : contents.error().message + QLatin1Char('\n');
    }
    if (context.isJson()) {
        writeJson(context, {{QStringLiteral("backups"), list}});
    } else {
        context.out << (text.isEmpty() ? QStringLiteral("There is no backup in %1\n").arg(store::BackupShelf::folderFor(context.studioFile)) : text);
    }
    return kDone;
}

int runBackup(const CommandContext& context)
{
    if (context.has(QStringLiteral("list"))) {
        return context.has(QStringLiteral("to")) ? context.refuse(QStringLiteral("--list and --to do not go together")) : listBackups(context);
    }
    const auto studio = context.openStudio(store::OpenMode::MustExist);
    if (!studio) {
        return context.report(studio.error());
    }
    const StopRequest stop;
    const QString to = context.value(QStringLiteral("to"));
    const auto file = to.isEmpty() ? shelfOf(context).add(**studio, untilStopped())
                                   : store::copyStudio(**studio, to, untilStopped()).map([&to] { return to; });
    const auto contents = file.and_then([&](const QString& made) { return contentsOfBackup(context, made, *(*studio)->access().keys); });
    if (!contents) {
        return context.report(contents.error());
    }
    if (context.isJson()) {
        writeJson(context, contentsJson(*file, *contents));
    } else {
        context.out << QStringLiteral("Made and verified ") << contentsText(*file, *contents);
    }
    return kDone;
}

/// The audit of the studio says where it is from. One that stays sealed is not asked for its passphrase because of that.
store::Result<void> noteIn(const QString& studioFile, const std::shared_ptr<store::KeyRing>& keys, const QString& backup)
{
    store::Access access(studioFile);
    access.keys = keys;
    const auto noted = store::noteRestored(access, backup);
    return !noted && noted.error().kind == store::StoreError::Kind::Locked ? store::Result<void>() : noted;
}

int runRestore(const CommandContext& context)
{
    if (store::isServerTarget(context.studioFile)) {
        return context.refuse(QStringLiteral("A backup goes back to a server by chalkrung move --from FILE --to URL"));
    }
    const QString backup = context.operands.front();
    const auto keys = std::make_shared<store::KeyRing>();
    const auto opened = openBackup(context, backup, *keys, true);
    const auto contents = opened ? store::contentsOf(opened->path()) : tl::make_unexpected(opened.error());
    if (!contents) {
        return context.report(contents.error());
    }
    QJsonObject json = contentsJson(backup, *contents);
    if (!context.isJson()) {
        context.out << contentsText(backup, *contents);
    }
    if (!context.has(QStringLiteral("preview"))) {
        const StopRequest stop;
        const auto restored = shelfOf(context).restore(opened->path(), context.studioFile, untilStopped());
        if (!restored) {
            return context.report(restored.error());
        }
        json.insert(QStringLiteral("restored"), context.studioFile);
        if (!restored->kept.isEmpty()) {
            json.insert(QStringLiteral("kept"), restored->kept);
        }
        if (!context.isJson()) {
            context.out << QStringLiteral("Restored to %1\n").arg(context.studioFile);
            context.out << (restored->kept.isEmpty() ? QString() : QStringLiteral("What was there is kept as %1\n").arg(restored->kept));
        }
        if (const auto noted = noteIn(context.studioFile, keys, backup); !noted) {
            return context.report(noted.error());
        }
    }
    if (context.isJson()) {
        writeJson(context, json);
    }
    return kDone;
}

QString partName(store::CheckPart part)
{
    switch (part) {
    case store::CheckPart::Integrity:
        return QStringLiteral("integrity");
    case store::CheckPart::References:
        return QStringLiteral("references");
    case store::CheckPart::Replay:
        return QStringLiteral("replay");
    }
    return {};
}

int runVerify(const CommandContext& context)
{
    const auto studio = context.openStudio(store::OpenMode::MustExist);
    if (!studio) {
        return context.report(studio.error());
    }
    const StopRequest stop;
    const auto check = store::checkStudio(**studio, untilStopped());
    if (!check) {
        return context.report(check.error());
    }
    QJsonArray faults;
    for (const store::CheckFault& fault : check->faults) {
        faults.append(QJsonObject{{QStringLiteral("part"), partName(fault.part)}, {QStringLiteral("message"), fault.message}});
        if (!context.isJson()) {
            context.out << partName(fault.part) << QStringLiteral(": ") << fault.message << '\n';
        }
    }
    if (context.isJson()) {
        writeJson(context, {{QStringLiteral("sound"), check->isSound()}, {QStringLiteral("lifts"), check->lifts}, {QStringLiteral("faults"), faults}});
    } else if (check->isSound()) {
        context.out << QStringLiteral("Sound: structure, references, and %1 lifts replayed from their logs\n").arg(check->lifts);
    } else {
        const QString way = wayBackFrom(context.studioFile);
        context.out << (way.isEmpty() ? QStringLiteral("There is no sound backup in %1").arg(store::BackupShelf::folderFor(context.studioFile)) : way) << '\n';
    }
    return check->isSound() ? kDone : kFailed;
}

}  // namespace

Command backupCommand()
{
    return {QStringLiteral("backup"),
            QStringLiteral("make a verified backup of the studio, or list those there are"),
            QString(),
            0,
            0,
            {{QStringLiteral("to"), QStringLiteral("FILE"), QStringLiteral("write it to FILE, which must not be there; else to the folder of backups")},
             {QStringLiteral("list"), {}, QStringLiteral("tell what the backups hold, the latest first")}},
            QStringLiteral("A backup is a studio's file of its own: opened and verified before it gets its name, readable by you only. It can be made while\n"
                           "the window is open. The folder is backups/NAME beside NAME.chalkrung. Kept are the latest 10, and the last one of each of the\n"
                           "latest 14 days, 8 weeks and 12 months; the others are taken away when one is made."),
            runBackup};
}

Command restoreCommand()
{
    return {QStringLiteral("restore"),
            QStringLiteral("put a backup in the place of the studio"),
            QStringLiteral("FILE"),
            1,
            1,
            {{QStringLiteral("preview"), {}, QStringLiteral("only tell what FILE holds")}},
            QStringLiteral("What is there now is kept first: among the backups, or where it is damaged beside them as \"damaged DAY TIME\", which stays until you\n"
                           "delete it. Refused while the studio is open in a window."),
            runRestore};
}

Command verifyCommand()
{
    return {QStringLiteral("verify"),
            QStringLiteral("look for damage in the studio: structure, references, and a full replay"),
            QString(),
            0,
            0,
            {},
            QStringLiteral("Every lift is replayed from its log and compared with what is kept of it. Nothing is changed. Ends with 1 where something is wrong."),
            runVerify};
}

}  // namespace chalk::app
