#include "core/store/sqlite_file.h"

#include "core/seal/sealed_file.h"
#include "core/store/private_folder.h"

#include <QFile>
#include <QFileInfo>

#include <cerrno>

#include <fcntl.h>
#include <unistd.h>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

// SQLite's file format, https://www.sqlite.org/fileformat.html, section 1.3.
constexpr qsizetype kHeaderBytes = 100;
constexpr qsizetype kPageSizeAt = 16;
constexpr qsizetype kPagesAt = 28;
constexpr qsizetype kApplicationIdAt = 68;

quint32 bigEndian(const QByteArray& header, qsizetype at, int bytes)
{
    quint32 value = 0;
    for (int i = 0; i < bytes; ++i) {
        value = value << 8U | static_cast<unsigned char>(header[at + i]);
    }
    return value;
}

bool hasPendingLog(const QString& file)
{
    return QFileInfo(file + QStringLiteral("-wal")).size() > 0;
}

Result<void> checkHeader(const QString& file)
{
    QFile in(file);
    if (!in.open(QIODevice::ReadOnly)) {
        return storeError(Kind::CannotRead, QStringLiteral("%1 cannot be read: %2").arg(file, in.errorString()));
    }
    const QByteArray header = in.read(kHeaderBytes);
    if (header.isEmpty()) {
        return {};  // a new file
    }
    if (seal::isSealedFile(file)) {
        return storeError(Kind::Locked, QStringLiteral("%1 is a sealed backup: restore it by its passphrase").arg(file));
    }
    if (!header.startsWith(QByteArray("SQLite format 3\0", 16))) {
        return storeError(Kind::NotAStudio, QStringLiteral("%1 is not a studio").arg(file));
    }
    const QString cutShort = QStringLiteral("%1 is damaged: it was cut short").arg(file);
    if (header.size() < kHeaderBytes) {
        return storeError(Kind::Damaged, cutShort);
    }
    const quint32 application = bigEndian(header, kApplicationIdAt, 4);
    if (application != 0 && application != static_cast<quint32>(kApplicationId)) {
        return storeError(Kind::NotAStudio, QStringLiteral("%1 belongs to another program: not a studio").arg(file));
    }
    const quint32 size = bigEndian(header, kPageSizeAt, 2);
    const qint64 pageSize = size == 1 ? 65536 : size;
    if (!hasPendingLog(file) && bigEndian(header, kPagesAt, 4) * pageSize > in.size()) {
        return storeError(Kind::Damaged, cutShort);
    }
    return {};
}

Result<void> createFile(const QString& file)
{
    if (!makePrivateFolder(QFileInfo(file).absolutePath())) {
        return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be made: its folder cannot be made").arg(file));
    }
    // Nobody else may read it, not even for the moment before a change of its mode.
    const int descriptor = ::open(QFile::encodeName(file).constData(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0600);
    if (descriptor < 0) {
        return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be made: %2").arg(file, qt_error_string(errno)));
    }
    ::close(descriptor);
    return {};
}

Result<void> checkRights(const QFileInfo& info, const QString& file)
{
    if (!info.isWritable()) {
        return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be written: it is read-only").arg(file));
    }
    if (!QFileInfo(info.absolutePath()).isWritable()) {
        return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be written: its folder is read-only").arg(file));
    }
    return {};
}

}  // namespace

Result<void> checkSqliteFile(const QString& file, OpenMode mode)
{
    if (file.isEmpty() || file.startsWith(QLatin1Char(':'))) {
        return storeError(Kind::NotThere, QStringLiteral("\"%1\" is no name for a studio's file").arg(file));  // SQLite and Qt would take it for something else
    }
    const QFileInfo info(file);
    if (info.isDir()) {
        return storeError(Kind::NotThere, QStringLiteral("%1 is a folder, not a studio").arg(file));
    }
    if (!info.exists()) {
        return mode == OpenMode::CreateIfMissing ? createFile(file)
                                                 : storeError(Kind::NotThere, QStringLiteral("there is no studio %1").arg(file));
    }
    if (!info.isFile()) {
        return storeError(Kind::NotAStudio, QStringLiteral("%1 is not a studio").arg(file));
    }
    if (info.size() == 0 && mode != OpenMode::CreateIfMissing) {
        return storeError(Kind::NotAStudio, QStringLiteral("%1 is empty: not a studio").arg(file));
    }
    if (auto header = checkHeader(file); !header) {
        return header;
    }
    if (mode != OpenMode::ReadOnly) {
        return checkRights(info, file);
    }
    const bool canMakeIndex = QFileInfo(info.absolutePath()).isWritable() || QFileInfo::exists(file + QStringLiteral("-shm"));
    return canMakeIndex || !hasPendingLog(file)
               ? Result<void>()
               : storeError(Kind::CannotRead, QStringLiteral("%1 cannot be read: changes wait in %1-wal, and its folder is read-only").arg(file));
}

bool isSealed(const QString& file)
{
    return !QFileInfo(QFileInfo(file).absolutePath()).isWritable() && !hasPendingLog(file);
}

}  // namespace chalk::store
