#pragma once

#include "core/base/id.h"
#include "core/progression/lift_machine.h"
#include "core/sessions/session.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace chalk::store {

/// What a person did. Undo takes an act back, Redo an undo. Report: what is said once of a session. Decide: at a
/// check-in, with the event of the choice. Plan: of weeks, begun, changed or ended. Test: of a maximum. Import: of a whole
/// studio, or of people. Merge: two clients become one.
enum class ActKind : std::uint8_t { Import, Record, Release, Set, Swap, Correct, TakeBack, Session, Undo, Redo, Report, Decide, Plan, Test, Merge };

[[nodiscard]] std::string_view keyOf(ActKind kind);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<ActKind> actKindOf(std::string_view key);

/// What became of a lift: the rules that fired, and what was due before and is due after, on the day of the last event.
struct LiftOutcome {
    base::LiftId lift;
    progression::RuleList rules;          ///< of what was recorded or corrected; none where it was taken back
    progression::Prescription before;
    progression::Prescription after;
    progression::LiftState stateBefore;
    progression::LiftState stateAfter;
};

/// A decision on another entry that a correction, or an entry logged late, made different.
struct ChangedDecision {
    base::LiftId lift;
    base::EventId entry;  ///< its first version
    base::Date date;
    progression::RuleList before;
    progression::RuleList after;
    progression::Prescription dueBefore;  ///< what it led to
    progression::Prescription dueAfter;
};

/// What an act did: for undo, and to tell the person.
struct ActOutcome {
    base::ActId act;
    base::ClientId client;                 ///< none where it was about several
    std::vector<LiftOutcome> lifts;
    std::vector<ChangedDecision> changed;  ///< by date
};

}  // namespace chalk::store
