#include "core/store/unfinished_file.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <atomic>
#include <cerrno>
#include <cstdio>

#include <fcntl.h>
#include <unistd.h>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

constexpr qint64 kChunk = 1'000'000;
constexpr qint64 kLeftForGoodSeconds = 3600;

bool syncPath(const QString& path, int flags)
{
    const int descriptor = ::open(QFile::encodeName(path).constData(), flags | O_CLOEXEC);
    const bool isSynced = descriptor >= 0 && ::fsync(descriptor) == 0;
    if (descriptor >= 0) {
        ::close(descriptor);
    }
    return isSynced;
}

/// What a part may have beside it while SQLite writes it. A log that was left would be played into the next one of its name.
constexpr const char* kPartEndings[] = {"", "-journal", "-wal", "-shm"};

QString partOf(const QString& wanted)
{
    static std::atomic<int> made = 0;
    return QStringLiteral("%1.%2-%3.part").arg(wanted).arg(QCoreApplication::applicationPid()).arg(++made);
}

void takeAwayPart(const QString& part)
{
    for (const char* ending : kPartEndings) {
        QFile::remove(part + QLatin1String(ending));
    }
}

/// Forgets what memory holds of a file that is synced, so that it is read from the disk.
void forgetCached(int descriptor)
{
    ::posix_fadvise(descriptor, 0, 0, POSIX_FADV_DONTNEED);
}

/// Goes through a file by chunks until `take` answers false.
template <class Take>
Result<void> readThrough(const QString& file, const Progress& progress, Take take)
{
    QFile in(file);
    if (!in.open(QIODevice::ReadOnly)) {
        return storeError(Kind::CannotRead, QStringLiteral("%1 cannot be read: %2").arg(file, in.errorString()));
    }
    forgetCached(in.handle());
    const int chunks = static_cast<int>(in.size() / kChunk) + 1;
    for (int chunk = 0; !in.atEnd(); ++chunk) {
        if (progress && !progress(chunk, chunks)) {
            return storeError(Kind::Cancelled, QStringLiteral("Stopped"));
        }
        const QByteArray bytes = in.read(kChunk);
        if (bytes.isEmpty() || in.error() != QFileDevice::NoError) {
            return storeError(Kind::CannotRead, QStringLiteral("%1 cannot be read: %2").arg(file, in.errorString()));
        }
        if (auto taken = take(bytes); !taken) {
            return taken;
        }
    }
    return {};
}

Result<void> fillFrom(const QString& from, const UnfinishedFile& unfinished, const QString& wanted, const Progress& progress)
{
    const auto cannot = [&wanted](const QFile& out) { return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be written: %2").arg(wanted, out.errorString())); };
    QFile out(unfinished.path());
    if (!out.open(QIODevice::WriteOnly)) {
        return cannot(out);
    }
    auto filled = readThrough(from, progress, [&](const QByteArray& bytes) { return out.write(bytes) == bytes.size() ? Result<void>() : cannot(out); });
    if (filled && (!out.flush() || ::fsync(out.handle()) != 0)) {
        return cannot(out);
    }
    return filled;
}

Result<void> compareWith(const QString& from, const UnfinishedFile& unfinished, const QString& wanted)
{
    QFile original(from);
    const auto differs = [&wanted] { return storeError(Kind::CannotWrite, QStringLiteral("%1 does not hold what was written to it: the disk is not sound").arg(wanted)); };
    if (!original.open(QIODevice::ReadOnly)) {
        return storeError(Kind::CannotRead, QStringLiteral("%1 cannot be read: %2").arg(from, original.errorString()));
    }
    auto compared = readThrough(unfinished.path(), {}, [&](const QByteArray& bytes) { return original.read(bytes.size()) == bytes ? Result<void>() : differs(); });
    return compared && !original.atEnd() ? differs() : compared;
}

}  // namespace

UnfinishedFile::UnfinishedFile(const QString& wanted) : m_wanted(wanted), m_path(partOf(wanted)) {}

UnfinishedFile::~UnfinishedFile()
{
    if (m_isMine) {
        takeAwayPart(m_path);
    }
}

Result<void> UnfinishedFile::make()
{
    takeAwayPart(m_path);
    const int descriptor = ::open(QFile::encodeName(m_path).constData(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0600);
    if (descriptor < 0) {
        return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be made: %2").arg(m_wanted, qt_error_string(errno)));
    }
    ::close(descriptor);
    m_isMine = true;
    return {};
}

Result<void> UnfinishedFile::finish()
{
    if (!syncPath(m_path, O_RDWR) || std::rename(QFile::encodeName(m_path).constData(), QFile::encodeName(m_wanted).constData()) != 0) {
        return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be written: %2").arg(m_wanted, qt_error_string(errno)));
    }
    m_isMine = false;
    syncPath(QFileInfo(m_wanted).absolutePath(), O_RDONLY | O_DIRECTORY);
    return {};
}

int UnfinishedFile::clear(const QString& folder)
{
    const QDateTime now = QDateTime::currentDateTimeUtc();
    QStringList names;
    for (const char* ending : kPartEndings) {
        names.append(QStringLiteral("*.chalkrung*.part") + QLatin1String(ending));
    }
    int gone = 0;
    for (const QFileInfo& info : QDir(folder).entryInfoList(names, QDir::Files)) {
        if (info.lastModified().secsTo(now) > kLeftForGoodSeconds) {
            gone += QFile::remove(info.filePath()) ? 1 : 0;
        }
    }
    return gone;
}

Result<void> copyWholeFile(const QString& from, const QString& to, const Progress& progress)
{
    if (QFileInfo::exists(to)) {
        return storeError(Kind::Refused, QStringLiteral("%1 is there already").arg(to));
    }
    UnfinishedFile unfinished(to);
    return unfinished.make()
        .and_then([&] { return fillFrom(from, unfinished, to, progress); })
        .and_then([&] { return compareWith(from, unfinished, to); })
        .and_then([&] { return unfinished.finish(); });
}

}  // namespace chalk::store
