#pragma once

#include "core/store/database.h"

#include <QFuture>
#include <QString>

#include <cstdint>
#include <memory>

namespace chalk::store {

/// What came of asking a server.
enum class PingAnswer : std::uint8_t {
    Well,    ///< it answers, and the connection that was asked about is one of its own
    CutOff,  ///< it answers, but knows nothing of that connection
    Silent   ///< it does not
};

/// Asks a server whether it still answers: by a connection of its own, in a thread of its own. So a server that hangs holds up nobody but that thread;
/// where this goes meanwhile, the thread is left to itself.
class ServerPing {
public:
    /// `access` is how to get into the studio.
    explicit ServerPing(Access access);
    ~ServerPing();
    ServerPing(const ServerPing&) = delete;
    ServerPing& operator=(const ServerPing&) = delete;

    /// What names the connection of `database` among all of its server's; empty where it cannot be told.
    [[nodiscard]] static QString sessionOf(Database& database);
    /// Asks once more, about the connection of that name; no name: only whether it answers. The answer to the question before has to be there.
    [[nodiscard]] QFuture<PingAnswer> ask(const QString& session);

private:
    struct Thread;

    std::shared_ptr<Thread> m_thread;
};

}  // namespace chalk::store
