#pragma once

#include <QString>

#include <memory>

#include <tl/expected.hpp>

namespace chalk::store {

struct Conflict;

/// What went wrong with a studio's data, for the program to act on and for a person to read.
struct StoreError {
    enum class Kind {
        NotThere,       ///< no such file, or a folder in its place
        NotAStudio,     ///< a file, but not one of ours
        Damaged,        ///< one of ours, cut short or broken
        Newer,          ///< written by a newer version of the program
        Older,          ///< written by an older version, and opened for reading only
        CannotRead,     ///< no right to read it
        CannotWrite,    ///< read-only, no space, no right
        Busy,           ///< another program holds it
        Refused,        ///< the data itself says no: a reference to nothing, a value out of range
        Cancelled,      ///< stopped by the person
        Conflict,       ///< somebody else changed the same thing in the meantime: nothing was written
        Locked,         ///< sealed: the passphrase is missing or not the right one
        Unreachable,    ///< the server does not answer: whether the last thing was written is not known before it does
        NotAllowed,     ///< the role of who asks does not reach that far
        Other
    };
    Kind kind = Kind::Other;
    QString message;  ///< one sentence that names the file or the record
    std::shared_ptr<const Conflict> conflict = {};  ///< both versions, where it is a Conflict about something that is written over
};

template <class T>
using Result = tl::expected<T, StoreError>;

[[nodiscard]] inline tl::unexpected<StoreError> storeError(StoreError::Kind kind, QString message)
{
    return tl::make_unexpected(StoreError{kind, std::move(message), {}});
}

}  // namespace chalk::store
