#pragma once

#include "core/seal/seal_key.h"
#include "core/store/database.h"
#include "core/store/studio_import.h"

namespace chalk::store {

/// Seals or opens the texts of every row of every sealed table, inside of a transaction. What guards the log against being written over is put aside for that
/// time. The database fails as Damaged where a text does not open, and as Cancelled where `progress` stops it.
void sealRows(Database& database, const seal::SealKey& textKey, const Progress& progress);
void openRows(Database& database, const seal::SealKey& textKey, const Progress& progress);

}  // namespace chalk::store
