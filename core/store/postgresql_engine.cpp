#include "core/store/engine.h"

#include "core/store/postgresql_connection.h"
#include "core/store/postgresql_error.h"
#include "core/store/postgresql_schema.h"
#include "core/store/server_target.h"

#include <QSqlQuery>
#include <QVariant>

#include <algorithm>
#include <optional>

namespace chalk::store {

namespace {

using Kind = StoreError::Kind;

/// Which lock of the database writers take. The number means nothing; that all take the same does.
constexpr qint64 kWritersLock = 0x6368616C6B;

// A name is looked for in the studio's own schema, and among a session's own tables only after that. Waiting for other writers ends as it does
// for a file. A program that sleeps in the middle of writing loses its connection, so that the others can go on.
constexpr const char* kSettings[] = {"SET search_path = chalkrung, pg_temp",  "SET lock_timeout = '5s'", "SET idle_in_transaction_session_timeout = '60s'",
                                     "SET client_min_messages = warning", "SET TimeZone = 'UTC'"};

std::optional<QVariant> valueFrom(QSqlDatabase& database, const QString& sql, QSqlError& error)
{
    QSqlQuery query(database);
    if (query.exec(sql) && query.next()) {
        return query.value(0);
    }
    error = query.lastError();
    return std::nullopt;
}

/// One network connection, one database of a server.
///
/// Writers: read committed, and one lock for the whole studio that each takes before its first statement and the server gives back at its
/// end, as SQLite's BEGIN IMMEDIATE does. So a writer sees all that was committed before it, and nothing changes while it works: what it
/// works out from what it read (states of lifts, volumes of weeks, versions that are replaced) cannot be made wrong by another, no write
/// is ever undone to be tried again, and ids grow in the order of commits, which the log relies on for the order within a day. Writers of a
/// studio are people: they wait for milliseconds. Readers wait for nobody.
class PostgresqlEngine final : public Engine {
public:
    [[nodiscard]] QString driver() const override { return QStringLiteral("QPSQL"); }

    [[nodiscard]] Result<void> open(QSqlDatabase& database, const Access& access, OpenMode mode) const override
    {
        const auto target = serverTargetOf(access.target);
        if (!target) {
            return tl::make_unexpected(target.error());
        }
        if (!QSqlDatabase::isDriverAvailable(driver())) {
            return storeError(Kind::Other, QStringLiteral("%1 cannot be reached: Qt's driver for PostgreSQL is not installed (package libqt6sql6-psql)").arg(access.target));
        }
        if (auto ready = openConnection(database, *target, access, mode); !ready) {
            return ready;
        }
        QSqlQuery query(database);
        for (const char* setting : kSettings) {
            if (!query.exec(QLatin1String(setting))) {
                return tl::make_unexpected(postgresqlError(query.lastError(), access.target));
            }
        }
        if (mode == OpenMode::ReadOnly && !query.exec(QStringLiteral("SET default_transaction_read_only = on"))) {
            return tl::make_unexpected(postgresqlError(query.lastError(), access.target));
        }
        return {};
    }

    [[nodiscard]] Result<Standing> standing(QSqlDatabase& database, const QString& target) const override
    {
        QSqlQuery query(database);
        // An owner is asked for first: who runs the server has every role.
        if (!query.exec(QStringLiteral("SELECT pg_has_role(current_user, role_base || '_owner', 'member'), pg_has_role(current_user, role_base || '_coach', 'member'), "
                                       "pg_has_role(current_user, role_base || '_front_desk', 'member'), (SELECT coach_id FROM login WHERE name = current_user) FROM server")) ||
            !query.next()) {
            return tl::make_unexpected(postgresqlError(query.lastError(), target));
        }
        constexpr Role kRolesInOrder[] = {Role::Owner, Role::Coach, Role::FrontDesk};
        for (int i = 0; i < 3; ++i) {
            if (query.value(i).toBool()) {
                return Standing{kRolesInOrder[i], base::CoachId(query.value(3).toLongLong())};
            }
        }
        return storeError(Kind::NotAllowed, QStringLiteral("This login has no role in %1").arg(target));
    }

