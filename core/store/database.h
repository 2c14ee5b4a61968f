#pragma once

#include "core/base/id.h"
#include "core/store/access.h"
#include "core/store/engine.h"
#include "core/store/store_error.h"
#include "core/store/vault.h"

#include <QSqlDatabase>
#include <QString>

#include <memory>
#include <optional>

namespace chalk::store {

/// One connection to a studio, for the thread that opened it; long work opens another one in a thread of its own. The first
/// statement that fails is remembered, and those after it do nothing: so a reader or writer runs its statements in a row and
/// asks for the failure once, at the end.
class Database {
public:
    /// Opens a studio of the present schema; older ones are brought up to it first. A sealed one needs a key or the passphrase in `access.keys`; where the keys
    /// were locked since, it opens, and its texts do not. Fails with a message that names the file.
    [[nodiscard]] static Result<std::unique_ptr<Database>> open(const Access& access, OpenMode mode);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    [[nodiscard]] QSqlDatabase& connection() { return m_connection; }
    [[nodiscard]] const QString& target() const { return m_access.target; }
    /// For whoever opens another connection.
    [[nodiscard]] const Access& access() const { return m_access; }
    [[nodiscard]] const Engine& engine() const { return *m_engine; }
    [[nodiscard]] bool isReadOnly() const { return m_isReadOnly; }
    /// What seals and opens the texts of this studio.
    [[nodiscard]] Vault& vault() { return *m_vault; }

    /// Who works with this connection: what is done is written down as theirs. None where nobody said.
    [[nodiscard]] base::CoachId author() const { return m_author; }
    void setAuthor(base::CoachId author) { m_author = author; }
    /// What this connection reaches; everything in a file.
    [[nodiscard]] Role role() const { return m_role; }
    [[nodiscard]] bool may(Right right) const { return store::may(m_role, right); }
    /// Whether another connection of this run of the program, which has its access from this one or gave it, wrote since this was asked last.
    [[nodiscard]] bool hasOwnNews();
    /// Whether the studio is on a server, where others write at the same time.
    [[nodiscard]] bool isOnServer() const;

    /// The next act is written under this token, once: a second act of the same token is refused by the studio, so what was sent twice
    /// is done once. Without it an act gets a token of its own.
    void setNextToken(const QString& token) { m_nextToken = token; }
    [[nodiscard]] QString takeToken();
    /// Connects again after the connection was lost. Nothing of it is open then.
    [[nodiscard]] Result<void> reconnect();

    /// The first failure since the last transaction or snapshot began.
    [[nodiscard]] const std::optional<StoreError>& failure() const { return m_failure; }
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
    friend class OwnWrite;
    friend class Transaction;
    friend class Snapshot;

    Database(Access access, bool isReadOnly);
    /// Begins a transaction; answers whether it began.
    bool begin(const QStringList& statements);
    bool run(const QString& statement);
    [[nodiscard]] Result<void> openVault();

    std::unique_ptr<Engine> m_engine;
    Access m_access;
    QString m_name;
    QSqlDatabase m_connection;
    bool m_isReadOnly = false;
    base::CoachId m_author;
    QString m_nextToken;
    Role m_role = Role::Owner;
    bool m_isInTransaction = false;
    int m_written = 0;      ///< how often this connection wrote
    int m_seenWritten = 0;  ///< writes of others of this run that had ended when this was asked last
    std::optional<StoreError> m_failure;
    std::unique_ptr<Vault> m_vault;
};

/// While it lives, this connection writes.
class OwnWrite {
public:
    explicit OwnWrite(Database& database);
    ~OwnWrite();
    OwnWrite(const OwnWrite&) = delete;
    OwnWrite& operator=(const OwnWrite&) = delete;

private:
    std::shared_ptr<OwnWrites> m_writes;
};

/// A transaction that rolls back unless it is committed. There is one at a time; what failed before it is forgotten.
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
    OwnWrite m_write;
    bool m_isOpen = false;
};

/// While it lives, everything that is read is of one state of the data, whoever else writes. Inside of a transaction it does
/// nothing.
class Snapshot {
public:
    explicit Snapshot(Database& database);
    ~Snapshot();
    Snapshot(const Snapshot&) = delete;
    Snapshot& operator=(const Snapshot&) = delete;

private:
    Database& m_database;
    bool m_isOpen = false;
};

/// What the tokens of this run of the program begin with.
[[nodiscard]] QString runToken();
/// A token that no other act has.
[[nodiscard]] QString newToken();

/// The studio file in the user's own data folder.
[[nodiscard]] QString defaultStudioFile();

}  // namespace chalk::store
