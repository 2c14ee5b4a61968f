#include "core/store/unfinished_server.h"

#include "core/store/postgresql_connection.h"
#include "core/store/postgresql_schema.h"

#include <QSqlQuery>
#include <QStringList>
#include <QUuid>

namespace chalk::store {

namespace {

QString quotedForDrop(QString name)
{
    return QLatin1Char('"') + name.replace(QLatin1Char('"'), QLatin1String("\"\"")) + QLatin1Char('"');
}

/// Takes the tables away where they are those of an empty studio. Whoever made a studio here in the meantime keeps it.
constexpr const char* kDropEmptyStudio = R"(DO $$ BEGIN
IF to_regnamespace('chalkrung') IS NOT NULL THEN
IF EXISTS (SELECT 1 FROM chalkrung.studio) OR EXISTS (SELECT 1 FROM chalkrung.coach) OR EXISTS (SELECT 1 FROM chalkrung.client) OR EXISTS (SELECT 1 FROM chalkrung.act) THEN
RAISE EXCEPTION 'somebody has a studio here'; END IF;
DROP SCHEMA chalkrung CASCADE; END IF; END $$)";

/// Runs statements in a database of the server up to the first that it refuses; answers whether it took all.
bool runAt(const Access& access, const QString& database, const QStringList& statements)
{
    auto target = serverTargetOf(access.target);
    if (!target) {
        return false;
    }
    target->database = database.isEmpty() ? target->database : database;
    const QString name = QUuid::createUuid().toString(QUuid::WithoutBraces);
    bool isDone = false;
    {
        QSqlDatabase connection = QSqlDatabase::addDatabase(QStringLiteral("QPSQL"), name);
        connectAs(connection, *target, access.password);
        isDone = connection.open();
        QSqlQuery query(connection);
        isDone = isDone && query.exec(QStringLiteral("SET client_min_messages = warning"));
        for (const QString& statement : statements) {
            isDone = isDone && query.exec(statement);
        }
    }
    QSqlDatabase::removeDatabase(name);
    return isDone;
}

QStringList roleDrops(const QString& base)
{
    QStringList drops;
    for (const char* role : {"_owner", "_coach", "_front_desk"}) {
        drops.append(QStringLiteral("DROP ROLE %1").arg(quotedForDrop(base + QLatin1String(role))));
    }
    return base.isEmpty() ? QStringList() : drops;
}

}  // namespace

UnfinishedServer::~UnfinishedServer()
{
    if (m_made == Made::Nothing || !runAt(m_access, {}, {QLatin1String(kDropEmptyStudio)})) {
        return;
    }
    if (m_made == Made::Database) {
        const QString name = serverTargetOf(m_access.target).map([](const ServerTarget& target) { return target.database; }).value_or(QString());
        runAt(m_access, QStringLiteral("postgres"), {QStringLiteral("DROP DATABASE %1").arg(quotedForDrop(name))});
    }
    runAt(m_access, QStringLiteral("postgres"), roleDrops(m_roleBase));
}

UnfinishedServer::Made UnfinishedServer::missing(const StoreError& error)
{
    return error.kind == StoreError::Kind::NotThere     ? Made::Database
           : error.kind == StoreError::Kind::NotAStudio ? Made::Tables
                                                        : Made::Nothing;
}

Result<std::unique_ptr<Database>> UnfinishedServer::make()
{
    m_access = withoutPasswordInTarget(m_access);
    auto there = Database::open(m_access, OpenMode::MustExist);
    const Made wanted = there ? Made::Nothing : missing(there.error());
    if (wanted == Made::Nothing) {
        return there;
    }
    auto made = Database::open(m_access, OpenMode::CreateIfMissing);
    if (made) {
        m_made = wanted;
        m_roleBase = roleBaseOf((*made)->connection());
    } else if (wanted == Made::Database && missing(made.error()) != Made::Database) {
        m_made = wanted;  // the database may have been made, and nothing in it
    }
    return made;
}

}  // namespace chalk::store
