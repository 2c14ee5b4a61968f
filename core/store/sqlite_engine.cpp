#include "core/store/engine.h"

#include "core/store/migrations.h"
#include "core/store/sqlite_file.h"

#include <QFileInfo>
#include <QSqlDriver>
#include <QSqlQuery>
#include <QUrl>
#include <QVariant>

#include <algorithm>
#include <optional>

#include <sqlite3.h>

namespace chalk::store {

namespace {

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
        return Kind::CannotWrite;
    case SQLITE_IOERR:
        return code == SQLITE_IOERR_READ || code == SQLITE_IOERR_SHORT_READ || code == SQLITE_IOERR_FSTAT ? Kind::CannotRead : Kind::CannotWrite;
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
        return Kind::CannotRead;
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return Kind::Busy;
    case SQLITE_CONSTRAINT:
        return Kind::Refused;
    default:
        return Kind::Other;
    }
}

/// Whether what a constraint says no to is that the same row is replaced, or the same act done or undone, a second time.
bool isDoneTwice(const QString& text)
{
    const auto names = {QLatin1String(".replaces_id"), QLatin1String(".undoes_act_id"), QLatin1String("act.token")};
    return std::any_of(names.begin(), names.end(), [&text](QLatin1String name) { return text.endsWith(name); });
}

std::optional<int> numberFrom(QSqlDatabase& database, const QString& sql)
{
    QSqlQuery query(database);
    return query.exec(sql) && query.next() ? std::optional(query.value(0).toInt()) : std::nullopt;
}

bool execAll(QSqlDatabase& database, const QStringList& statements)
{
    return std::all_of(statements.begin(), statements.end(), [&database](const QString& sql) { return QSqlQuery(database).exec(sql); });
}

QStringList settingsFor(OpenMode mode)
{
    QStringList settings{QStringLiteral("PRAGMA foreign_keys = ON"), QStringLiteral("PRAGMA trusted_schema = OFF"),
                         QStringLiteral("PRAGMA cache_size = -16000")};
    if (mode != OpenMode::ReadOnly) {
        settings << QStringLiteral("PRAGMA journal_mode = WAL") << QStringLiteral("PRAGMA synchronous = FULL");
    }
    return settings;
}

class SqliteEngine final : public Engine {
public:
    [[nodiscard]] QString driver() const override { return QStringLiteral("QSQLITE"); }

    [[nodiscard]] Result<void> open(QSqlDatabase& database, const Access& access, OpenMode mode) const override
    {
        const QString& target = access.target;
        if (auto ready = checkSqliteFile(target, mode); !ready) {
            return ready;
        }
        connect(database, target, mode);
        if (!database.open()) {
            return tl::make_unexpected(errorOf(database, database.lastError(), target));
        }
        // Settings write to the file: not before it is known to be ours.
        if (const auto version = schemaVersion(database, target); !version) {
            return tl::make_unexpected(version.error());
        }
        if (!execAll(database, settingsFor(mode))) {
            return tl::make_unexpected(errorOf(database, {}, target));
        }
        return {};
    }

    [[nodiscard]] Result<int> schemaVersion(QSqlDatabase& database, const QString& target) const override
    {
        // The handle keeps the code of the last call only: so nothing is asked after a failure.
        const auto tables = numberFrom(database, QStringLiteral("SELECT count(*) FROM sqlite_master"));
        const auto application = tables ? numberFrom(database, QStringLiteral("PRAGMA application_id")) : std::nullopt;
        const auto version = application ? numberFrom(database, QStringLiteral("PRAGMA user_version")) : std::nullopt;
        if (!version) {
            return tl::make_unexpected(errorOf(database, {}, target));
        }
        if (*application == 0 && *version == 0 && *tables == 0) {
            return 0;
        }
        if (*application != kApplicationId) {
            return storeError(Kind::NotAStudio, QStringLiteral("%1 is a database, but not a studio").arg(target));
        }
        if (*version < 0 || (*version == 0 && *tables > 0)) {
            return storeError(Kind::Damaged, QStringLiteral("%1 is damaged: there is no version %2 of a studio").arg(target).arg(*version));
        }
        return *version;
    }