    [[nodiscard]] Result<int> schemaVersion(QSqlDatabase& database, const QString& target) const override
    {
        QSqlError error;
        const auto schemas = valueFrom(database, QStringLiteral("SELECT count(*) FROM pg_namespace WHERE nspname = 'chalkrung'"), error);
        const auto others = valueFrom(database, QStringLiteral("SELECT count(*) FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace "
                                                               "WHERE n.nspname <> 'information_schema' AND n.nspname NOT LIKE 'pg\\_%' AND c.relkind IN ('r', 'p', 'v', 'm', 'f', 'S')"), error);
        const auto ours = valueFrom(database, QStringLiteral("SELECT count(*) FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace "
                                                             "WHERE n.nspname = 'chalkrung' AND c.relname = 'server'"), error);
        if (!schemas || !others || !ours) {
            return tl::make_unexpected(postgresqlError(error, target));
        }
        if (ours->toInt() == 0) {
            return schemas->toInt() == 0 && others->toInt() == 0
                       ? Result<int>(0)
                       : storeError(Kind::NotAStudio, QStringLiteral("%1 is a database, but not a studio").arg(target));
        }
        const auto mayLook = valueFrom(database, QStringLiteral("SELECT has_schema_privilege('chalkrung', 'USAGE')"), error);
        if (mayLook && !mayLook->toBool()) {
            return storeError(Kind::NotAllowed, QStringLiteral("This login has no role in %1").arg(target));
        }
        const auto version = valueFrom(database, QStringLiteral("SELECT schema_version FROM chalkrung.server"), error);
        return version ? Result<int>(version->toInt()) : tl::make_unexpected(postgresqlError(error, target));
    }

    [[nodiscard]] QStringList beforeSteps(QSqlDatabase& database, int version) const override { return postgresqlBeforeSteps(database, version); }
    [[nodiscard]] QStringList afterSteps(QSqlDatabase& database, int version) const override { return postgresqlAfterSteps(database, version); }
    [[nodiscard]] QStringList adapted(const QString& schemaStatement) const override { return postgresqlStatements(schemaStatement); }

    [[nodiscard]] QStringList beginWriting() const override
    {
        return {QStringLiteral("BEGIN ISOLATION LEVEL READ COMMITTED"), QStringLiteral("SELECT pg_advisory_xact_lock(%1)").arg(kWritersLock)};
    }
    [[nodiscard]] QStringList beginReading() const override { return {QStringLiteral("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY")}; }
    // Its connection carries one result at a time.
    [[nodiscard]] bool readsRowByRow() const override { return false; }
    void announce(QSqlDatabase& database, const QString& news) const override
    {
        QSqlQuery query(database);
        query.prepare(QStringLiteral("SELECT pg_notify(?, ?)"));
        query.bindValue(0, newsChannel());
        query.bindValue(1, news);
        query.exec();
    }
    [[nodiscard]] QString newsChannel() const override { return QStringLiteral("chalkrung"); }
    void settle(QSqlDatabase& database) const override { QSqlQuery(database).exec(QStringLiteral("ANALYZE")); }

    [[nodiscard]] Result<QStringList> structureFaults(QSqlDatabase& database, const QString& target) const override
    {
        // Pages are the server's to check; what the program relies on is that rules hold and guards stand.
        return sentencesFrom(database, target,
                             QStringLiteral("SELECT 'the rule ' || c.conname || ' of ' || r.relname || ' was never checked' FROM pg_constraint c "
                                            "JOIN pg_class r ON r.oid = c.conrelid JOIN pg_namespace n ON n.oid = r.relnamespace WHERE n.nspname = 'chalkrung' AND NOT c.convalidated "
                                            "UNION ALL SELECT 'the guard ' || t.tgname || ' of ' || r.relname || ' is switched off' FROM pg_trigger t "
                                            "JOIN pg_class r ON r.oid = t.tgrelid JOIN pg_namespace n ON n.oid = r.relnamespace WHERE n.nspname = 'chalkrung' AND t.tgenabled = 'D' "
                                            "UNION ALL SELECT 'the index ' || r.relname || ' is not valid' FROM pg_index i JOIN pg_class r ON r.oid = i.indexrelid "
                                            "JOIN pg_namespace n ON n.oid = r.relnamespace WHERE n.nspname = 'chalkrung' AND NOT i.indisvalid"));
    }

