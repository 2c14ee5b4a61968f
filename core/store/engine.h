#pragma once

#include "core/store/store_error.h"

#include <QSqlDatabase>
#include <QSqlError>
#include <QString>

#include <memory>
#include <optional>

namespace chalk::store {

enum class OpenMode { MustExist, CreateIfMissing, ReadOnly };

/// What differs between database engines. The rest of the store speaks the SQL that they share: positional placeholders,
/// `RETURNING`, `ON CONFLICT`, 0 and 1 for booleans, days as numbers.
class Engine {
public:
    virtual ~Engine() = default;

    /// The name of Qt's driver.
    [[nodiscard]] virtual QString driver() const = 0;
    /// Connects `database`, a fresh connection of this engine, to `target`. What is no studio is refused and left as it is.
    [[nodiscard]] virtual Result<void> open(QSqlDatabase& database, const QString& target, OpenMode mode) const = 0;

    /// The version of the schema; 0 for a database that is still empty.
    [[nodiscard]] virtual Result<int> schemaVersion(QSqlDatabase& database, const QString& target) const = 0;
    virtual bool setSchemaVersion(QSqlDatabase& database, int version) const = 0;
    /// A statement of a migration, which is written in SQLite's words, in those of this engine.
    [[nodiscard]] virtual QString adapted(const QString& schemaStatement) const = 0;

    /// Begins a transaction that writes and waits for others that do.
    [[nodiscard]] virtual QString beginWriting() const = 0;
    /// Begins a transaction that sees one state of the data throughout.
    [[nodiscard]] virtual QString beginReading() const = 0;
    /// Tells the other connections that something was written; they hear it once the transaction that is open is committed.
    /// Does nothing where the engine has no way to tell.
    virtual void announce(QSqlDatabase& database, const QString& news) const
    {
        Q_UNUSED(database)
        Q_UNUSED(news)
    }
    /// The channel on which announce() is heard; empty where there is none.
    [[nodiscard]] virtual QString newsChannel() const { return {}; }
    /// A number that is another one once another connection wrote; nothing where announce() tells of it.
    [[nodiscard]] virtual std::optional<qlonglong> markOfOthers(QSqlDatabase& database) const
    {
        Q_UNUSED(database)
        return std::nullopt;
    }
    /// Tidies up after very much was written at once. Its failure does no harm.
    virtual void settle(QSqlDatabase& database) const = 0;

    /// An error of Qt's in our words.
    [[nodiscard]] virtual StoreError errorOf(const QSqlDatabase& database, const QSqlError& error, const QString& target) const = 0;
};

/// SQLite, one file: WAL, synchronous FULL, foreign keys on.
[[nodiscard]] std::unique_ptr<Engine> sqliteEngine();

}  // namespace chalk::store
