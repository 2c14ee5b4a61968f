#pragma once

#include "core/store/database.h"
#include "core/store/progress.h"

namespace chalk::store {

/// Takes a studio to another place: a file that is not there yet, or a database of a server in which there is no studio; a database that is not
/// there is made. Every row is copied, read back and compared, and the whole is verified. Where it came from stays as it is. Fails with
/// Cancelled where `progress` says stop. Nothing is left of one that failed: a file gets its name at the end, and
/// what was made on a server for it goes. Answers how many rows there are.
[[nodiscard]] Result<qint64> transferStudio(Database& from, const Access& to, const Progress& progress = {});

}  // namespace chalk::store
