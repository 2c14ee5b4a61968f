#include "core/store/database.h"

#include "core/store/key_ring.h"
#include "core/store/lift_cache.h"
#include "core/store/migrations.h"
#include "core/store/server_target.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QStandardPaths>
#include <QUuid>

#include <algorithm>
#include <stdexcept>

namespace chalk::store {

Database::Database(Access access, bool isReadOnly)
    : m_engine(engineFor(access.target)),
      m_access(std::move(access)),
      m_name(QUuid::createUuid().toString(QUuid::WithoutBraces)),
      m_connection(QSqlDatabase::addDatabase(m_engine->driver(), m_name)),
      m_isReadOnly(isReadOnly)
{
    if (!m_access.keys) {
        m_access.keys = std::make_shared<KeyRing>();
    }
    if (!m_access.writes) {
        m_access.writes = std::make_shared<OwnWrites>();
    }
}

Database::~Database()
{
    m_vault.reset();
    m_connection.close();
    m_connection = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
}

Result<std::unique_ptr<Database>> Database::open(const Access& access, OpenMode mode)
{
    std::unique_ptr<Database> database(new Database(withoutPasswordInTarget(access), mode == OpenMode::ReadOnly));
    const QString& target = database->target();
    if (auto opened = database->m_engine->open(database->m_connection, database->m_access, mode); !opened) {
        return tl::make_unexpected(opened.error());
    }
    const auto version = database->m_engine->schemaVersion(database->m_connection, target);
    if (!version) {
        return tl::make_unexpected(version.error());
    }
    if (*version == 0 && mode != OpenMode::CreateIfMissing) {
        return storeError(StoreError::Kind::NotAStudio, QStringLiteral("%1 is empty: not a studio").arg(target));
    }
    if (*version < presentSchemaVersion() && mode == OpenMode::ReadOnly) {
        return storeError(StoreError::Kind::Older,
                          QStringLiteral("%1 was written by an older version of Chalkrung: it has to be opened for writing once").arg(target));
    }
    if (auto migrated = migrate(database->m_connection, *database->m_engine, *version, target); !migrated) {
        return tl::make_unexpected(migrated.error());
    }
    const auto standing = database->m_engine->standing(database->m_connection, target);
    if (!standing) {
        return tl::make_unexpected(standing.error());
    }
    database->m_role = standing->role;
    database->m_author = standing->coach;
    if (auto opened = database->openVault(); !opened) {
        return tl::make_unexpected(opened.error());
    }
    if (auto completed = completeCaches(*database); !completed) {
        return tl::make_unexpected(completed.error());
    }
    return database;
}

Result<void> Database::openVault()
{
    m_vault = std::make_unique<Vault>(*this);
    m_vault->refresh();
    if (m_failure) {
        return tl::make_unexpected(*m_failure);
    }
    const auto& wrapped = m_vault->wrapped();
    const bool isLocked = wrapped && m_access.keys->isLocked() && m_access.keys->knows(wrapped->fingerprint);
    return !wrapped || isLocked ? Result<void>() : m_access.keys->open(*wrapped, m_access.target);
}

void Database::fail(StoreError error)
{
    if (!m_failure) {
        m_failure = std::move(error);
    }
}

void Database::failWith(const QSqlError& error)
{
    if (!m_failure) {
        m_failure = m_engine->errorOf(m_connection, error, m_access.target);
    }
}

QString Database::takeToken()
{
    const QString token = m_nextToken.isEmpty() ? newToken() : m_nextToken;
    m_nextToken.clear();
    return token;
}

Result<void> Database::reconnect()
{
    m_isInTransaction = false;
    m_failure.reset();
    m_connection.close();
    return m_engine->open(m_connection, m_access, m_isReadOnly ? OpenMode::ReadOnly : OpenMode::MustExist);
}

bool Database::run(const QString& statement)
{
    QSqlQuery query(m_connection);
    if (!query.exec(statement)) {
        failWith(query.lastError());
        return false;
    }
    return true;
}

bool Database::begin(const QStringList& statements)
{
    m_failure.reset();
    m_isInTransaction = std::all_of(statements.begin(), statements.end(), [this](const QString& statement) { return run(statement); });
    if (!m_isInTransaction && statements.size() > 1) {
        QSqlQuery(m_connection).exec(QStringLiteral("ROLLBACK"));  // it began, and waited in vain
    }
    if (m_isInTransaction && m_vault) {
        m_vault->refresh();
    }
    return m_isInTransaction;
}

bool Database::isOnServer() const
{
    return isServerTarget(m_access.target);
}

bool Database::hasOwnNews()
{
    const int ended = m_access.writes->ended - m_written;
    const bool hasWritten = m_access.writes->begun - m_written > m_seenWritten;
    m_seenWritten = ended;
    return hasWritten;
}

OwnWrite::OwnWrite(Database& database) : m_writes(database.m_access.writes)
{
    ++m_writes->begun;
    ++database.m_written;
}

OwnWrite::~OwnWrite()
{
    ++m_writes->ended;
}

Transaction::Transaction(Database& database) : m_database(database), m_write(database)
{
    if (database.m_isInTransaction) {
        throw std::logic_error("a transaction inside of another");
    }
    m_isOpen = database.begin(database.m_engine->beginWriting());
}

Transaction::~Transaction()
{
    rollBack();
}

void Transaction::rollBack()
{
    if (!m_isOpen) {
        return;
    }
    // After a full disk the engine has rolled back by itself: "no transaction is active" is no failure then.
    QSqlQuery(m_database.m_connection).exec(QStringLiteral("ROLLBACK"));
    m_isOpen = false;
    m_database.m_isInTransaction = false;
}

Result<void> Transaction::commit()
{
    if (!m_database.m_failure) {
        m_database.m_engine->announce(m_database.m_connection, QStringLiteral("%1 %2").arg(runToken()).arg(m_database.m_author.value()));
    }
    if (!m_database.m_failure && m_database.run(QStringLiteral("COMMIT"))) {
        m_isOpen = false;
        m_database.m_isInTransaction = false;
        return {};
    }
    rollBack();
    return tl::make_unexpected(*m_database.m_failure);
}

Snapshot::Snapshot(Database& database) : m_database(database)
{
    if (!database.m_isInTransaction) {
        m_isOpen = database.begin(database.m_engine->beginReading());
    }
}

Snapshot::~Snapshot()
{
    if (m_isOpen) {
        QSqlQuery(m_database.m_connection).exec(QStringLiteral("ROLLBACK"));
        m_database.m_isInTransaction = false;
    }
}

QString runToken()
{
    static const QString token = QUuid::createUuid().toString(QUuid::Id128).left(12);
    return token;
}

QString newToken()
{
    return runToken() + QUuid::createUuid().toString(QUuid::Id128);
}

QString defaultStudioFile()
{
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/chalkrung/studio.chalkrung");
}

}  // namespace chalk::store
