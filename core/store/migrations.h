#pragma once

#include "core/store/engine.h"

#include <QString>

namespace chalk::store {

/// The schema that this program reads and writes.
[[nodiscard]] int presentSchemaVersion();

/// Brings a database from `version` to the present schema: every numbered step (`:/schema/0001_*.sql` and on) in one transaction.
/// Fails, and changes nothing, where the database is newer or a step fails.
[[nodiscard]] Result<void> migrate(QSqlDatabase& database, const Engine& engine, int version, const QString& target);

/// What an SQLite database has in its schema besides or other than what the steps of this program make, a line each: tables, indexes and triggers, by
/// their words. Empty where there is nothing, or where it cannot be read.
[[nodiscard]] QStringList schemaFaults(QSqlDatabase& database, const Engine& engine);

/// The tables of the present schema in the order in which they were made: what a row refers to is in its own table or in one before.
[[nodiscard]] QStringList schemaTables();

/// The statements of a migration file, split at the semicolons that end one.
[[nodiscard]] QStringList statementsOf(const QString& sql);

}  // namespace chalk::store
