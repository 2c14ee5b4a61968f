#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/tested_maximum.h"
#include "core/store/statement.h"

namespace chalk::store {

// Plans and tests of maxima, to and from their rows. Failures go to the database.

/// `p.id, …` of `plan p`; read by planOf.
[[nodiscard]] const QString& planColumns();
/// The condition of `plan p` that the row counts: no other replaces it, and it is not void.
[[nodiscard]] const QString& planCounts();
/// Fails the database where the content cannot be read.
[[nodiscard]] direction::ClientPlan planOf(const Statement& row);

/// Adds a version of a plan, by an act; of a plan without an id the first one. Refused where the plan with its id is not there.
void insertPlan(Database& database, const direction::ClientPlan& plan, base::ActId act);
/// Plans that an act began are void after it; those that it changed are again what they were before. `by` is the act that takes them back.
/// Refused where one was changed since.
void takeBackPlans(Database& database, base::ActId act, base::ActId by);

/// `m.id, …` of `tested_maximum m`; read by testedMaximumOf.
[[nodiscard]] const QString& testedMaximumColumns();
/// The condition of `tested_maximum m` that the row counts.
[[nodiscard]] const QString& testedMaximumCounts();
/// The test's act is the one that first wrote it.
[[nodiscard]] direction::TestedMaximum testedMaximumOf(const Statement& row);
/// Adds the row of a new test, by its act.
void insertTestedMaximum(Database& database, const direction::TestedMaximum& test);
/// As for decisions (see takeBackDecisions).
void takeBackTestedMaxima(Database& database, base::ActId act, base::ActId by);

}  // namespace chalk::store
