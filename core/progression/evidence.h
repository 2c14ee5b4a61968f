#pragma once

#include "core/progression/lift_machine.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace chalk::progression {

/// One event of a lift's log as the machine judged it. The body is not owned and must outlive the call.
struct JudgedEvent {
    base::Date date;
    const EventBody* body = nullptr;
    RuleList rules;
    Stage stageAfter = Stage::Pattern;
};

/// One thing that is looked at before a lift goes on. What `value` and `needed` count stands beside each.
enum class CheckKind : std::uint8_t {
    Released,       ///< the coach lets the lift off its hold; value: the pain that put it there
    Rescreened,     ///< a rehearsal after a long layoff
    LighterOption,  ///< the lightest load is too heavy: an easier exercise or lighter equipment
    Criterion,      ///< a point of the movement, by `key`
    PauseTop,       ///< milliseconds held and needed; value -1 where it was not tried
    PauseMiddle,
    PauseBottom,
    ControlReps,  ///< repetitions
    PainFree,     ///< value: the pain of the last record; count: records in a row without any
    Steady,       ///< count: records in a row with every set steady
    RirRecorded,
    FullSets,       ///< at least base sets, none below the rep floor; value: sets at the working load; needed: base sets
    ReserveKept,    ///< value: the lowest RIR of the counted sets; needed: the reserve
    BridgeCrossed,  ///< value: reps made on the near side; needed: the rep goal; `load`: the far side
    SetsReached,    ///< value: sets prescribed now; needed: the top number of sets
    RestReached,    ///< value: rest prescribed now; needed: the shortest one, seconds
    Target          ///< one record that meets Evidence::target, always the last check; value: what the last record came
                    ///< to, reps with the reserve kept (Base load: its capacity), or -1; needed: the fewest taken
};

/// A check and the fact behind it. Facts are taken from the last record since the lift entered its stage (or was swapped);
/// the two counts run over all records that were passed.
struct Check {
    CheckKind kind = CheckKind::Target;
    bool isMet = false;
    std::optional<base::Date> date;  ///< of the record that the fact is from; nothing where there is none yet
    int value = 0;
    int needed = 0;
    int count = 0;
    std::string key;
    base::Load load;
};

/// The record that takes a lift to the next stage once every other check is met: no pain, every set steady, and these
/// numbers. Stages 1 and 2 are rehearsed and use `repsLow` alone.
struct EvidenceTarget {
    base::Load load;
    base::Sets sets;
    base::Reps repsLow;        ///< what is aimed at, with the reserve kept
    base::Reps repsHigh;       ///< the same as repsLow where it is one number
    base::Reps repsLeast;      ///< the fewest reps, with the reserve kept, that are taken
    bool isOpenAbove = false;  ///< more than repsHigh leads on as well
    int reserve = 0;
    std::optional<base::Reps> capacityMin = {};  ///< Base load: reps and RIR of the hardest set together
    std::optional<base::Reps> capacityMax = {};
    std::optional<base::Seconds> rest = {};  ///< Rest cut: the longest between sets, the tolerance left aside
};

/// How far a stage has come. What is counted is the stage's own lever.
struct EvidenceProgress {
    enum class Unit : std::uint8_t { Criteria, Pauses, Checks, Records, Reps, Sets, RestSteps };
    Unit unit = Unit::Records;
    int done = 0;
    int needed = 0;  ///< 0 where nothing can be counted yet
};

/// What happens when exposures fall short as often as the policy allows.
struct Shortfall {
    enum class End : std::uint8_t {
        SettleLoad,      ///< on to Rep build with `load`, the last one made
        CutLoad,         ///< the load is cut and the stage starts over
        MoveOnWithReps,  ///< on to Set build with `reps`
        MoveOnWithSets,  ///< on to Rest cut with `sets`
        RestFound        ///< on to the next cycle
    };
    End end = End::CutLoad;
    int misses = 0;
    int limit = 0;
    base::Load load;
    base::Reps reps;
    base::Sets sets;
};

/// What still stands between a lift and its next stage, on one day.
struct Evidence {
    Stage stage = Stage::Pattern;
    bool isPlanLed = false;                ///< it follows a plan of weeks: no record leads to a stage, results move the single, and nothing below is asked for
    std::optional<Stage> next;             ///< nothing where no record can lead on
    std::optional<EvidenceTarget> target;  ///< nothing while the lift is on hold
    EvidenceProgress progress;
    std::vector<Check> checks;            ///< in the order in which they are met; Target last
    std::optional<Shortfall> shortfall;   ///< stages 4 to 7
    std::optional<Prescription> arrival;  ///< the first prescription after that, if all goes to plan
};

/// The evidence of a lift on `day`, no earlier than its last event, layoffs up to that day applied. `history` is the lift's
/// judged events, oldest first. A tail of it will do where it reaches back beyond the event that began the present stage. In a lighter week
/// it is about the records after that, which are judged again.
[[nodiscard]] Evidence evidenceFor(const LiftMachine& machine, std::span<const JudgedEvent> history, base::Date day);

/// The check of a kind; nothing where it is not asked for.
[[nodiscard]] const Check* checkOf(const Evidence& evidence, CheckKind kind);

/// Reps as the lift's measure counts them: reps, seconds or metres.
[[nodiscard]] int amountFor(base::Reps reps, lifts::Measure measure, const Policy& policy);

}  // namespace chalk::progression
