#include "core/planning/plan_wishes.h"

#include "core/planning/lift_choice.h"

#include <algorithm>

namespace chalk::planning {

namespace {

/// The request for one pattern: with the coach's first load, and what is wanted before all else of its kind.
PlanRequest requestOf(lifts::Pattern pattern, PlanRequest request, const PlanDraft& draft)
{
    const LiftWish& wish = draft.of(pattern);
    if (wish.firstLoad) {
        request.standings[static_cast<std::size_t>(pattern)].startLoad = wish.firstLoad;
    }
    const auto wanted = std::find_if(request.equipment.begin(), request.equipment.end(),
                                     [&wish](const EquipmentOnHand& one) { return !one.key.empty() && one.key == wish.equipmentKey; });
    if (wanted != request.equipment.end()) {
        std::rotate(request.equipment.begin(), wanted, wanted + 1);
    }
    return request;
}

bool isOfTemplate(const std::vector<WeekSlot>& slots, const PlanTemplate& plan)
{
    std::vector<bool> isTaken(plan.sessions.size());
    for (const WeekSlot& slot : slots) {
        if (slot.session >= plan.sessions.size() || isTaken[slot.session]) {
            return false;
        }
        isTaken[slot.session] = true;
    }
    return !slots.empty();
}

/// The coach's days in the order of the week that begins on `firstDay`, or the suggested ones.
WeekOfSessions wishedWeek(const PlanTemplate& plan, const PlanRequest& request, const PlanDraft& draft, base::Date firstDay)
{
    if (!isOfTemplate(draft.slots, plan)) {
        return weekOf(plan, request.hours, firstDay.weekday());
    }
    WeekOfSessions week;
    week.slots = draft.slots;
    const WeekSlot begin{0, firstDay.weekday(), 0};
    std::sort(week.slots.begin(), week.slots.end(), [&begin](const WeekSlot& a, const WeekSlot& b) { return minutesBetween(begin, a) < minutesBetween(begin, b); });
    for (std::size_t session = 0; session < plan.sessions.size(); ++session) {
        if (std::none_of(week.slots.begin(), week.slots.end(), [session](const WeekSlot& slot) { return slot.session == session; })) {
            week.unplaced.push_back(session);
        }
    }
    week.tooClose = closeSessionsOf(plan, week.slots);
    for (const WeekSlot& slot : week.slots) {
        if (!isInHours(slot, request.hours)) {
            week.outsideHours.push_back(slot.session);
        }
    }
    return week;
}

/// What each session of the template trains, without what is left out; empty where nothing stays.
SessionContents wishedContents(const PlanTemplate& plan, const PlanDraft& draft)
{
    SessionContents contents = isFor(plan, draft.contents) ? draft.contents : contentsOf(plan);
    for (auto& patterns : contents) {
        std::erase_if(patterns, [&draft](lifts::Pattern pattern) { return draft.of(pattern).isLeftOut; });
    }
    return contents;
}

/// Makes a wanted exercise the first choice of its pattern.
void putWantedFirst(PlanTemplate& plan, lifts::Pattern pattern, const std::string& exerciseKey, const lifts::Catalogue& catalogue)
{
    const lifts::Exercise* wanted = catalogue.find(exerciseKey);
    if (wanted == nullptr || wanted->pattern != pattern) {
        return;
    }
    TemplateExercises& own = plan.exercises[static_cast<std::size_t>(pattern)];
    auto& list = wanted->equipment == lifts::EquipmentKind::None ? own.rehearsed : own.loaded;
    std::erase(list, exerciseKey);
    list.insert(list.begin(), exerciseKey);
}

}  // namespace

std::vector<std::size_t> keptSessions(const PlanTemplate& plan, const PlanDraft& draft)
{
    const SessionContents contents = wishedContents(plan, draft);
    std::vector<std::size_t> kept;
    for (std::size_t i = 0; i < contents.size(); ++i) {
        if (!contents[i].empty()) {
            kept.push_back(i);
        }
    }
    return kept;
}

PlanTemplate withWishes(PlanTemplate plan, const PlanDraft& draft, const lifts::Catalogue& catalogue)
{
    const SessionContents contents = wishedContents(plan, draft);
    plan.isOrderKept = plan.isOrderKept || isFor(plan, draft.contents);
    std::vector<TemplateSession> kept;
    for (const std::size_t session : keptSessions(plan, draft)) {
        kept.push_back({plan.sessions[session].name, contents[session]});
    }
    plan.sessions = std::move(kept);
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        putWantedFirst(plan, pattern, draft.of(pattern).exerciseKey, catalogue);
    }
    return plan;
}

std::array<PatternStanding, lifts::kPatterns.size()> standingsOf(const std::array<progression::PatternStart, lifts::kPatterns.size()>& starts, const PlanDraft& draft)
{
    std::array<PatternStanding, lifts::kPatterns.size()> standings;
    for (const progression::PatternStart& start : starts) {
        PatternStanding& standing = standings[static_cast<std::size_t>(start.pattern)];
        standing.state = start.state;
        standing.stage = start.unmetNeeds.empty() ? start.stage : std::min(start.stage, progression::Stage::Control);
        const auto& wish = draft.of(start.pattern).start;
        if (const auto choice = wish ? progression::chosenStartOf(start, *wish) : tl::make_unexpected(progression::ChoiceFault::NoStartStage)) {
            standing.state = progression::StartState::Starts;
            standing.stage = choice->stage;
        }
    }
    return standings;
}

base::Date firstDayOf(const PlanRequest& request, const PlanDraft& draft)
{
    return std::max(request.firstDay, draft.firstDay.value_or(request.firstDay));
}

StartingPlan wishedPlanOf(const PlanTemplate& plan, const PlanRequest& request, const PlanDraft& draft, const lifts::Catalogue& catalogue)
{
    const PlanTemplate laid = withWishes(plan, draft, catalogue);
    const base::Date firstDay = firstDayOf(request, draft);
    const auto liftOf = [&](lifts::Pattern pattern) { return plannedLiftOf(pattern, laid, requestOf(pattern, request, draft), catalogue); };
    return planOn(laid, wishedWeek(laid, request, draft, firstDay), firstDay, liftOf, catalogue);
}

}  // namespace chalk::planning
