#pragma once

#include "core/store/store_error.h"

#include <QSqlDatabase>
#include <QSqlError>
#include <QString>

#include <memory>

namespace chalk::store {

enum class OpenMode { MustExist, CreateIfMissing, ReadOnly };

/// What differs between database engines. The rest of the store speaks the SQL that they share.
class Engine {
public:
    virtual ~Engine() = default;

    /// Opens `database`, a fresh connection of this engine, on `target`, and makes its settings.
    [[nodiscard]] virtual Result<void> open(QSqlDatabase& database, const QString& target, OpenMode mode) const = 0;
    /// The name of Qt's driver.
    [[nodiscard]] virtual QString driver() const = 0;
    /// The version of the schema; 0 for a database that is still empty.
    [[nodiscard]] virtual Result<int> schemaVersion(QSqlDatabase& database, const QString& target) const = 0;
    virtual bool setSchemaVersion(QSqlDatabase& database, int version) const = 0;
    /// An error of Qt's in our words.
    [[nodiscard]] virtual StoreError errorOf(const QSqlDatabase& database, const QSqlError& error, const QString& target) const = 0;
};

/// SQLite, one file: WAL, synchronous FULL, foreign keys on.
[[nodiscard]] std::unique_ptr<Engine> sqliteEngine();

}  // namespace chalk::store
