#include "core/progression/policy.h"

#include <algorithm>

namespace chalk::progression {

namespace {

using base::Milli;
using base::Reps;
using base::Seconds;
using base::Sets;

constexpr int kMostReps = 1000;
constexpr int kMostSeconds = 3600;
constexpr std::int32_t kMostStepCenti = 100'000;

struct Check {
    const char* field;
    bool isSound;
    const char* reason;
};

std::optional<PolicyFault> firstOf(std::initializer_list<Check> checks)
{
    const auto* bad = std::find_if(checks.begin(), checks.end(), [](const Check& check) { return !check.isSound; });
    if (bad == checks.end()) {
        return std::nullopt;
    }
    return PolicyFault{bad->field, bad->reason};
}

bool isWithin(int value, int low, int high)
{
    return value >= low && value <= high;
}

bool isFraction(Milli value)
{
    return value.value() > 0 && value.value() < 1000;
}

std::optional<PolicyFault> faultOfReps(const Policy& p)
{
    return firstOf({
        {"rep_floor", isWithin(p.repFloor.value(), 1, kMostReps), "must be 1 or more"},
        {"hard_reps", p.hardReps >= p.repFloor && p.hardReps.value() <= kMostReps, "must not be below rep_floor"},
        {"rep_ceiling", p.repCeiling >= p.hardReps && p.repCeiling.value() <= kMostReps, "must not be below hard_reps"},
        {"rep_goal", isWithin(p.repGoal.value(), 10, 15), "must be 10 to 15"},
        {"rep_goal", p.repGoal >= p.repCeiling, "must not be below rep_ceiling"},
        {"capacity_min", isWithin(p.capacityMin.value(), 1, kMostReps), "must be 1 or more"},
        {"capacity_max", p.capacityMax >= p.capacityMin && p.capacityMax.value() <= kMostReps, "must not be below capacity_min"},
        {"reserve", isWithin(p.reserve, 0, 10), "must be 0 to 10"},
        {"rep_tolerance", isWithin(p.repTolerance.value(), 0, kMostReps), "must be 0 or more"},
        {"control_reps", isWithin(p.controlReps.value(), 1, kMostReps), "must be 1 or more"},
        {"pause_s", isWithin(p.pauseMs, 0, 1000 * kMostSeconds), "must be 0 to 3600"},
    });
}

std::optional<PolicyFault> faultOfSets(const Policy& p)
{
    return firstOf({
        {"base_sets", isWithin(p.baseSets.value(), 1, 6), "must be 1 to 6"},
        {"top_sets", p.topSets >= p.baseSets && p.topSets.value() <= 6, "must not be below base_sets, and at most 6"},
        {"least_sets_to_pass", isWithin(p.leastSetsToPass.value(), 1, p.topSets.value()), "must be 1 to top_sets"},
        {"miss_limit", isWithin(p.missLimit, 1, 100), "must be 1 or more"},
        {"rep_miss_limit", isWithin(p.repMissLimit, 1, 100), "must be 1 or more"},
        {"pain_hold", isWithin(p.painHold, 0, 10), "must be 0 to 10"},
    });
}

std::optional<PolicyFault> faultOfRests(const Policy& p)
{
    if (p.baseRest.value() < 1 || p.baseRest.value() > kMostSeconds) {
        return PolicyFault{"base_rest_s", "must be 1 to 3600"};
    }
    if (p.restSteps.empty()) {
        return PolicyFault{"rest_steps_s", "must name at least one rest"};
    }
    Seconds above = p.baseRest;
    for (const Seconds rest : p.restSteps) {
        if (rest.value() < 0 || rest >= above) {
            return PolicyFault{"rest_steps_s", "must fall strictly and start below base_rest_s"};
        }
        above = rest;
    }
    return firstOf({{"rest_tolerance_s", isWithin(p.restTolerance.value(), 0, kMostSeconds), "must be 0 to 3600"}});
}

std::optional<PolicyFault> faultOfLoads(const Policy& p)
{
    const auto isStep = [](base::Load step) { return isWithin(step.centi(), 1, kMostStepCenti); };
    const auto& days = p.layoffDays;
    const auto& cuts = p.layoffCuts;
    return firstOf({
        {"step_upper", isStep(p.stepUpper), "must be above 0"},
        {"step_lower", isStep(p.stepLower), "must be above 0"},
        {"jump_cap", p.jumpCap.value() >= 0 && p.jumpCap.value() <= 1000, "must be 0 to 1"},
        {"back_off", isFraction(p.backOff), "must be above 0 and below 1"},
        {"layoff_days", days[0] >= 1 && days[0] < days[1] && days[1] < days[2], "must rise strictly from 1 or more"},
        {"layoff_cuts", std::all_of(cuts.begin(), cuts.end(), isFraction), "must be above 0 and below 1"},
        {"layoff_cuts", cuts[0] <= cuts[1] && cuts[1] <= cuts[2], "must not fall"},
        {"lighter_days", isWithin(p.lighterDays, 1, 28), "must be 1 to 28"},
        {"lighter_sets", isFraction(p.lighterSets), "must be above 0 and below 1"},
        {"lighter_cut", isFraction(p.lighterCut), "must be above 0 and below 1"},
        {"seconds_per_rep", isWithin(p.secondsPerRep.value(), 1, kMostSeconds), "must be 1 or more"},
        {"metres_per_rep", isWithin(p.metresPerRep.value(), 1, 1000), "must be 1 or more"},
    });
}

}  // namespace

Policy Policy::defaultsFor(base::MassUnit unit)
{
    Policy policy;
    const bool isKilogram = unit == base::MassUnit::Kilogram;
    policy.stepUpper = base::Load::fromCenti(isKilogram ? 250 : 500);
    policy.stepLower = base::Load::fromCenti(isKilogram ? 500 : 1000);
    return policy;
}

std::optional<PolicyFault> faultOf(const Policy& policy)
{
    using Group = std::optional<PolicyFault> (*)(const Policy&);
    for (const Group group : {faultOfReps, faultOfSets, faultOfRests, faultOfLoads}) {
        if (auto fault = group(policy)) {
            return fault;
        }
    }
    return std::nullopt;
}

}  // namespace chalk::progression
