#pragma once

#include "core/base/date.h"
#include "core/lifts/pattern.h"
#include "core/store/act.h"
#include "core/store/database.h"

#include <QString>

#include <string>
#include <vector>

namespace chalk::store {

/// What goes where when two clients become one.
struct MergePlan {
    base::ClientId into;
    base::ClientId from;
    std::string intoName;
    std::string fromName;
    std::vector<lifts::Pattern> liftsMoved;   ///< only the other has them: they go over whole
    std::vector<lifts::Pattern> liftsJoined;  ///< both have them: what was done of the other's is added by date
    int sessions = 0;                         ///< that go over
    int cautions = 0;
    std::vector<std::string> filled;          ///< gaps that are filled, by field: `birth_date`, `goal`, `body_mass`, `phone`, `mail`, `notes`
    int formsThatStay = 0;                    ///< health forms, letters and decisions that stay in the withdrawn file

    bool operator==(const MergePlan&) const = default;
};

/// What a merge would do. Refused, with the reason, where it cannot be: the same client twice, sessions still to come, a plan or a test, a doctor asked and
/// loaded work blocked, a health form of a kind that the other does not have, or a lift in both in different units. Most of these go the other way round.
[[nodiscard]] Result<MergePlan> planMerge(Database& database, base::ClientId into, base::ClientId from, base::Date today);

/// Merges as planMerge says, in one act that undo takes back. The clearance and the health forms of `into` count; `from` is withdrawn.
[[nodiscard]] Result<ActOutcome> mergeClients(Database& database, base::ClientId into, base::ClientId from, const QString& atUtc, base::Date today);

}  // namespace chalk::store
