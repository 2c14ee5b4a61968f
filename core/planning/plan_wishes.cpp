#include "core/planning/plan_wishes.h"

#include <algorithm>

namespace chalk::planning {

PlanTemplate withWishes(PlanTemplate plan, const PlanDraft& draft, const lifts::Catalogue& catalogue)
{
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const LiftWish& wish = draft.of(pattern);
        if (wish.isLeftOut) {
            for (TemplateSession& session : plan.sessions) {
                std::erase(session.patterns, pattern);
            }
        }
        const lifts::Exercise* wanted = catalogue.find(wish.exerciseKey);
        if (wanted == nullptr || wanted->pattern != pattern) {
            continue;
        }
        TemplateExercises& own = plan.exercises[static_cast<std::size_t>(pattern)];
        auto& list = wanted->equipment == lifts::EquipmentKind::None ? own.rehearsed : own.loaded;
        std::erase(list, wish.exerciseKey);
        list.insert(list.begin(), wish.exerciseKey);
    }
    std::erase_if(plan.sessions, [](const TemplateSession& session) { return session.patterns.empty(); });
    return plan;
}

PlanRequest withWishes(PlanRequest request, const PlanDraft& draft)
{
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const LiftWish& wish = draft.of(pattern);
        PatternStanding& standing = request.standings[static_cast<std::size_t>(pattern)];
        if (wish.start) {
            standing.state = progression::StartState::Starts;
            standing.stage = wish.start->stage;
        }
        if (wish.firstLoad) {
            standing.startLoad = wish.firstLoad;
        }
    }
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        // Of two of one kind the first is taken: what is wanted goes to the front.
        const auto wanted = std::find_if(request.equipment.begin(), request.equipment.end(),
                                         [&](const EquipmentOnHand& one) { return !one.key.empty() && one.key == draft.of(pattern).equipmentKey; });
        if (wanted != request.equipment.end()) {
            std::rotate(request.equipment.begin(), wanted, wanted + 1);
        }
    }
    if (!draft.slots.empty()) {
        request.hours.free = {};
        request.hours.preferred = {};
        for (const WeekSlot& slot : draft.slots) {
            constexpr int kStep = clients::WeekHours::kSlotMinutes;
            const int end = (slot.startMinute + request.hours.sessionMinutes + kStep - 1) / kStep * kStep;
            static_cast<void>(request.hours.free.add({slot.weekday, slot.startMinute / kStep * kStep, std::min(end, 24 * 60)}));
        }
    }
    if (draft.firstDay) {
        request.firstDay = std::max(request.firstDay, *draft.firstDay);
    }
    return request;
}

}  // namespace chalk::planning
