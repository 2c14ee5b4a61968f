#include "core/store/backup_shelf.h"

#include "core/store/server_target.h"

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

/// `2026-11-24 17.45.09.chalkrung`, with ` (2)` before the point where a second had one already.
std::optional<KeptBackup> backupNamed(const QFileInfo& info)
{
    static const QRegularExpression pattern(QStringLiteral("^(\\d{4}-\\d\\d-\\d\\d) ([01]\\d|2[0-3])\\.([0-5]\\d)\\.([0-5]\\d)( \\(\\d+\\))?\\.chalkrung$"));
    const QRegularExpressionMatch match = pattern.match(info.fileName());
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
    std::vector<KeptBackup> backups;
    for (const QFileInfo& info : QDir(m_folder).entryInfoList(QDir::Files)) {
        if (auto backup = backupNamed(info)) {
            backups.push_back(*std::move(backup));
        }
    }
    std::sort(backups.begin(), backups.end(), isLater);
    return backups;
}

bool BackupShelf::hasOneOf(base::Date day) const
{
    const auto backups = list();
    return std::any_of(backups.begin(), backups.end(), [day](const KeptBackup& backup) { return backup.made.day == day; });
}

Result<QString> BackupShelf::nextFile() const
{
    const bool isThere = QDir(m_folder).exists();
    if (!isThere && !(QDir().mkpath(m_folder) && QFile::setPermissions(m_folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner))) {
        return storeError(StoreError::Kind::CannotWrite, QStringLiteral("%1 cannot be made").arg(m_folder));
    }
    const Moment now = m_clock();
    for (int number = 1; number <= kMostOfOneSecond; ++number) {
        const QString file = m_folder + QLatin1Char('/') + nameFor(now, number);
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
    if (auto made = copyStudio(studio, *file, progress); !made) {
        return tl::make_unexpected(made.error());
    }
    rotate();
    return file;
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

}  // namespace chalk::store
