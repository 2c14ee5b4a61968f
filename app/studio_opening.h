#pragma once

#include "core/store/database.h"

namespace chalk::app {

/// Opens the studio that a window is for: a file, whose passphrase is asked for where it has one, or a server's, where the person signs in if the
/// server asks for it. The login is remembered, passphrase and password are not. Cancelled where the person gave up.
[[nodiscard]] store::Result<std::unique_ptr<store::Database>> openForWindow(const store::Access& access, store::OpenMode mode);

}  // namespace chalk::app
