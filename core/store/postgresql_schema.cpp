#include "core/store/postgresql_schema.h"

#include "core/store/migrations.h"

#include <QFile>
#include <QRegularExpression>
#include <QSqlQuery>
#include <QUuid>
#include <QVariant>

namespace chalk::store {

namespace {

QString quotedName(const QString& name)
{
    return QLatin1Char('"') + QString(name).replace(QLatin1Char('"'), QLatin1String("\"\"")) + QLatin1Char('"');
}

QStringList namesFrom(QSqlDatabase& database, const QString& sql)
{
    QStringList names;
    QSqlQuery query(database);
    query.exec(sql);
    while (query.next()) {
        names.append(query.value(0).toString());
    }
    return names;
}

/// Tables whose rows are never changed, or never deleted: those with a trigger of that name.
QStringList guardedTables(QSqlDatabase& database, const char* ending)
{
    return namesFrom(database, QStringLiteral("SELECT c.relname FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid JOIN pg_namespace n ON n.oid = c.relnamespace "
                                              "WHERE n.nspname = '%1' AND t.tgname = c.relname || '%2' ORDER BY c.relname")
                                   .arg(QLatin1String(kServerSchema), QLatin1String(ending)));
}

/// The function and the trigger of `CREATE TRIGGER name BEFORE what ON table [WHEN condition] BEGIN SELECT RAISE(ABORT, 'why'); END`.
QStringList triggerStatements(const QString& statement)
{
    static const QRegularExpression form(
        QStringLiteral("^CREATE TRIGGER (\\w+)\\s+BEFORE (UPDATE(?: OF [\\w, ]+)?|DELETE|INSERT) ON (\\w+)(?:\\s+FOR EACH ROW)?(?:\\s+WHEN (.+?))?\\s+"
                       "BEGIN\\s+SELECT RAISE\\(ABORT, '((?:[^']|'')*)'\\)(?:\\s+WHERE (.+?))?;\\s*END;$"),
        QRegularExpression::DotMatchesEverythingOption);
    const auto found = form.match(statement);
    if (!found.hasMatch()) {
        return {statement};  // the server says what it cannot read
    }
    const QString conditions[] = {found.captured(4), found.captured(6)};
    QString condition = QStringLiteral("true");
    for (const QString& one : conditions) {
        condition += one.isEmpty() ? QString() : QStringLiteral(" AND (%1)").arg(one);
    }
    const QString row = found.captured(2) == QLatin1String("DELETE") ? QStringLiteral("OLD") : QStringLiteral("NEW");
    return {QStringLiteral("CREATE FUNCTION %1() RETURNS trigger LANGUAGE plpgsql SET search_path = %2, pg_temp AS $$\n"
                           "BEGIN IF %3 THEN RAISE EXCEPTION USING MESSAGE = '%4', ERRCODE = 'restrict_violation'; END IF; RETURN %5; END $$")
                .arg(found.captured(1), QLatin1String(kServerSchema), condition, found.captured(5), row),
            QStringLiteral("CREATE TRIGGER %1 BEFORE %2 ON %3 FOR EACH ROW EXECUTE FUNCTION %1()").arg(found.captured(1), found.captured(2), found.captured(3))};
}

/// Whoever is no owner acts in the name of their own login, whatever their program says. An owner may bring in what others did.
QStringList authorStatements()
{
    return {QStringLiteral("CREATE OR REPLACE FUNCTION is_in_its_authors_name() RETURNS trigger LANGUAGE plpgsql SET search_path = %1, pg_temp AS $$\n"
                           "BEGIN IF NOT pg_has_role(session_user, (SELECT role_base FROM server) || '_owner', 'member') THEN "
                           "NEW.coach_id := (SELECT coach_id FROM login WHERE name = session_user); END IF; RETURN NEW; END $$")
                .arg(QLatin1String(kServerSchema)),
            QStringLiteral("CREATE OR REPLACE TRIGGER act_is_in_its_authors_name BEFORE INSERT ON act FOR EACH ROW EXECUTE FUNCTION is_in_its_authors_name()"),
            QStringLiteral("CREATE OR REPLACE TRIGGER audit_is_in_its_authors_name BEFORE INSERT ON audit FOR EACH ROW EXECUTE FUNCTION is_in_its_authors_name()")};
}

/// `DROP TRIGGER table_is_never_deleted;` with its function: the table is named by the trigger.
QStringList droppedTrigger(const QString& statement)
{
    static const QRegularExpression form(QStringLiteral("^DROP TRIGGER ((\\w+)_is_never_(?:changed|deleted));$"));
    const auto found = form.match(statement);
    return found.hasMatch() ? QStringList{QStringLiteral("DROP TRIGGER %1 ON %2").arg(found.captured(1), found.captured(2)), QStringLiteral("DROP FUNCTION %1()").arg(found.captured(1))}
                            : QStringList{statement};
}

/// The file of roles, with their names put in.
QStringList roleStatements(const QString& base)
{
    QFile file(QStringLiteral(":/server/roles.sql"));
    if (!file.open(QIODevice::ReadOnly)) {
        return {QStringLiteral("no roles.sql")};  // fails, and says so
    }
    QString sql = QString::fromUtf8(file.readAll());
    for (const char* role : {"owner", "coach", "front_desk"}) {
        sql.replace(QLatin1Char('{') + QLatin1String(role) + QLatin1Char('}'), quotedName(base + QLatin1Char('_') + QLatin1String(role)));
    }
    return statementsOf(sql);
}

}  // namespace

QString roleBaseOf(QSqlDatabase& database)
{
    QSqlQuery query(database);
    return query.exec(QStringLiteral("SELECT role_base FROM %1.server").arg(QLatin1String(kServerSchema))) && query.next() ? query.value(0).toString() : QString();
}

QStringList postgresqlStatements(const QString& schemaStatement)
{
    static const QRegularExpression tableOptions(QStringLiteral("\\)\\s*STRICT(?:,\\s*WITHOUT ROWID)?;$"));
    static const QRegularExpression identity(QStringLiteral("\\bid INTEGER PRIMARY KEY\\b"));
    static const QRegularExpression whole(QStringLiteral("\\bINTEGER\\b"));
    static const QRegularExpression text(QStringLiteral("\\bTEXT\\b"));
    static const QRegularExpression bytes(QStringLiteral("\\bBLOB\\b"));
    // A key that refers to another table is given, and not counted.
    static const QRegularExpression reference(QStringLiteral("(\\w+_id) INTEGER PRIMARY KEY"));
    if (schemaStatement.startsWith(QLatin1String("CREATE TRIGGER"))) {
        return triggerStatements(schemaStatement);
    }
    if (schemaStatement.startsWith(QLatin1String("DROP TRIGGER"))) {
        return droppedTrigger(schemaStatement);
    }
    QString statement = schemaStatement;
    statement.replace(tableOptions, QStringLiteral(");"));
    statement.replace(reference, QStringLiteral("\\1 bigint PRIMARY KEY"));
    statement.replace(identity, QStringLiteral("id bigint GENERATED BY DEFAULT AS IDENTITY PRIMARY KEY"));
    statement.replace(whole, QStringLiteral("bigint"));
    statement.replace(text, QStringLiteral("text COLLATE \"C\""));
    statement.replace(bytes, QStringLiteral("bytea"));
    return {statement};
}

QStringList postgresqlBeforeSteps(QSqlDatabase& database, int version)
{
    const QString known = version > 0 ? roleBaseOf(database) : QString();
    const QString base = version > 0 ? known : QStringLiteral("chalkrung_") + QUuid::createUuid().toString(QUuid::Id128).left(8);
    const QString owner = quotedName(base + QStringLiteral("_owner"));
    const QString asOwner = QStringLiteral("SET LOCAL ROLE %1").arg(owner);
    if (version > 0) {
        return {asOwner};
    }
    return {QStringLiteral("CREATE ROLE %1 NOLOGIN").arg(owner),
            QStringLiteral("CREATE ROLE %1 NOLOGIN").arg(quotedName(base + QStringLiteral("_coach"))),
            QStringLiteral("CREATE ROLE %1 NOLOGIN").arg(quotedName(base + QStringLiteral("_front_desk"))),
            QStringLiteral("GRANT %1 TO CURRENT_USER").arg(owner),
            QStringLiteral("CREATE SCHEMA %1 AUTHORIZATION %2").arg(QLatin1String(kServerSchema), owner),
            asOwner,
            QStringLiteral("CREATE TABLE server (id integer PRIMARY KEY CHECK (id = 1), role_base text NOT NULL, schema_version bigint NOT NULL)"),
            QStringLiteral("INSERT INTO server (id, role_base, schema_version) VALUES (1, '%1', 0)").arg(base)};
}

QStringList postgresqlAfterSteps(QSqlDatabase& database, int version)
{
    const QString base = roleBaseOf(database);
    const QString coach = quotedName(base + QStringLiteral("_coach"));
    QStringList statements{
        QStringLiteral("CREATE TABLE IF NOT EXISTS login (name text PRIMARY KEY, coach_id bigint REFERENCES coach (id))"),
        QStringLiteral("REVOKE ALL ON ALL TABLES IN SCHEMA %1 FROM PUBLIC, %2, %3").arg(QLatin1String(kServerSchema), coach, quotedName(base + QStringLiteral("_front_desk"))),
        QStringLiteral("GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA %1 TO %2").arg(QLatin1String(kServerSchema), coach)};
    for (const QString& table : guardedTables(database, "_is_never_changed")) {
        statements.append(QStringLiteral("REVOKE UPDATE ON %1 FROM %2").arg(quotedName(table), coach));
    }
    for (const QString& table : guardedTables(database, "_is_never_deleted")) {
        statements.append(QStringLiteral("REVOKE DELETE ON %1 FROM %2").arg(quotedName(table), coach));
    }
    statements += authorStatements();
    statements += roleStatements(base);
    statements.append(QStringLiteral("UPDATE server SET schema_version = %1").arg(version));
    return statements;
}

}  // namespace chalk::store
