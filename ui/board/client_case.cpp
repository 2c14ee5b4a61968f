#include "ui/board/client_case.h"

#include <algorithm>
#include <variant>

namespace chalk::ui::board {

namespace {

using progression::JudgedEvent;
using progression::Rule;
using progression::Stage;

std::size_t placeOf(Stage stage)
{
    return static_cast<std::size_t>(progression::numberOf(stage) - 1);
}

std::vector<JudgedEvent> judgedEventsOf(const LiftCase& lift)
{
    std::vector<JudgedEvent> events;
    events.reserve(lift.log.size());
    for (const LogEntry& entry : lift.log) {
        events.push_back({entry.date, &entry.body, entry.rules, entry.after.stage});
    }
    return events;
}

}  // namespace

void settle(LiftCase& lift, base::Date day)
{
    lift.day = day;
    lift.next = lift.machine.prescriptionOn(day);
    lift.evidence = evidenceFor(lift.machine, judgedEventsOf(lift), day);
}

const LogEntry* decidingEntryOf(const LiftCase& lift)
{
    const bool isByDay = !lift.next.rules.isEmpty();
    if (!isByDay && lift.decided.isEmpty()) {
        return nullptr;
    }
    const auto isDeciding = [&lift, isByDay](const LogEntry& entry) {
        return isByDay ? std::holds_alternative<progression::Exposure>(entry.body) && entry.date == lift.machine.state().lastWork
                       : entry.rules == lift.decided;
    };
    const auto found = std::find_if(lift.log.rbegin(), lift.log.rend(), isDeciding);
    return found == lift.log.rend() ? nullptr : &*found;
}

std::array<std::optional<base::Date>, progression::kStages.size()> reachedOn(const LiftCase& lift)
{
    std::array<std::optional<base::Date>, progression::kStages.size()> reached;
    Stage stage = lift.machine.setup().startStage;
    int cycle = 1;
    reached[placeOf(stage)] = lift.startedOn;
    for (const LogEntry& entry : lift.log) {
        if (entry.rules.has(Rule::U1)) {
            reached[placeOf(Stage::Control)] = entry.date;
        }
        if (entry.rules.has(Rule::B5)) {
            reached[placeOf(Stage::LoadBuild)] = entry.date;
        }
        if (entry.after.stage != stage || entry.after.cycle != cycle) {
            reached[placeOf(entry.after.stage)] = entry.date;
        }
        stage = entry.after.stage;
        cycle = entry.after.cycle;
    }
    return reached;
}

}  // namespace chalk::ui::board
