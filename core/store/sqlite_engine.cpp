#include "core/store/engine.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSqlDriver>
#include <QSqlQuery>
#include <QVariant>

#include <sqlite3.h>

namespace chalk::store {

namespace {

/// Marks our files in SQLite's header: `Chlk`.
constexpr int kApplicationId = 0x43686C6B;
constexpr int kHeaderBytes = 100;

using Kind = StoreError::Kind;

sqlite3* handleOf(const QSqlDatabase& database)
{
    const QVariant handle = database.driver()->handle();
    return handle.isValid() ? *static_cast<sqlite3* const*>(handle.constData()) : nullptr;
}

Kind kindOf(int code)
{
    switch (code & 0xFF) {
    case SQLITE_CORRUPT:
        return Kind::Damaged;
    case SQLITE_NOTADB:
        return Kind::NotAStudio;
    case SQLITE_READONLY:
    case SQLITE_FULL:
    case SQLITE_IOERR:
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
        return Kind::CannotWrite;
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return Kind::Busy;
    case SQLITE_CONSTRAINT:
        return Kind::Refused;
    default:
        return Kind::Other;
    }
}

int pragmaNumber(QSqlDatabase& database, const QString& name, bool& isRead)
{
    QSqlQuery query(database);
    isRead = query.exec(QStringLiteral("PRAGMA ") + name) && query.next();
    return isRead ? query.value(0).toInt() : 0;
}

class SqliteEngine final : public Engine {
public:
    [[nodiscard]] QString driver() const override { return QStringLiteral("QSQLITE"); }

    [[nodiscard]] Result<void> open(QSqlDatabase& database, const QString& target, OpenMode mode) const override
    {
        if (const auto ready = checkFile(target, mode); !ready) {
            return ready;
        }
        database.setDatabaseName(target);
        database.setConnectOptions(mode == OpenMode::ReadOnly ? QStringLiteral("QSQLITE_OPEN_READONLY;QSQLITE_BUSY_TIMEOUT=5000")
                                                              : QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000"));
        if (!database.open()) {
            return tl::make_unexpected(errorOf(database, database.lastError(), target));
        }
        if (mode == OpenMode::CreateIfMissing) {
            QFile::setPermissions(target, QFile::ReadOwner | QFile::WriteOwner);
        }
        for (const char* pragma : {"PRAGMA foreign_keys = ON", "PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA cache_size = -16000"}) {
            QSqlQuery query(database);
            if (!query.exec(QLatin1String(pragma)) && mode != OpenMode::ReadOnly) {
                return tl::make_unexpected(errorOf(database, query.lastError(), target));
            }
        }
        return {};
    }

    [[nodiscard]] Result<int> schemaVersion(QSqlDatabase& database, const QString& target) const override
    {
        bool isRead = false;
        const int application = pragmaNumber(database, QStringLiteral("application_id"), isRead);
        if (!isRead) {
            return storeError(Kind::Damaged, QStringLiteral("%1 is damaged: its header cannot be read").arg(target));
        }
        const int version = pragmaNumber(database, QStringLiteral("user_version"), isRead);
        QSqlQuery tables(database);
        const bool isEmpty = tables.exec(QStringLiteral("SELECT count(*) FROM sqlite_master")) && tables.next() && tables.value(0).toInt() == 0;
        if (application == 0 && version == 0 && isEmpty) {
            return 0;
        }
        if (application != kApplicationId) {
            return storeError(Kind::NotAStudio, QStringLiteral("%1 is a database, but not a studio").arg(target));
        }
        return version;
    }

    bool setSchemaVersion(QSqlDatabase& database, int version) const override
    {
        QSqlQuery query(database);
        return query.exec(QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId)) &&
               query.exec(QStringLiteral("PRAGMA user_version = %1").arg(version));
    }

    [[nodiscard]] StoreError errorOf(const QSqlDatabase& database, const QSqlError& error, const QString& target) const override
    {
        // Qt leaves the native code of a failed commit empty: the handle knows it.
        bool hasCode = false;
        int code = error.nativeErrorCode().toInt(&hasCode);
        if (sqlite3* handle = handleOf(database); !hasCode && handle != nullptr) {
            code = sqlite3_extended_errcode(handle);
        }
        const QString text = error.databaseText().isEmpty() ? error.driverText() : error.databaseText();
        switch (kindOf(code)) {
        case Kind::Damaged:
            return {Kind::Damaged, QStringLiteral("%1 is damaged: %2").arg(target, text)};
        case Kind::NotAStudio:
            return {Kind::NotAStudio, QStringLiteral("%1 is not a studio").arg(target)};
        case Kind::CannotWrite:
            return {Kind::CannotWrite, QStringLiteral("%1 cannot be written: %2").arg(target, text)};
        case Kind::Busy:
            return {Kind::Busy, QStringLiteral("%1 is in use by another program").arg(target)};
        case Kind::Refused:
            return {Kind::Refused, QStringLiteral("The entry was refused: %1").arg(text)};
        case Kind::NotThere:
        case Kind::Newer:
        case Kind::Cancelled:
        case Kind::Other:
            break;
        }
        return {Kind::Other, QStringLiteral("%1: %2").arg(target, text)};
    }

private:
    /// What can be told from the file itself, before SQLite touches it.
    static Result<void> checkFile(const QString& target, OpenMode mode)
    {
        const QFileInfo info(target);
        if (info.isDir()) {
            return storeError(Kind::NotThere, QStringLiteral("%1 is a folder, not a studio").arg(target));
        }
        if (!info.exists()) {
            if (mode != OpenMode::CreateIfMissing) {
                return storeError(Kind::NotThere, QStringLiteral("there is no studio %1").arg(target));
            }
            const QDir folder = info.absoluteDir();
            if (!folder.exists() && !(QDir().mkpath(folder.path()) &&
                                      QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner))) {
                return storeError(Kind::CannotWrite, QStringLiteral("the folder %1 cannot be made").arg(folder.path()));
            }
            return {};
        }
        return checkHeader(info, target);
    }

    static Result<void> checkHeader(const QFileInfo& info, const QString& target)
    {
        QFile file(target);
        if (!file.open(QIODevice::ReadOnly)) {
            return storeError(Kind::CannotWrite, QStringLiteral("%1 cannot be read: %2").arg(target, file.errorString()));
        }
        const QByteArray header = file.read(kHeaderBytes);
        if (header.isEmpty()) {
            return {};  // a new file
        }
        if (!header.startsWith(QByteArray("SQLite format 3\0", 16))) {
            return storeError(Kind::NotAStudio, QStringLiteral("%1 is not a studio").arg(target));
        }
        // Bytes 16 and 28 of the header: page size and pages in the file, when the last writer noted them.
        const auto number = [&header](qsizetype at, int bytes) {
            quint64 value = 0;
            for (int i = 0; i < bytes && at + i < header.size(); ++i) {
                value = value << 8U | static_cast<unsigned char>(header[at + i]);
            }
            return value;
        };
        const quint64 pageSize = number(16, 2) == 1 ? 65536 : number(16, 2);
        const bool hasWal = QFileInfo(target + QStringLiteral("-wal")).size() > 0;
        if (header.size() < kHeaderBytes || (!hasWal && number(28, 4) * pageSize > static_cast<quint64>(info.size()))) {
            return storeError(Kind::Damaged, QStringLiteral("%1 is damaged: it was cut short").arg(target));
        }
        return {};
    }
};

}  // namespace

std::unique_ptr<Engine> sqliteEngine()
{
    return std::make_unique<SqliteEngine>();
}

}  // namespace chalk::store