    [[nodiscard]] Result<QStringList> referenceFaults(QSqlDatabase& database, const QString& target) const override
    {
        // Every reference is one column to one column. A query for each, written by the server itself.
        const auto queries = sentencesFrom(
            database, target,
            QStringLiteral("SELECT format('SELECT %L || a.ctid::text || %L FROM %I a WHERE a.%I IS NOT NULL AND NOT EXISTS (SELECT 1 FROM %I b WHERE b.%I = a.%I)', "
                           "'row ', ' of ' || own.relname || ' points to nothing in ' || other.relname, own.relname, mine.attname, other.relname, theirs.attname, mine.attname) "
                           "FROM pg_constraint c JOIN pg_class own ON own.oid = c.conrelid JOIN pg_class other ON other.oid = c.confrelid "
                           "JOIN pg_namespace n ON n.oid = own.relnamespace JOIN pg_attribute mine ON mine.attrelid = own.oid AND mine.attnum = c.conkey[1] "
                           "JOIN pg_attribute theirs ON theirs.attrelid = other.oid AND theirs.attnum = c.confkey[1] "
                           "WHERE n.nspname = 'chalkrung' AND c.contype = 'f' ORDER BY own.relname, c.conname"));
        if (!queries) {
            return queries;
        }
        QStringList faults;
        for (const QString& query : *queries) {
            const auto found = sentencesFrom(database, target, query);
            if (!found) {
                return found;
            }
            faults += *found;
        }
        return faults;
    }

    [[nodiscard]] QStringList afterCopying(const QString& tableWithId) const override
    {
        return {QStringLiteral("SELECT setval(pg_get_serial_sequence('%1', 'id'), (SELECT coalesce(max(id), 0) + 1 FROM %1), false)").arg(tableWithId)};
    }

    [[nodiscard]] StoreError errorOf(const QSqlDatabase& database, const QSqlError& error, const QString& target) const override
    {
        // A statement on a connection that was closed under it says nothing at all.
        const bool isCut = !error.isValid() && !database.isOpen();
        return isCut ? StoreError{Kind::Unreachable, QStringLiteral("%1 does not answer: the connection was lost").arg(target)} : postgresqlError(error, target);
    }

private:
    /// Opens the connection, and makes the database first where it is not there and may be made.
    static Result<void> openConnection(QSqlDatabase& database, const ServerTarget& target, const Access& access, OpenMode mode)
    {
        connectAs(database, target, access.password);
        if (database.open()) {
            return {};
        }
        const StoreError error = postgresqlConnectionError(database.lastError(), access.target);
        if (error.kind != Kind::NotThere || mode != OpenMode::CreateIfMissing) {
            return tl::make_unexpected(error);
        }
        database.setDatabaseName(QStringLiteral("postgres"));
        QString name = target.database;
        QSqlQuery query;
        if (!database.open() || !(query = QSqlQuery(database)).exec(QStringLiteral("CREATE DATABASE \"%1\" TEMPLATE template0 ENCODING 'UTF8'")
                                                                       .arg(name.replace(QLatin1Char('"'), QLatin1String("\"\""))))) {
            return tl::make_unexpected(database.isOpen() ? postgresqlError(query.lastError(), access.target) : error);
        }
        query = QSqlQuery();
        database.close();
        connectAs(database, target, access.password);
        return database.open() ? Result<void>() : tl::make_unexpected(postgresqlConnectionError(database.lastError(), access.target));
    }

    static Result<QStringList> sentencesFrom(QSqlDatabase& database, const QString& target, const QString& sql)
    {
        QStringList sentences;
        QSqlQuery query(database);
        if (!query.exec(sql)) {
            return tl::make_unexpected(postgresqlError(query.lastError(), target));
        }
        while (query.next()) {
            sentences.append(query.value(0).toString());
        }
        return sentences;
    }
};

}  // namespace

std::unique_ptr<Engine> postgresqlEngine()
{
    return std::make_unique<PostgresqlEngine>();
}

std::unique_ptr<Engine> engineFor(const QString& target)
{
    return isServerTarget(target) ? postgresqlEngine() : sqliteEngine();
}

}  // namespace chalk::store
