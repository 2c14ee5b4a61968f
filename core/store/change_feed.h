#pragma once

#include "core/store/act_reader.h"
#include "core/store/database.h"

#include <QObject>

#include <functional>
#include <vector>

namespace chalk::store {

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
    /// What others did since this was made or asked last, the earliest first; at most the last twenty acts. What is no act is not in it.
    /// Unreachable where the connection is lost.
    [[nodiscard]] Result<std::vector<ActRecord>> news();

private:
    [[nodiscard]] std::int64_t lastAct();

    Database& m_database;
    QObject m_context;  ///< the server is heard as long as this is there
    std::optional<qlonglong> m_mark;
    std::int64_t m_lastAct = 0;
};

}  // namespace chalk::store
