#pragma once

#include "core/store/engine.h"
#include "core/store/store_error.h"

#include <QSqlDatabase>
#include <QString>

#include <memory>
#include <optional>

namespace chalk::store {

/// One connection to a studio, for the thread that opened it. The first statement that fails is remembered, and those after it
/// do nothing: so a reader or writer runs its statements in a row and asks for the failure once, at the end.
class Database {
public:
    /// Opens a studio of the present schema; older ones are brought up to it first. Fails with a message that names the file.
    [[nodiscard]] static Result<std::unique_ptr<Database>> open(const QString& target, OpenMode mode);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    [[nodiscard]] QSqlDatabase& connection() { return m_connection; }
    [[nodiscard]] const QString& target() const { return m_target; }
    [[nodiscard]] bool isReadOnly() const { return m_isReadOnly; }

    /// The first failure since the last call of `begin`.
    [[nodiscard]] const std::optional<StoreError>& failure() const { return m_failure; }
    void begin() { m_failure.reset(); }
    void fail(StoreError error);
    void failWith(const QSqlError& error);

    /// `value`, or the failure.
    template <class T>
    [[nodiscard]] Result<T> resultOf(T value) const
    {
        if (m_failure) {
            return tl::make_unexpected(*m_failure);
        }
        return value;
    }

private:
    Database(QString target, bool isReadOnly);

    std::unique_ptr<Engine> m_engine;
    QString m_target;
    QString m_name;
    QSqlDatabase m_connection;
    bool m_isReadOnly = false;
    std::optional<StoreError> m_failure;
};

/// A transaction that rolls back unless it is committed.
class Transaction {
public:
    explicit Transaction(Database& database);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    /// Commits where nothing failed; else rolls back and answers the first failure.
    [[nodiscard]] Result<void> commit();

private:
    void rollBack();
    Database& m_database;
    bool m_isOpen = false;
};

/// The studio file in the user's own data folder.
[[nodiscard]] QString defaultStudioFile();

}  // namespace chalk::store
