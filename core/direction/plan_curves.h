#pragma once

#include "core/direction/block_plan.h"
#include "core/direction/rep_zones.h"
#include "core/lifts/pattern.h"

#include <array>
#include <map>
#include <span>
#include <vector>

namespace chalk::direction {

/// One week of a plan in numbers.
struct WeekCurve {
    base::Date monday;
    Phase phase = Phase::Base;
    WeekKind kind = WeekKind::Work;
    double intensity = 0;   ///< mean share of the single over the repetitions of the main lifts, 0 to 1; of all lifts where none is main
    int hardSets = 0;       ///< of all lifts
    int reps = 0;           ///< of all lifts

    bool operator==(const WeekCurve&) const = default;
};

/// Every week of a plan. A test counts as its single.
[[nodiscard]] std::vector<WeekCurve> curvesOf(const BlockPlan& plan);

/// The totals by zone of one exposure of a lift (see zoneTotals).
[[nodiscard]] std::vector<ZoneTotal> totalsOf(const PlannedWork& work);

/// A figure of a plan that leaves its published range, and where it stands.
struct PlanDeparture {
    std::size_t week = 0;
    std::size_t lift = 0;
    std::size_t exposure = 0;
    Departure departure;

    bool operator==(const PlanDeparture&) const = default;
};

/// All of them, by week; lighter weeks and tests are light on purpose and are not judged.
[[nodiscard]] std::vector<PlanDeparture> departuresOf(const BlockPlan& plan);

/// Muscle groups that weekly sets are counted for.
enum class MuscleGroup : std::uint8_t { Quadriceps, Hamstrings, Glutes, Chest, Back, Shoulders, Biceps, Triceps, Trunk };

inline constexpr std::array kMuscleGroups{MuscleGroup::Quadriceps, MuscleGroup::Hamstrings, MuscleGroup::Glutes,
                                          MuscleGroup::Chest,      MuscleGroup::Back,       MuscleGroup::Shoulders,
                                          MuscleGroup::Biceps,     MuscleGroup::Triceps,    MuscleGroup::Trunk};

/// Half sets of each group that one set of a movement counts as: 2 for those it is done for, 1 for those that help. Common practice: trials
/// count sets in more than one way.
[[nodiscard]] std::span<const std::pair<MuscleGroup, int>> musclesOf(lifts::Pattern pattern);

/// Half sets of each muscle group in a week; `patterns` are those of the plan's lifts, in their order.
[[nodiscard]] std::map<MuscleGroup, int> muscleHalfSets(const PlanWeek& week, std::span<const lifts::Pattern> patterns);

/// Weekly sets of a muscle group that gave more than fewer: 10 (Schoenfeld B. J. 2017, J Sports Sci 35:1073-1082: 15 studies, groups of less than
/// 5, 5 to 9 and 10 or more sets, p = .074).
inline constexpr int kManySets = 10;

[[nodiscard]] std::string_view keyOf(MuscleGroup group);

}  // namespace chalk::direction
