#pragma once

#include "core/store/database.h"

#include <functional>
#include <string>

namespace chalk::store {

/// Answers an opaque text for the code of a session.
using SessionCodes = std::function<std::string()>;

/// Eight letters and digits that are not easily taken for each other, at random.
[[nodiscard]] std::string randomSessionCode();

/// A code that no session has yet: `newCode` is asked again where one is taken. Fails the transaction where none is found.
[[nodiscard]] std::string freeSessionCode(Database& database, const SessionCodes& newCode);

}  // namespace chalk::store
