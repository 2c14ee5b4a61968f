#pragma once

#include "core/base/id.h"
#include "core/store/access.h"
#include "core/store/role.h"
#include "core/store/store_error.h"

#include <QSqlDatabase>
#include <QSqlError>
#include <QString>
#include <QStringList>

#include <memory>
#include <optional>

namespace chalk::store {

enum class OpenMode { MustExist, CreateIfMissing, ReadOnly };

/// Who stands behind a connection, as the database knows it.
struct Standing {
    Role role = Role::Owner;
    base::CoachId coach;  ///< none where the login belongs to no coach
};

/// What differs between database engines. The rest of the store speaks the SQL that they share: positional placeholders,
/// `RETURNING`, `ON CONFLICT`, 0 and 1 for booleans, days as numbers.
class Engine {
public:
    virtual ~Engine() = default;

    /// The name of Qt's driver.
    [[nodiscard]] virtual QString driver() const = 0;
    /// Connects `database`, a fresh connection of this engine. What is no studio is refused and left as it is.
    [[nodiscard]] virtual Result<void> open(QSqlDatabase& database, const Access& access, OpenMode mode) const = 0;
    /// Who works by this connection, which is that of a studio of the present schema.
    [[nodiscard]] virtual Result<Standing> standing(QSqlDatabase& database, const QString& target) const = 0;

    /// The version of the schema; 0 for a database that is still empty.
    [[nodiscard]] virtual Result<int> schemaVersion(QSqlDatabase& database, const QString& target) const = 0;
    /// What is run before the steps that lead on from `version`, and after those that lead up to it, in the transaction of the steps.
    [[nodiscard]] virtual QStringList beforeSteps(QSqlDatabase& database, int version) const = 0;
    [[nodiscard]] virtual QStringList afterSteps(QSqlDatabase& database, int version) const = 0;
    /// A statement of a migration, which is written in SQLite's words, in those of this engine.
    [[nodiscard]] virtual QStringList adapted(const QString& schemaStatement) const = 0;

    /// Begins a transaction that writes and waits for others that do.
    [[nodiscard]] virtual QStringList beginWriting() const = 0;
    /// Begins a transaction that sees one state of the data throughout.
    [[nodiscard]] virtual QStringList beginReading() const = 0;
    /// Whether rows can be read one by one while other statements run on the same connection; else a result is fetched at once.
    [[nodiscard]] virtual bool readsRowByRow() const = 0;
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

    /// What is wrong with the structure of the data, and which rows point to nothing: a sentence each. Fails where it cannot be looked at.
    [[nodiscard]] virtual Result<QStringList> structureFaults(QSqlDatabase& database, const QString& target) const = 0;
    [[nodiscard]] virtual Result<QStringList> referenceFaults(QSqlDatabase& database, const QString& target) const = 0;
    /// What is run after rows were written with the ids that they had elsewhere, so that new ones go on after them.
    [[nodiscard]] virtual QStringList afterCopying(const QString& tableWithId) const = 0;

    /// An error of Qt's in our words.
    [[nodiscard]] virtual StoreError errorOf(const QSqlDatabase& database, const QSqlError& error, const QString& target) const = 0;
};

/// SQLite, one file: WAL, synchronous FULL, foreign keys on.
[[nodiscard]] std::unique_ptr<Engine> sqliteEngine();
/// PostgreSQL, one database of a server, in a schema of its own.
[[nodiscard]] std::unique_ptr<Engine> postgresqlEngine();
/// The engine of a target: that of a server for a URL, else SQLite's.
[[nodiscard]] std::unique_ptr<Engine> engineFor(const QString& target);

}  // namespace chalk::store
