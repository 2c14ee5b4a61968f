#include "core/store/database.h"

#include "core/store/migrations.h"

#include <QDir>
#include <QStandardPaths>
#include <QUuid>

namespace chalk::store {

Database::Database(QString target, bool isReadOnly)
    : m_engine(sqliteEngine()),
      m_target(std::move(target)),
      m_name(QUuid::createUuid().toString(QUuid::WithoutBraces)),
      m_connection(QSqlDatabase::addDatabase(m_engine->driver(), m_name)),
      m_isReadOnly(isReadOnly)
{
}

Database::~Database()
{
    m_connection.close();
    m_connection = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_name);
}

Result<std::unique_ptr<Database>> Database::open(const QString& target, OpenMode mode)
{
    std::unique_ptr<Database> database(new Database(target, mode == OpenMode::ReadOnly));
    if (auto opened = database->m_engine->open(database->m_connection, target, mode); !opened) {
        return tl::make_unexpected(opened.error());
    }
    const auto version = database->m_engine->schemaVersion(database->m_connection, target);
    if (!version) {
        return tl::make_unexpected(version.error());
    }
    if (*version == 0 && mode != OpenMode::CreateIfMissing) {
        return storeError(StoreError::Kind::NotAStudio, QStringLiteral("%1 is empty: not a studio").arg(target));
    }
    if (auto migrated = migrate(database->m_connection, *database->m_engine, *version, target); !migrated) {
        return tl::make_unexpected(migrated.error());
    }
    return database;
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
        m_failure = m_engine->errorOf(m_connection, error, m_target);
    }
}

Transaction::Transaction(Database& database) : m_database(database)
{
    m_database.begin();
    m_isOpen = m_database.connection().transaction();
    if (!m_isOpen) {
        m_database.failWith(m_database.connection().lastError());
    }
}

Transaction::~Transaction()
{
    rollBack();
}

void Transaction::rollBack()
{
    // The engine may have rolled back by itself: "no transaction is active" is no failure then.
    if (m_isOpen) {
        m_database.connection().rollback();
        m_isOpen = false;
    }
}

Result<void> Transaction::commit()
{
    if (!m_database.failure() && m_database.connection().commit()) {
        m_isOpen = false;
        return {};
    }
    if (!m_database.failure()) {
        m_database.failWith(m_database.connection().lastError());
    }
    rollBack();
    return tl::make_unexpected(*m_database.failure());
}

QString defaultStudioFile()
{
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/chalkrung/studio.chalkrung");
}

}  // namespace chalk::store
