#pragma once

#include "core/store/database.h"

namespace chalk::app {

/// Opens the studio that a window is for: a file, or a server's, where the person signs in if the server asks for it. The login is remembered,
/// the password is not. Cancelled where the person gave up.
[[nodiscard]] store::Result<std::unique_ptr<store::Database>> openForWindow(const QString& target, store::OpenMode mode);

}  // namespace chalk::app
