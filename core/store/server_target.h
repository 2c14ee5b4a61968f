#pragma once

#include "core/store/access.h"
#include "core/store/store_error.h"

#include <QString>
#include <QStringList>

namespace chalk::store {

/// Where a studio's server is: `postgresql://LOGIN@HOST:PORT/DATABASE?sslmode=verify-full`. Host, port and database may be left out, as the
/// server's own client library says; so may the login, which is then the user's own name.
struct ServerTarget {
    QString host;
    int port = 0;  ///< 0: the usual one
    QString database;
    QString login;
    QStringList options;  ///< `name=value`, of those that say how the connection is made

    bool operator==(const ServerTarget&) const = default;
};

/// Whether a target is a server's URL and no file.
[[nodiscard]] bool isServerTarget(const QString& target);

/// The parts of a URL. Fails where it is none, or asks for an option that is unknown: one that is misspelt must not be passed over where
/// it was to make the connection safer.
[[nodiscard]] Result<ServerTarget> serverTargetOf(const QString& url);

/// Whether a server did not let a login in because its password is missing or another one.
[[nodiscard]] bool isAboutPassword(const StoreError& error);

/// A password that stands in the URL goes to where passwords belong; so no message, title or log ever holds it.
[[nodiscard]] Access withoutPasswordInTarget(Access access);

}  // namespace chalk::store
