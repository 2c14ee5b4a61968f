#include "core/store/studio_transfer.h"

#include "core/store/server_target.h"
#include "core/store/studio_check.h"
#include "core/store/studio_move.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

Result<qint64> copyVerified(Database& from, Database& to, const Progress& progress)
{
    return copyRows(from, to, progress).and_then([&](qint64 rows) -> Result<qint64> {
        // The bar is full by now: what verifying tells of itself is another measure.
        const auto check = checkStudio(to, [&progress](int, int) { return !progress || progress(1, 1); });
        if (!check) {
            return tl::make_unexpected(check.error());
        }
        if (!check->isSound()) {
            return storeError(Kind::Damaged, QStringLiteral("%1 holds a whole copy, but is not sound: %2").arg(to.target(), check->faults.front().message));
        }
        return rows;
    });
}

/// The file while it is written, under another name; gone unless it is kept.
class FileInTheMaking {
public:
    explicit FileInTheMaking(const QString& file) : m_file(file), m_part(QStringLiteral("%1.part-%2").arg(file).arg(QCoreApplication::applicationPid())) {}
    ~FileInTheMaking()
    {
        for (const char* ending : {"", "-wal", "-shm", "-journal"}) {
            QFile::remove(m_part + QLatin1String(ending));
        }
    }
    FileInTheMaking(const FileInTheMaking&) = delete;
    FileInTheMaking& operator=(const FileInTheMaking&) = delete;

    [[nodiscard]] Result<qint64> fill(Database& from, const Progress& progress) const
    {
        auto filled = Database::open(m_part, OpenMode::CreateIfMissing).and_then([&](const std::unique_ptr<Database>& to) { return copyVerified(from, *to, progress); });
        if (!filled) {
            filled.error().message.replace(m_part, m_file);
        }
        return filled;
    }
    [[nodiscard]] Result<void> keep() const
    {
        QFile part(m_part);
        return part.rename(m_file) ? Result<void>() : storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be made: %2").arg(m_file, part.errorString()));
    }

private:
    QString m_file;
    QString m_part;
};

}  // namespace

Result<qint64> transferStudio(Database& from, const Access& to, const Progress& progress)
{
    if (isServerTarget(to.target)) {
        return Database::open(to, OpenMode::CreateIfMissing).and_then([&](const std::unique_ptr<Database>& server) { return copyVerified(from, *server, progress); });
    }
    if (QFileInfo::exists(to.target) || QFileInfo(to.target).isSymLink()) {
        return storeError(Kind::Refused, QStringLiteral("%1 is there already: name another file, or move that one away").arg(to.target));
    }
    if (const QString folder = QFileInfo(to.target).absolutePath(); !QFileInfo(folder).isDir()) {
        return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be made: there is no folder %2").arg(to.target, folder));
    }
    const FileInTheMaking file(to.target);
    return file.fill(from, progress).and_then([&file](qint64 rows) { return file.keep().map([rows] { return rows; }); });
}

}  // namespace chalk::store