    [[nodiscard]] Result<Standing> standing(QSqlDatabase&, const QString&) const override { return Standing(); }
    [[nodiscard]] QStringList beforeSteps(QSqlDatabase&, int) const override { return {}; }
    [[nodiscard]] QStringList afterSteps(QSqlDatabase&, int version) const override
    {
        return {QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId), QStringLiteral("PRAGMA user_version = %1").arg(version)};
    }

    [[nodiscard]] QStringList adapted(const QString& schemaStatement) const override { return {schemaStatement}; }
    [[nodiscard]] QStringList beginWriting() const override { return {QStringLiteral("BEGIN IMMEDIATE")}; }
    [[nodiscard]] QStringList beginReading() const override { return {QStringLiteral("BEGIN")}; }
    [[nodiscard]] bool readsRowByRow() const override { return true; }
    [[nodiscard]] std::optional<qlonglong> markOfOthers(QSqlDatabase& database) const override
    {
        const auto mark = numberFrom(database, QStringLiteral("PRAGMA data_version"));
        return mark ? std::optional<qlonglong>(*mark) : std::nullopt;
    }
    void settle(QSqlDatabase& database) const override { QSqlQuery(database).exec(QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)")); }

    [[nodiscard]] Result<QStringList> structureFaults(QSqlDatabase& database, const QString& target) const override
    {
        auto lines = rowsFrom(database, target, QStringLiteral("PRAGMA integrity_check"), QStringLiteral("%1"));
        return lines.map([&](const QStringList& found) {
            return (found == QStringList(QStringLiteral("ok")) ? QStringList() : found) + schemaFaults(database, *this);
        });
    }

    [[nodiscard]] Result<QStringList> referenceFaults(QSqlDatabase& database, const QString& target) const override
    {
        return rowsFrom(database, target, QStringLiteral("PRAGMA foreign_key_check"), QStringLiteral("row %2 of %1 points to nothing in %3"));
    }

    [[nodiscard]] QStringList afterCopying(const QString&) const override { return {}; }

    [[nodiscard]] StoreError errorOf(const QSqlDatabase& database, const QSqlError& error, const QString& target) const override
    {
        // Qt leaves the native code of a failed commit empty: the handle knows it.
        bool hasCode = false;
        int code = error.nativeErrorCode().toInt(&hasCode);
        if (sqlite3* handle = handleOf(database); !hasCode && handle != nullptr) {
            code = sqlite3_extended_errcode(handle);
        }
        const QString text = error.databaseText().isEmpty() ? QString::fromUtf8(sqlite3_errstr(code)) : error.databaseText();
        // Every statement is ours: what it asks for is in every studio.
        const bool isTableMissing = text.startsWith(QLatin1String("no such table")) || text.startsWith(QLatin1String("no such column"));
        if (kindOf(code) == Kind::Refused && isDoneTwice(text)) {
            return {Kind::Conflict, QStringLiteral("Somebody else changed this in the meantime: nothing was written")};
        }
        switch (isTableMissing ? Kind::Damaged : kindOf(code)) {
        case Kind::Damaged:
            return {Kind::Damaged, QStringLiteral("%1 is damaged: %2").arg(target, text)};
        case Kind::NotAStudio:
            return {Kind::NotAStudio, QStringLiteral("%1 is not a studio").arg(target)};
        case Kind::CannotRead:
            return {Kind::CannotRead, QStringLiteral("%1 cannot be opened: %2").arg(target, text)};
        case Kind::CannotWrite:
            return {Kind::CannotWrite, QStringLiteral("%1 cannot be written: %2").arg(target, text)};
        case Kind::Busy:
            return {Kind::Busy, QStringLiteral("%1 is in use by another program").arg(target)};
        case Kind::Refused:
            return {Kind::Refused, QStringLiteral("The entry was refused: %1").arg(text)};
        case Kind::NotThere:
        case Kind::Newer:
        case Kind::Older:
        case Kind::Cancelled:
        case Kind::Conflict:
        case Kind::Locked:
        case Kind::Unreachable:
        case Kind::NotAllowed:
        case Kind::Other:
            break;
        }
        return {Kind::Other, QStringLiteral("%1: %2").arg(target, text)};
    }

private:
    /// The rows of a pragma, each put into `words`. What can be read before a damaged page is answered too.
    [[nodiscard]] Result<QStringList> rowsFrom(QSqlDatabase& database, const QString& target, const QString& sql, const QString& words) const
    {
        QStringList found;
        QSqlQuery query(database);
        query.setForwardOnly(true);
        if (!query.exec(sql)) {
            return tl::make_unexpected(errorOf(database, query.lastError(), target));
        }
        while (query.next()) {
            QString line = words;
            for (int column = 0; column < words.count(QLatin1Char('%')); ++column) {
                line = line.arg(query.value(column).toString());
            }
            found.append(line);
        }
        return query.lastError().isValid() ? Result<QStringList>(tl::make_unexpected(errorOf(database, query.lastError(), target))) : found;
    }

    static void connect(QSqlDatabase& database, const QString& target, OpenMode mode)
    {
        QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000");
        database.setDatabaseName(target);
        if (mode == OpenMode::ReadOnly) {
            options += QStringLiteral(";QSQLITE_OPEN_READONLY");
            if (isSealed(target)) {
                // SQLite wants to make files beside it, unless it is told that nobody changes this one.
                QUrl url = QUrl::fromLocalFile(QFileInfo(target).absoluteFilePath());
                url.setQuery(QStringLiteral("immutable=1"));
                database.setDatabaseName(QString::fromUtf8(url.toEncoded()));
                options += QStringLiteral(";QSQLITE_OPEN_URI");
            }
        }
        database.setConnectOptions(options);
    }
};

}  // namespace

std::unique_ptr<Engine> sqliteEngine()
{
    return std::make_unique<SqliteEngine>();
}

}  // namespace chalk::store
