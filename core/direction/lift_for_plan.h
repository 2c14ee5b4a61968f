#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/tested_maximum.h"
#include "core/lifts/pattern.h"
#include "core/progression/lift_machine.h"

#include <span>
#include <string>
#include <vector>

namespace chalk::direction {

/// A single that a set spoke for on a day: effective, in the lift's unit.
struct SpokenSingle {
    base::Date date;
    base::Load load;
    bool isTested = false;
    bool isRough = false;   ///< by more than progression::kSureReps repetitions to failure

    bool operator==(const SpokenSingle&) const = default;
};

/// An estimate looks back so many days, and on the latest so many exposures of them. Common practice.
inline constexpr int kSpokenDays = 84;
inline constexpr std::size_t kSpokenMost = 3;

/// The single that the best working set of an exposure spoke for by the published chart (see progression::spokenFor), with the kit that the lift has now; a
/// rough one only where no set is sure. Nothing where no set has a reserve written down, and for holds and carries.
/// In a test (`isTest`) a set without a reserve counts as one to failure, as by rule N-2, and the single is a tested one.
[[nodiscard]] std::optional<SpokenSingle> spokenIn(base::Date date, const progression::Exposure& exposure, const progression::LiftMachine& lift,
                                                   bool isTest = false);

/// What a plan of `day` starts from: the latest test of the last kTestCountsDays; else the median of what the latest exposures of the last kSpokenDays
/// spoke for, of two the lighter one, rough ones only where none is sure. Nothing where there is neither. `spoken` is by date.
[[nodiscard]] std::optional<PlanSingle> startingSingle(std::span<const SpokenSingle> spoken, base::Date day);

/// A lift of a client when a plan is made.
struct LiftForPlan {
    base::LiftId lift;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    progression::LiftMachine machine;    ///< as it stands on the day
    std::optional<PlanSingle> single;    ///< of the plan that it follows, as results have moved it; else see startingSingle
    std::optional<base::Date> firstLoad; ///< the first exposure in a loaded stage
    bool isStalled = false;              ///< its rules flag it

    /// Whether a plan can lead it, now or once it is released: it is counted in repetitions.
    [[nodiscard]] bool canBePlanned() const { return machine.kit().measure == lifts::Measure::Reps; }
    /// Whether it would follow a plan at once: in a loaded stage, not on hold, with a single that is known.
    [[nodiscard]] bool canFollow() const;
};

/// What a lift of a movement usually is in a plan. Strength is led by squat, hinge and push; physique by every lift; movement by squat, hinge, single-leg
/// and overhead work. Common practice.
[[nodiscard]] LiftRole usualRole(Direction direction, lifts::Pattern pattern);

/// Gives every lift one day of the week, and a second one while a session holds five lifts at most: the main lifts first, in their order. Common practice.
void shareOutDays(std::vector<PlannedLift>& lifts, int sessionsAWeek);

/// The wishes that a plan is made from at first, in the direction: lifts that can be planned and were loaded once, with the usual role of their movement, for
/// kUsualWeeks from the first Monday on `day` or after it. Days are shared out by shareOutDays.
/// Without a lift that can be planned `lifts` is empty, which is a fault (see faultOf).
[[nodiscard]] PlanWishes usualWishes(Direction direction, std::span<const LiftForPlan> lifts, int sessionsAWeek, base::Date day);

/// A single for each lift of the wishes, in their order; 0 where none is known or the lift is not one of `lifts`.
[[nodiscard]] std::vector<PlanSingle> singlesFor(const PlanWishes& wishes, std::span<const LiftForPlan> lifts);

}  // namespace chalk::direction
