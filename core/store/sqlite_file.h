#pragma once

#include "core/store/engine.h"

#include <QString>

namespace chalk::store {

/// Marks our files in SQLite's header: `Chlk`.
inline constexpr int kApplicationId = 0x43686C6B;

/// What can be told from a file before SQLite touches it: it is there (or is made, with mode 0600 in a folder of 0700), it may be
/// read and written as `mode` asks, it is one of ours, and it was not cut short. Reads the first 100 bytes.
[[nodiscard]] Result<void> checkSqliteFile(const QString& file, OpenMode mode);

/// Whether `file` stands in a folder where SQLite cannot make the files beside it, and has nothing waiting in one of them.
[[nodiscard]] bool isSealed(const QString& file);

}  // namespace chalk::store
