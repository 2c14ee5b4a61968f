#pragma once

#include <QString>

namespace chalk::app {

/// What leads back from a damaged studio, in words: its last sound backup and the command that restores it. Empty where it has none. Opens and verifies
/// backups until one is sound.
[[nodiscard]] QString wayBackFrom(const QString& studioFile);

}  // namespace chalk::app
