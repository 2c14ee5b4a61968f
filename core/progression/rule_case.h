#pragma once

#include "core/progression/event.h"
#include "core/progression/exposure_facts.h"
#include "core/progression/lift_state.h"
#include "core/progression/load_steps.h"

#include <span>

namespace chalk::progression {

/// What a rule may read and write while one event is judged.
struct RuleCase {
    const Policy& policy;
    const LoadSteps& steps;
    LiftState& state;
    RuleList& fired;
    const Rehearsal* rehearsal = nullptr;  ///< while a rehearsal is judged
    int pain = 0;
    ExposureFacts facts;                   ///< while an exposure is judged
    bool isLighter = false;                ///< in a lighter week
};

/// One line of a table of rules: the first whose `when` holds decides the event. `then` may name rules that follow.
struct RuleRow {
    Rule rule;
    bool (*when)(const RuleCase&);
    void (*then)(RuleCase&);
};

/// Fires the first row whose condition holds, and names it; false where none does.
bool fireFirst(std::span<const RuleRow> table, RuleCase& c);

// The tables, in the order of the specification.
[[nodiscard]] std::span<const RuleRow> exposureRules();         ///< P-3 P-1 V-1 K-3 [P-2 D-2 in a lighter week] C-2 C-1 P-2 C-3
[[nodiscard]] std::span<const RuleRow> rehearsalRules();        ///< P-3 P-1 U-3 U-2 U-1 K-2 K-1
[[nodiscard]] std::span<const RuleRow> baseLoadRules();         ///< B-1 B-2 B-4 B-3 B-6 B-7 B-5
[[nodiscard]] std::span<const RuleRow> loadBuildRules();        ///< A-2 L-1 L-7 L-6 L-8 L-2 L-4 L-5 L-3
[[nodiscard]] std::span<const RuleRow> repBuildRules();         ///< A-2 R-5 R-1 R-2 R-4 R-3
[[nodiscard]] std::span<const RuleRow> setBuildRules();         ///< S-1 S-2 S-4 S-3
[[nodiscard]] std::span<const RuleRow> restCutRules();          ///< T-1 T-2 T-4 T-3
[[nodiscard]] std::span<const RuleRow> stageRules(Stage stage); ///< of a loaded stage; none for the others

// What tables share.
inline void keepAll(RuleCase&) {}
[[nodiscard]] bool always(const RuleCase& c);
/// Fewer counted sets than the base sets.
[[nodiscard]] bool isIncomplete(const RuleCase& c);
/// Whether one more miss reaches the limit.
[[nodiscard]] bool isMissLast(const RuleCase& c);
/// A miss at a held load.
void missHeld(RuleCase& c);
/// Cuts the held load, clears the misses and flags the lift as stalled.
void backOffHeld(RuleCase& c);
/// To another stage, with the misses cleared.
void enterStage(RuleCase& c, Stage stage);
/// To Rep build at `load` with `best` reps already made there.
void enterRepBuild(RuleCase& c, base::Load load, int best);
/// Makes the load of Load build `load`; another load than the present one ends a bridge.
void setBuildLoad(RuleCase& c, base::Load load);
/// The load held in stages 5 to 7 becomes the working load where that was heavier: the coach's choice on the floor.
void takeHeavierLoad(RuleCase& c);
/// Whether all sets prescribed were made at the held load, inside the tolerance in reps (Set build, Rest cut).
[[nodiscard]] bool areSetsMade(const RuleCase& c, base::Sets wanted);
/// Load build's step up from w after a made exposure of `a` reps: plain, a bridge (L-6, L-7) or the equipment limit (L-8).
/// Names the bridge's or the limit's rule.
void stepUpFrom(RuleCase& c, base::Load w, int a);
/// Round again: the next cycle from the held load.
void startNextCycle(RuleCase& c);

}  // namespace chalk::progression
