#include "core/planning/starting_plan.h"

#include "core/base/enum_keys.h"
#include "core/planning/lift_choice.h"

#include <algorithm>
#include <tuple>

namespace chalk::planning {

namespace {

using lifts::Pattern;

constexpr std::array<std::string_view, 4> kGapKeys{"on_hold", "nothing_allowed", "not_in_template", "no_day"};
constexpr std::array<std::string_view, 4> kExerciseReasonKeys{"first_choice", "next_choice", "nearest_fit", "unloaded"};
constexpr std::array<std::string_view, 5> kRehearseReasonKeys{"none", "not_screened", "pattern_open", "control_open", "load_blocked"};
constexpr std::array<std::string_view, 4> kLoadReasonKeys{"none", "lightest", "start_load", "nearest_under_start"};

/// Large to small: how much of the body a pattern takes. Large before small, several joints before one: ACSM position stand (Ratamess
/// and others 2009, Med Sci Sports Exerc 41:687-708); the classes are common practice.
int sizeRankOf(Pattern pattern)
{
    switch (pattern) {
    case Pattern::Squat:
    case Pattern::Hinge:
        return 0;
    case Pattern::SingleLeg:
        return 1;
    case Pattern::HorizontalPush:
    case Pattern::HorizontalPull:
        return 2;
    case Pattern::VerticalPush:
    case Pattern::VerticalPull:
        return 3;
    case Pattern::CarryBrace:
        break;
    }
    return 4;
}

bool isTrainedIn(const PlanTemplate& plan, std::size_t session, Pattern pattern)
{
    const auto& patterns = plan.sessions[session].patterns;
    return std::find(patterns.begin(), patterns.end(), pattern) != patterns.end();
}

/// Why no session of the week trains the pattern; nothing where one does.
std::optional<GapReason> absenceOf(Pattern pattern, const PlanTemplate& plan, const WeekOfSessions& week)
{
    const bool isPlaced = std::any_of(week.slots.begin(), week.slots.end(), [&](const WeekSlot& slot) { return isTrainedIn(plan, slot.session, pattern); });
    if (isPlaced) {
        return std::nullopt;
    }
    const bool isUnplaced = std::any_of(week.unplaced.begin(), week.unplaced.end(), [&](std::size_t session) { return isTrainedIn(plan, session, pattern); });
    return isUnplaced ? GapReason::NoDay : GapReason::NotInTemplate;
}

/// The patterns of one session that have a lift, in the order in which they are done.
std::vector<Pattern> orderedPatterns(const TemplateSession& session, bool isOrderKept, const StartingPlan& plan, const lifts::Catalogue& catalogue)
{
    std::vector<Pattern> patterns;
    std::copy_if(session.patterns.begin(), session.patterns.end(), std::back_inserter(patterns), [&plan](Pattern pattern) { return plan.find(pattern) != nullptr; });
    if (isOrderKept) {
        return patterns;
    }
    const auto rankOf = [&](Pattern pattern) {
        const PlannedLift& lift = *plan.find(pattern);
        const bool isWork = lift.kind == PlannedKind::Work;
        const int rung = catalogue.find(isWork ? lift.exerciseKey : lift.rehearsalKey)->rung;
        return std::tuple(sizeRankOf(pattern), isWork ? 0 : 1, -rung);
    };
    std::stable_sort(patterns.begin(), patterns.end(), [&rankOf](Pattern a, Pattern b) { return rankOf(a) < rankOf(b); });
    return patterns;
}

void addSessions(StartingPlan& plan, const PlanTemplate& from, base::Date firstDay, const lifts::Catalogue& catalogue)
{
    for (int day = 0; day < kPlanDays; ++day) {
        const base::Date date = firstDay + day;
        for (const WeekSlot& slot : plan.week.slots) {
            if (slot.weekday != date.weekday()) {
                continue;
            }
            PlannedSession session{date, slot.startMinute, slot.session, orderedPatterns(from.sessions[slot.session], from.isOrderKept, plan, catalogue)};
            if (!session.patterns.empty()) {
                plan.sessions.push_back(std::move(session));
            }
        }
    }
}

}  // namespace

const PlannedLift* StartingPlan::find(Pattern pattern) const
{
    const auto found = std::find_if(lifts.begin(), lifts.end(), [pattern](const PlannedLift& lift) { return lift.pattern == pattern; });
    return found == lifts.end() ? nullptr : &*found;
}

StartingPlan startingPlanOf(const PlanTemplate& plan, const PlanRequest& request, const lifts::Catalogue& catalogue)
{
    return planOn(plan, weekOf(plan, request.hours, request.firstDay.weekday()), request.firstDay,
                  [&](Pattern pattern) { return plannedLiftOf(pattern, plan, request, catalogue); }, catalogue);
}

StartingPlan planOn(const PlanTemplate& plan, WeekOfSessions week, base::Date firstDay, const LiftSource& liftOf, const lifts::Catalogue& catalogue)
{
    StartingPlan suggestion;
    suggestion.week = std::move(week);
    for (const Pattern pattern : lifts::kPatterns) {
        if (const auto absence = absenceOf(pattern, plan, suggestion.week)) {
            suggestion.gaps.push_back({pattern, *absence, {}});
            continue;
        }
        auto lift = liftOf(pattern);
        if (lift) {
            suggestion.lifts.push_back(*std::move(lift));
        } else {
            suggestion.gaps.push_back(std::move(lift.error()));
        }
    }
    addSessions(suggestion, plan, firstDay, catalogue);
    return suggestion;
}

std::vector<const lifts::Exercise*> allowedExercises(Pattern pattern, const PlanRequest& request, const lifts::Catalogue& catalogue, bool isUnloaded)
{
    std::vector<const lifts::Exercise*> allowed = catalogue.of(pattern);
    std::erase_if(allowed, [&](const lifts::Exercise* exercise) {
        return passOf(*exercise, request).has_value() || (isUnloaded && exercise->equipment != lifts::EquipmentKind::None);
    });
    return allowed;
}

std::string_view keyOf(GapReason reason)
{
    return base::keyIn(kGapKeys, reason);
}

std::string_view keyOf(ExerciseReason reason)
{
    return base::keyIn(kExerciseReasonKeys, reason);
}

std::string_view keyOf(RehearseReason reason)
{
    return base::keyIn(kRehearseReasonKeys, reason);
}

std::string_view keyOf(FirstLoadReason reason)
{
    return base::keyIn(kLoadReasonKeys, reason);
}

}  // namespace chalk::planning
