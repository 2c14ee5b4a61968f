#pragma once

#include "app/commands/command.h"
#include "core/store/sealed_copy.h"

namespace chalk::app {

/// A backup that can be read as a studio's file. A sealed one opens by `keys`, else by the passphrase that was named; where none was and `mayAsk`, by the one
/// that is asked for on the terminal. What opened it is on `keys` then.
[[nodiscard]] store::Result<store::OpenedCopy> openBackup(const CommandContext& context, const QString& file, store::KeyRing& keys, bool mayAsk);

}  // namespace chalk::app
