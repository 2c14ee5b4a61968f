#pragma once

#include "core/seal/passphrase.h"

#include <QString>
#include <QTextStream>

#include <optional>

namespace chalk::app {

/// The environment variable that names the file of the passphrase where no option does.
inline constexpr const char* kPassphraseFileVariable = "CHALKRUNG_PASSPHRASE_FILE";

/// What a file says in its first line; `fault` says why there is none.
[[nodiscard]] std::optional<QString> passphraseIn(const QString& file, QString& fault);

/// Asks on the terminal, without showing what is typed; nothing where there is no terminal or the question was called off.
[[nodiscard]] std::optional<QString> askPassphrase(const QString& question);

}  // namespace chalk::app
