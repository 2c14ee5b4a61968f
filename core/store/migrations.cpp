#include "core/store/migrations.h"

#include <QDir>
#include <QFile>
#include <QSqlQuery>

namespace chalk::store {

namespace {

QStringList migrationFiles()
{
    return QDir(QStringLiteral(":/schema")).entryList({QStringLiteral("*.sql")}, QDir::Files, QDir::Name);
}

bool runAll(QSqlDatabase& database, const QStringList& statements, QSqlError& error)
{
    for (const QString& statement : statements) {
        QSqlQuery query(database);
        if (!query.exec(statement)) {
            error = query.lastError();
            return false;
        }
    }
    return true;
}

}  // namespace

int presentSchemaVersion()
{
    return static_cast<int>(migrationFiles().size());
}

QStringList statementsOf(const QString& sql)
{
    QStringList statements;
    QString statement;
    bool isInTrigger = false;
    for (const QString& line : sql.split(QLatin1Char('\n'))) {
        const QString trimmed = line.trimmed();
        if (trimmed.isEmpty() || trimmed.startsWith(QLatin1String("--"))) {
            continue;
        }
        isInTrigger = isInTrigger || trimmed.startsWith(QLatin1String("CREATE TRIGGER"));
        statement += line + QLatin1Char('\n');
        if (isInTrigger ? trimmed.endsWith(QLatin1String("END;")) : trimmed.endsWith(QLatin1Char(';'))) {
            statements.append(statement.trimmed());
            statement.clear();
            isInTrigger = false;
        }
    }
    return statements;
}

Result<void> migrate(QSqlDatabase& database, const Engine& engine, int version, const QString& target)
{
    const QStringList files = migrationFiles();
    if (version > files.size()) {
        return storeError(StoreError::Kind::Newer, QStringLiteral("%1 was written by a newer version of Chalkrung").arg(target));
    }
    if (version == files.size()) {
        return {};
    }
    QSqlError error;
    bool isDone = database.transaction();
    for (int step = version; step < files.size() && isDone; ++step) {
        QFile file(QStringLiteral(":/schema/") + files[step]);
        isDone = file.open(QIODevice::ReadOnly) && runAll(database, statementsOf(QString::fromUtf8(file.readAll())), error);
    }
    isDone = isDone && engine.setSchemaVersion(database, static_cast<int>(files.size())) && database.commit();
    if (!isDone) {
        const StoreError failure = engine.errorOf(database, error.isValid() ? error : database.lastError(), target);
        database.rollback();
        return tl::make_unexpected(failure);
    }
    return {};
}

}  // namespace chalk::store
