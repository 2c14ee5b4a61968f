#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// `chalkrung passphrase`: sets, changes or removes what seals the studio.
[[nodiscard]] Command passphraseCommand();

}  // namespace chalk::app
