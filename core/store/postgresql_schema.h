#pragma once

#include <QSqlDatabase>
#include <QString>
#include <QStringList>

namespace chalk::store {

/// The schema of a studio's tables in its database, and the roles of a server that work with it: one group each for owners, coaches and
/// the front desk. Their names are `BASE_owner`, `BASE_coach`, `BASE_front_desk`, with a base of this studio's own, since all databases
/// of a server share its roles.
inline constexpr const char* kServerSchema = "chalkrung";

/// The base of the roles' names, as the database keeps it; empty where it is no studio or cannot be read.
[[nodiscard]] QString roleBaseOf(QSqlDatabase& database);

/// A statement of the schema files, which are in SQLite's words, in PostgreSQL's: `INTEGER` is bigint, `id INTEGER PRIMARY KEY` counts up
/// by itself, texts sort by their bytes as in SQLite, `BLOB` is bytea, and a trigger that raises is a function with a trigger.
[[nodiscard]] QStringList postgresqlStatements(const QString& schemaStatement);

/// What is run before the steps from `version`: makes roles and schema where there are none, and works as the owners from then on, so that
/// what is made is theirs.
[[nodiscard]] QStringList postgresqlBeforeSteps(QSqlDatabase& database, int version);

/// What is run after the steps: the table of logins, what each role may, and the version. `resources/schema/postgresql/roles.sql` says
/// what the front desk may; who is no owner acts in their own name; coaches may all but what stands there, and change nothing of tables that are only ever added to.
[[nodiscard]] QStringList postgresqlAfterSteps(QSqlDatabase& database, int version);

}  // namespace chalk::store
