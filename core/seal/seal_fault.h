#pragma once

#include <tl/expected.hpp>

namespace chalk::seal {

/// Why something sealed was not opened, or not sealed.
enum class SealFault {
    WrongPassphrase,  ///< or what the passphrase opens was altered: the two cannot be told apart
    Damaged,          ///< altered, cut short, or put in another place
    NoMemory,         ///< the work on a passphrase needs more memory than there is
    CannotRead,
    CannotWrite,
    Cancelled
};

template <class T>
using SealResult = tl::expected<T, SealFault>;

}  // namespace chalk::seal
