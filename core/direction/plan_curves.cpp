#include "core/direction/plan_curves.h"

#include "core/base/enum_keys.h"

#include <algorithm>

namespace chalk::direction {

namespace {

using Counts = std::pair<MuscleGroup, int>;
using enum MuscleGroup;

constexpr std::array<std::string_view, 9> kMuscleKeys{"quadriceps", "hamstrings", "glutes", "chest", "back", "shoulders", "biceps", "triceps", "trunk"};

constexpr std::array kSquat{Counts{Quadriceps, 2}, Counts{Glutes, 1}};
constexpr std::array kHinge{Counts{Hamstrings, 2}, Counts{Glutes, 2}, Counts{Back, 1}};
constexpr std::array kHorizontalPush{Counts{Chest, 2}, Counts{Shoulders, 1}, Counts{Triceps, 1}};
constexpr std::array kPull{Counts{Back, 2}, Counts{Biceps, 1}};
constexpr std::array kVerticalPush{Counts{Shoulders, 2}, Counts{Triceps, 1}};
constexpr std::array kSingleLeg{Counts{Quadriceps, 2}, Counts{Glutes, 2}};
constexpr std::array kCarryBrace{Counts{Trunk, 2}};

constexpr double kWholeShare = 1000;

/// Repetitions, and repetitions times their share, of the lifts that are asked for.
struct RepsByShare {
    int reps = 0;
    double weighed = 0;

    void add(const PlannedWork& work)
    {
        const int done = work.isTest ? 1 : work.scheme.sets.value() * work.scheme.reps.value();
        reps += done;
        weighed += done * (work.isTest ? 1.0 : work.scheme.share.value() / kWholeShare);
    }
};

WeekCurve curveOf(const PlanWeek& week, const std::vector<PlannedLift>& lifts)
{
    WeekCurve curve{week.monday, week.phase, week.kind, 0, 0, 0};
    RepsByShare main;
    RepsByShare all;
    for (std::size_t i = 0; i < week.work.size(); ++i) {
        for (const PlannedWork& work : week.work[i]) {
            all.add(work);
            if (lifts[i].role == LiftRole::Main) {
                main.add(work);
            }
            curve.hardSets += work.isTest ? 1 : work.scheme.sets.value();
        }
    }
    curve.reps = all.reps;
    const RepsByShare& asked = main.reps > 0 ? main : all;
    curve.intensity = asked.reps > 0 ? asked.weighed / asked.reps : 0;
    return curve;
}

}  // namespace

std::vector<WeekCurve> curvesOf(const BlockPlan& plan)
{
    std::vector<WeekCurve> curves;
    std::transform(plan.weeks.begin(), plan.weeks.end(), std::back_inserter(curves),
                   [&](const PlanWeek& week) { return curveOf(week, plan.wishes.lifts); });
    return curves;
}

std::vector<ZoneTotal> totalsOf(const PlannedWork& work)
{
    const std::array session{ZoneWork{work.scheme.share, work.scheme.sets, work.scheme.reps}};
    return zoneTotals(session);
}

std::vector<PlanDeparture> departuresOf(const BlockPlan& plan)
{
    std::vector<PlanDeparture> found;
    for (std::size_t w = 0; w < plan.weeks.size(); ++w) {
        const PlanWeek& week = plan.weeks[w];
        for (std::size_t l = 0; week.kind == WeekKind::Work && l < week.work.size(); ++l) {
            for (std::size_t e = 0; e < week.work[l].size(); ++e) {
                for (const Departure& departure : departuresOf(week.work[l][e].scheme, week.work[l][e].aim)) {
                    found.push_back({w, l, e, departure});
                }
            }
        }
    }
    return found;
}

std::span<const std::pair<MuscleGroup, int>> musclesOf(lifts::Pattern pattern)
{
    switch (pattern) {
    case lifts::Pattern::Squat: return kSquat;
    case lifts::Pattern::Hinge: return kHinge;
    case lifts::Pattern::HorizontalPush: return kHorizontalPush;
    case lifts::Pattern::HorizontalPull:
    case lifts::Pattern::VerticalPull: return kPull;
    case lifts::Pattern::VerticalPush: return kVerticalPush;
    case lifts::Pattern::SingleLeg: return kSingleLeg;
    case lifts::Pattern::CarryBrace: return kCarryBrace;
    }
    return {};
}

std::map<MuscleGroup, int> muscleHalfSets(const PlanWeek& week, std::span<const lifts::Pattern> patterns)
{
    std::map<MuscleGroup, int> halves;
    for (std::size_t i = 0; i < week.work.size(); ++i) {
        for (const PlannedWork& work : week.work[i]) {
            for (const auto& [group, half] : musclesOf(patterns[i])) {
                halves[group] += half * work.scheme.sets.value();
            }
        }
    }
    return halves;
}

std::string_view keyOf(MuscleGroup group)
{
    return base::keyIn(kMuscleKeys, group);
}

}  // namespace chalk::direction
