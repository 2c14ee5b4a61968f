#pragma once

#include "core/store/database.h"
#include "core/store/studio_import.h"

#include <QString>

#include <functional>

namespace chalk::store {

/// Copies a studio row by row into an empty one, from any engine to any other: acts and their undo, what was said and who said it keep their
/// ids. Refused where texts are sealed and would go to a server, which keeps none. What was written is read back and compared before it is committed, so that `to` holds all of it or nothing.
/// Refused where there is a studio in `to` already. Logins of a server are not copied. `progress` is told thousands of rows. Answers how many
/// rows there are. `verify` is asked before all of it is committed: where it says no, nothing is.
[[nodiscard]] Result<qint64> copyRows(Database& from, Database& to, const Progress& progress = {}, const std::function<Result<void>()>& verify = {});

/// The same into a new file, which gets its name when all is in it, and is readable by its owner only. Fails where the file is there.
[[nodiscard]] Result<qint64> copyRowsToFile(Database& from, const QString& file, const Progress& progress = {});

}  // namespace chalk::store
