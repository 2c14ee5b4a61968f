#pragma once

#include "core/checkin/check_in.h"
#include "core/store/statement.h"

namespace chalk::store {

// Decisions, to and from their rows. Failures go to the database.

/// `d.id, …` of `decision d`; read by decisionOf.
[[nodiscard]] const QString& decisionColumns();
/// The condition of `decision d` that the row counts: no other replaces it, and it is not void.
[[nodiscard]] const QString& decisionCounts();
/// The decision's act is the one that first wrote it, whatever was taken back and brought back since.
[[nodiscard]] checkin::Decision decisionOf(const Statement& row);

/// Adds the row of a new decision, by its act. Belongs into a transaction.
void insertDecision(Database& database, const checkin::Decision& decision);
/// Decisions that an act made are void after it; those that it made void count again. `by` is the act that takes them back.
void takeBackDecisions(Database& database, base::ActId act, base::ActId by);

}  // namespace chalk::store
