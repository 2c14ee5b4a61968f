#pragma once

#include "core/store/act_reader.h"
#include "core/store/database.h"

#include <QObject>

#include <functional>
#include <vector>

namespace chalk::store {

/// How many connections of this run of the program may write to one studio, and how many did until they were closed. So a window knows that what
/// changed may be what its own work beside it wrote.
struct OwnWriters {
    int open = 0;
    int closed = 0;
};

/// Of the studio that connections name `target`; a connection that may write begins, and is closed.
[[nodiscard]] OwnWriters ownWritersOf(const QString& target);
void ownWriterOpened(const QString& target);
void ownWriterClosed(const QString& target);

/// Tells when somebody else wrote to a studio: another window on the same file, another coach at the same server. One's own writes, and those of
/// other connections of the same run of the program, are not told of where they are acts.
class ChangeFeed {
public:
    /// `database` outlives this; it is looked at in the thread that opened it.
    explicit ChangeFeed(Database& database);
    ChangeFeed(const ChangeFeed&) = delete;
    ChangeFeed& operator=(const ChangeFeed&) = delete;

    /// From here on `heard` is called as soon as the server tells of a change; nothing where the engine does not tell by itself, as a file. To be
    /// called again after the database was connected anew. False where the server refuses it.
    bool listen(std::function<void()> heard);
    /// Whether somebody else wrote since the last look: asks the engine, which is cheap. For every few seconds. Always false where it tells by itself.
    [[nodiscard]] bool look();
    /// Whether the studio still answers; Unreachable where the connection is lost.
    [[nodiscard]] Result<void> check();
    /// What others did since this was made or asked last, the earliest first; at most the last twenty acts. What is no act is not in it.
    [[nodiscard]] Result<std::vector<ActRecord>> news();
    /// Whether other connections of this run could write between the last news() and the one before: where it told of no act, the change is taken
    /// for theirs.
    [[nodiscard]] bool isOwn() const { return m_isOwn; }

private:
    [[nodiscard]] std::int64_t lastAct();
    void countWriters();

    Database& m_database;
    QObject m_context;  ///< the server is heard as long as this is there
    std::optional<qlonglong> m_mark;
    std::int64_t m_lastAct = 0;
    int m_closedWriters = 0;
    bool m_isOwn = false;
};

}  // namespace chalk::store
