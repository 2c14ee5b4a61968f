#pragma once

#include <QString>

#include <atomic>
#include <memory>

namespace chalk::store {

class KeyRing;

/// Writes of all connections of one run of the program to one studio.
struct OwnWrites {
    std::atomic<int> begun = 0;
    std::atomic<int> ended = 0;
};

/// How to get into a studio: where it is and what opens it. Handed on to whoever opens a connection of its own.
struct Access {
    Access() = default;
    /// A studio that nothing has to be known for but its place.
    Access(QString where) : target(std::move(where)) {}  // NOLINT(google-explicit-constructor)

    QString target;                 ///< a file, or a server's URL without the password
    QString password;               ///< of the login at a server; empty where none is needed
    std::shared_ptr<OwnWrites> writes;  ///< of those who have this from each other
    std::shared_ptr<KeyRing> keys;  ///< what opens sealed texts; none where nothing is sealed
};

}  // namespace chalk::store
