#include "core/store/migrations.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QSqlError>
#include <QSqlQuery>
#include <QUuid>

#include <algorithm>
#include <map>

namespace chalk::store {

namespace {

QStringList migrationFiles()
{
    return QDir(QStringLiteral(":/schema")).entryList({QStringLiteral("*.sql")}, QDir::Files, QDir::Name);
}

bool runOne(QSqlDatabase& database, const QString& statement, QSqlError& error)
{
    QSqlQuery query(database);
    if (query.exec(statement)) {
        return true;
    }
    error = query.lastError();
    return false;
}

bool runAll(QSqlDatabase& database, const QStringList& statements, QSqlError& error)
{
    return std::all_of(statements.begin(), statements.end(), [&](const QString& sql) { return runOne(database, sql, error); });
}

bool runStep(QSqlDatabase& database, const Engine& engine, const QString& name, QSqlError& error)
{
    QFile file(QStringLiteral(":/schema/") + name);
    if (!file.open(QIODevice::ReadOnly)) {
        error = QSqlError(QString(), QStringLiteral("%1 cannot be read").arg(name), QSqlError::UnknownError);
        return false;
    }
    const QStringList statements = statementsOf(QString::fromUtf8(file.readAll()));
    return std::all_of(statements.begin(), statements.end(), [&](const QString& sql) { return runAll(database, engine.adapted(sql), error); });
}

using SchemaWords = std::map<QString, QString>;  ///< by kind and name

SchemaWords sqliteSchemaOf(QSqlDatabase& database)
{
    SchemaWords found;
    QSqlQuery query(database);
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT type, name, tbl_name, sql FROM sqlite_master WHERE sql IS NOT NULL AND name NOT GLOB 'sqlite_*'"))) {
        return found;
    }
    while (query.next()) {
        found[query.value(0).toString() + QLatin1Char(' ') + query.value(1).toString()] = query.value(2).toString() + QLatin1Char(' ') + query.value(3).toString();
    }
    return found;
}

/// The schema that all steps make, in a database of memory.
SchemaWords schemaOfSteps(const Engine& engine)
{
    const QString name = QUuid::createUuid().toString(QUuid::WithoutBraces);
    SchemaWords made;
    {
        QSqlDatabase fresh = QSqlDatabase::addDatabase(engine.driver(), name);
        fresh.setDatabaseName(QStringLiteral(":memory:"));
        QSqlError error;
        const QStringList files = migrationFiles();
        if (fresh.open() && std::all_of(files.begin(), files.end(), [&](const QString& file) { return runStep(fresh, engine, file, error); })) {
            made = sqliteSchemaOf(fresh);
        }
    }
    QSqlDatabase::removeDatabase(name);
    return made;
}

}  // namespace

QStringList schemaFaults(QSqlDatabase& database, const Engine& engine)
{
    static const SchemaWords wanted = schemaOfSteps(engine);
    const SchemaWords found = sqliteSchemaOf(database);
    QStringList faults;
    if (wanted.empty() || found.empty()) {
        return faults;
    }
    for (const auto& [name, words] : wanted) {
        const auto has = found.find(name);
        if (has == found.end() || has->second != words) {
            faults.append((has == found.end() ? QStringLiteral("the %1 is missing") : QStringLiteral("the %1 is not as it was made")).arg(name));
        }
    }
    for (const auto& [name, words] : found) {
        if (wanted.count(name) == 0) {
            faults.append(QStringLiteral("the %1 is none of a studio's").arg(name));
        }
    }
    return faults;
}

int presentSchemaVersion()
{
    return static_cast<int>(migrationFiles().size());
}

QStringList schemaTables()
{
    static const QRegularExpression made(QStringLiteral("^(CREATE|DROP) TABLE (?:IF EXISTS )?(\\w+)"));
    QStringList tables;
    for (const QString& name : migrationFiles()) {
        QFile file(QStringLiteral(":/schema/") + name);
        const QStringList statements = file.open(QIODevice::ReadOnly) ? statementsOf(QString::fromUtf8(file.readAll())) : QStringList();
        for (const QString& statement : statements) {
            const auto found = made.match(statement);
            if (!found.hasMatch()) {
                continue;
            }
            if (found.captured(1) == QLatin1String("CREATE")) {
                tables.append(found.captured(2));
            } else {
                tables.removeAll(found.captured(2));
            }
        }
    }
    return tables;
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
    bool isDone = runAll(database, engine.beginWriting(), error);
    // Another program may have been at it in the meantime.
    const auto present = isDone ? engine.schemaVersion(database, target) : Result<int>(version);
    int step = present.value_or(version);
    isDone = isDone && present && runAll(database, engine.beforeSteps(database, step), error);
    for (; step < files.size() && isDone; ++step) {
        isDone = runStep(database, engine, files[step], error);
    }
    isDone = isDone && runAll(database, engine.afterSteps(database, step), error) && runOne(database, QStringLiteral("COMMIT"), error);
    if (!isDone) {
        const StoreError failure = present ? engine.errorOf(database, error, target) : present.error();
        runOne(database, QStringLiteral("ROLLBACK"), error);
        return tl::make_unexpected(failure);
    }
    return {};
}

}  // namespace chalk::store
