#include "core/store/backup_shelf.h"

#include "core/store/audit.h"
#include "core/store/private_folder.h"
#include "core/store/sealed_copy.h"
#include "core/store/server_target.h"
#include "core/store/unfinished_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>

#include <algorithm>
#include <tuple>

namespace chalk::store {

namespace {

constexpr int kMinutesAnHour = 60;
constexpr int kMostOfOneSecond = 100;

/// In front of the moment of a damaged studio that was kept.
QString damagedMark()
{
    return QStringLiteral("damaged ");
}

/// `2026-11-24 17.45.09.chalkrung`, with ` (2)` before the point where a second had one already, and `before` in front.
std::optional<KeptBackup> backupNamed(const QFileInfo& info, const QString& before)
{
    if (!info.fileName().startsWith(before)) {
        return std::nullopt;
    }
    static const QRegularExpression pattern(QStringLiteral("^(\\d{4}-\\d\\d-\\d\\d) ([01]\\d|2[0-3])\\.([0-5]\\d)\\.([0-5]\\d)( \\(\\d+\\))?\\.chalkrung$"));
    const QRegularExpressionMatch match = pattern.match(info.fileName().mid(before.size()));
    const auto day = match.hasMatch() ? base::Date::parse(match.captured(1).toStdString()) : std::nullopt;
    if (!day) {
        return std::nullopt;
    }
    return KeptBackup{info.filePath(), {*day, match.captured(2).toInt() * kMinutesAnHour + match.captured(3).toInt()}, match.captured(4).toInt()};
}

bool isLater(const KeptBackup& a, const KeptBackup& b)
{
    return std::tie(a.made, a.second, a.file) > std::tie(b.made, b.second, b.file);
}

std::vector<KeptBackup> backupsIn(const QString& folder, const QString& before)
{
    std::vector<KeptBackup> backups;
    for (const QFileInfo& info : QDir(folder).entryInfoList(QDir::Files)) {
        if (auto backup = backupNamed(info, before)) {
            backups.push_back(*std::move(backup));
        }
    }
    std::sort(backups.begin(), backups.end(), isLater);
    return backups;
}

QString nameFor(const BackupShelf::Moment& moment, int number)
{
    const QString counted = number > 1 ? QStringLiteral(" (%1)").arg(number) : QString();
    return QStringLiteral("%1 %2.%3.%4%5.chalkrung")
        .arg(QString::fromStdString(moment.at.day.toString()))
        .arg(moment.at.minute / kMinutesAnHour, 2, 10, QLatin1Char('0'))
        .arg(moment.at.minute % kMinutesAnHour, 2, 10, QLatin1Char('0'))
        .arg(moment.second, 2, 10, QLatin1Char('0'))
        .arg(counted);
}

}  // namespace

BackupShelf::BackupShelf(QString folder, std::function<Moment()> clock) : m_folder(std::move(folder)), m_clock(std::move(clock)) {}

QString BackupShelf::folderFor(const QString& studioFile)
{
    if (const auto server = serverTargetOf(studioFile)) {
        // Beside the user's own studio, by where it is.
        return QFileInfo(defaultStudioFile()).absolutePath() + QStringLiteral("/backups/") + server->host + QLatin1Char('-') + server->database;
    }
    const QFileInfo info(studioFile);
    return info.absolutePath() + QStringLiteral("/backups/") + info.completeBaseName();
}

std::vector<KeptBackup> BackupShelf::list() const
{
    std::vector<KeptBackup> backups = backupsIn(m_folder, {});
    const Moment now = m_clock();
    std::stable_partition(backups.begin(), backups.end(),
                          [&now](const KeptBackup& backup) { return std::tie(backup.made, backup.second) <= std::tie(now.at, now.second); });
    return backups;
}

std::vector<KeptBackup> BackupShelf::damaged() const
{
    return backupsIn(m_folder, damagedMark());
}

Result<void> BackupShelf::discardDamaged(const QString& file) const
{
    const std::vector<KeptBackup> all = damaged();
    if (std::none_of(all.begin(), all.end(), [&file](const KeptBackup& one) { return one.file == file; })) {
        return storeError(StoreError::Kind::NotThere, QStringLiteral("%1 is no damaged studio that was kept").arg(file));
    }
    for (const char* ending : {"-wal", "-journal", ""}) {
        QFile part(file + QLatin1String(ending));
        if (part.exists() && !part.remove()) {
            return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be deleted: %2").arg(part.fileName(), part.errorString()));
        }
    }
    return {};
}

bool BackupShelf::hasOneOf(base::Date day) const
{
    const auto backups = list();
    return std::any_of(backups.begin(), backups.end(), [day](const KeptBackup& backup) { return backup.made.day == day; });
}

Result<QString> BackupShelf::nextFile(const QString& before) const
{
    if (!makePrivateFolder(m_folder)) {
        return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be made").arg(m_folder));
    }
    const Moment now = m_clock();
    for (int number = 1; number <= kMostOfOneSecond; ++number) {
        const QString file = m_folder + QLatin1Char('/') + before + nameFor(now, number);
        if (!QFileInfo::exists(file)) {
            return file;
        }
    }
    return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1 has too many backups of one second").arg(m_folder));
}

Result<QString> BackupShelf::add(Database& studio, const Progress& progress)
{
    const auto file = nextFile();
    if (!file) {
        return file;
    }
    UnfinishedFile::clear(m_folder);
    if (auto made = copyStudio(studio, *file, progress); !made) {
        return tl::make_unexpected(made.error());
    }
    rotate();
    return file;
}

Result<QString> BackupShelf::copyTo(const QString& folder, const QString& backup, const Progress& progress) const
{
    if (!QFileInfo(folder).isDir()) {
        return storeError(StoreError::Kind::NotThere, QStringLiteral("%1 is not there").arg(folder));
    }
    const BackupShelf there(QDir(folder).filePath(QFileInfo(m_folder).fileName()), m_clock);
    if (auto isMade = there.nextFile(); !isMade) {
        return isMade;
    }
    UnfinishedFile::clear(there.m_folder);
    QString copy = there.m_folder + QLatin1Char('/') + QFileInfo(backup).fileName();
    if (auto copied = copyWholeFile(backup, copy, progress); !copied) {
        return tl::make_unexpected(copied.error());
    }
    there.rotate();
    return copy;
}

std::optional<SoundBackup> BackupShelf::latestSound(const Progress& progress, const KeyRing* keys) const
{
    const std::vector<KeptBackup> backups = list();
    for (std::size_t i = 0; i < backups.size(); ++i) {
        const auto goesOn = [&](int, int) { return !progress || progress(static_cast<int>(i), static_cast<int>(backups.size())); };
        if (!goesOn(0, 0)) {
            return std::nullopt;
        }
        auto contents = verifyBackup(backups[i].file, goesOn, keys);
        if (contents) {
            return SoundBackup{backups[i], *std::move(contents)};
        }
        if (contents.error().kind == StoreError::Kind::Locked) {
            return SoundBackup{backups[i], {}, true};
        }
    }
    return std::nullopt;
}

Result<RestoredStudio> BackupShelf::restore(const QString& backup, const QString& studioFile, const Progress& progress, const KeyRing* keys) const
{
    const KeyRing none{};
    const auto opened = OpenedCopy::of(backup, keys != nullptr ? *keys : none, {}, progress);
    if (!opened) {
        return tl::make_unexpected(opened.error());
    }
    RestoredStudio restored;
    const bool isThere = QFileInfo::exists(studioFile);
    if (const auto present = isThere ? verifyBackup(studioFile, progress) : Result<StudioContents>(); !present) {
        const StoreError::Kind kind = present.error().kind;
        if (kind == StoreError::Kind::Cancelled) {
            return tl::make_unexpected(present.error());
        }
        restored.wasDamaged = kind == StoreError::Kind::Damaged || kind == StoreError::Kind::NotAStudio;
    }
    const auto kept = nextFile(restored.wasDamaged ? damagedMark() : QString());
    if (!kept) {
        return tl::make_unexpected(kept.error());
    }
    if (auto done = restoreStudio(opened->path(), studioFile, *kept, progress); !done) {
        return tl::make_unexpected(done.error());
    }
    restored.kept = isThere ? *kept : QString();
    return restored;
}

int BackupShelf::rotate() const
{
    const std::vector<KeptBackup> backups = list();
    std::vector<studio::BackupMoment> moments;
    for (const KeptBackup& backup : backups) {
        moments.push_back(backup.made);
    }
    int gone = 0;
    for (const std::size_t index : studio::spentBackups(moments, m_clock().at)) {
        gone += QFile::remove(backups[index].file) ? 1 : 0;
    }
    return gone;
}

Result<void> noteRestored(const Access& studio, const QString& backup)
{
    const auto database = Database::open(studio, OpenMode::MustExist);
    if (!database) {
        return tl::make_unexpected(database.error());
    }
    return noteInAudit(**database, AuditWhat::StudioRestored, {}, {{QStringLiteral("backup"), QFileInfo(backup).fileName()}});
}

}  // namespace chalk::store
