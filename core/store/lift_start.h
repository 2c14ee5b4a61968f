#pragma once

#include "core/store/client_forms.h"
#include "core/store/client_inserts.h"

#include <vector>

namespace chalk::store {

// What several writers do inside of their own transaction; what cannot be is a failure of the database then.

/// Begins lifts and answers their ids, in the order given. Refused where the client has a lift of that pattern already, or the setup cannot be.
[[nodiscard]] std::vector<base::LiftId> beginLifts(Database& database, base::ClientId client, const std::vector<NewLift>& lifts);

/// Closes the open form of a kind: from now on it stays as it is. Nothing where none is open.
void closeOpenForm(Database& database, base::ClientId client, FormKind kind);

}  // namespace chalk::store
