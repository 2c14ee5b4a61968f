#pragma once

#include "core/base/date.h"
#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/lifts/equipment.h"
#include "core/lifts/pattern.h"
#include "core/progression/block_run.h"
#include "core/progression/policy.h"
#include "core/progression/rule.h"
#include "core/progression/stage.h"

#include <optional>
#include <string>

namespace chalk::progression {

/// What a lift is done with; a swap replaces it.
struct Kit {
    lifts::Equipment equipment;
    base::Milli bodyShare;  ///< 0 to 1000
    lifts::Measure measure = lifts::Measure::Reps;
    std::optional<base::Load> startLoad;
    std::string exerciseKey;  ///< of the catalogue; no rule reads it
    int pieces = 1;           ///< 2 where a pair is held, and the load is that of one; no rule reads it

    bool operator==(const Kit&) const = default;
};

/// Everything about a lift that is fixed before its first event.
struct LiftSetup {
    base::MassUnit unit = base::MassUnit::Kilogram;
    lifts::Region region = lifts::Region::Lower;
    std::optional<base::Load> bodyMass;  ///< in `unit`; required where a body share is above 0
    Kit kit;
    Stage startStage = Stage::Pattern;   ///< Pattern, Control or BaseLoad
    Policy policy;

    bool operator==(const LiftSetup&) const = default;
};

/// Where a lift stands: all that the rules read and write, and nothing that can be worked out from it.
struct LiftState {
    Stage stage = Stage::Pattern;
    int cycle = 1;
    std::optional<base::Load> load;            ///< of the next exposure, or the held one; nothing before the first load
    bool isOnHold = false;
    int misses = 0;
    base::Reps best;                           ///< Rep build
    std::optional<base::Load> lastMade;        ///< Load build
    std::optional<base::Reps> bridgeTarget;    ///< Load build, while a bridge is being crossed
    std::optional<base::Reps> holdReps;        ///< Set build, Rest cut
    std::optional<base::Sets> sets;            ///< Set build: the sets prescribed, k
    std::optional<base::Sets> holdSets;        ///< Rest cut
    std::optional<base::Seconds> rest;         ///< Rest cut: the rest prescribed
    std::optional<Stage> returnStage;          ///< where Control leads back to
    bool isReturnCut = false;                  ///< a layoff cut the load already, so the return does not
    bool isPauseAsked = false;                 ///< a C-1 still stands
    Flags flags;
    std::optional<base::Date> lastWork;        ///< the last exposure with a working set
    bool isGapDealtWith = false;               ///< the present gap was met by an event already
    std::optional<base::Date> lighterUntil;    ///< the last day of a lighter week that no record came after

    std::optional<BlockRun> block;             ///< the weeks that it follows

    bool operator==(const LiftState&) const = default;
};

enum class PrescriptionKind : std::uint8_t { Rehearse, Work, Hold };

/// Which number moves in a stage; the others are held.
enum class Lever : std::uint8_t { Movement, Pauses, FirstLoad, Load, Reps, Sets, Rest };

[[nodiscard]] Lever leverOf(Stage stage);

/// Which week of a block the numbers are of.
struct BlockMark {
    int week = 1;            ///< 1 to `weeks`
    int weeks = 1;
    bool isLighter = false;
    bool isTest = false;

    bool operator==(const BlockMark&) const = default;
};

/// What a lift is to do next. For Rehearse and Hold the numbers mean nothing.
struct Prescription {
    PrescriptionKind kind = PrescriptionKind::Rehearse;
    Stage stage = Stage::Pattern;
    int cycle = 1;
    base::Load load;
    base::Sets sets;
    base::Reps repsLow;   ///< in reps whatever the measure; shown as reps × seconds or metres per rep
    base::Reps repsHigh;
    base::Seconds rest;
    int reserve = 0;
    bool isPauseAsked = false;  ///< a pause at the bottom of each rep
    Flags flags;
    RuleList rules;             ///< the G rule, or D-3, that the day itself made fire, if any
    std::optional<base::Date> lighterUntil = {};  ///< the last day of the lighter week that the numbers are of

    std::optional<BlockMark> block = {};          ///< the week of a block that the numbers are of

    /// Whether the numbers are those of a lighter week. Only work is made lighter.
    [[nodiscard]] bool isLighter() const { return lighterUntil.has_value(); }
    bool operator==(const Prescription&) const = default;
};

[[nodiscard]] std::string_view keyOf(PrescriptionKind kind);

}  // namespace chalk::progression
