#include "core/direction/plan_calendar.h"

#include <algorithm>
#include <array>

namespace chalk::direction {

namespace {

constexpr int kWeekDays = 7;

/// Which of the weeks from `from` on is left out next; nothing where each phase has one week of work left.
std::optional<std::size_t> nextLeftOut(const std::vector<PlanWeek>& weeks, std::size_t from)
{
    std::array<int, 4> work{};
    for (std::size_t i = from; i < weeks.size(); ++i) {
        if (weeks[i].kind == WeekKind::Lighter) {
            return i;
        }
        work[static_cast<std::size_t>(weeks[i].phase)] += weeks[i].kind == WeekKind::Work ? 1 : 0;
    }
    const auto longest = std::max_element(work.begin(), work.end());
    if (*longest < 2) {
        return std::nullopt;
    }
    const auto phase = static_cast<Phase>(longest - work.begin());
    const auto found = std::find_if(weeks.begin() + static_cast<std::ptrdiff_t>(from), weeks.end(),
                                    [phase](const PlanWeek& w) { return w.phase == phase && w.kind == WeekKind::Work; });
    return static_cast<std::size_t>(found - weeks.begin());
}

/// Gives the weeks from `from` on the Mondays from `monday` on, those missed left out.
void layOut(std::vector<PlanWeek>& weeks, std::size_t from, base::Date monday, std::span<const base::Date> missed)
{
    for (std::size_t i = from; i < weeks.size(); ++i) {
        while (std::find(missed.begin(), missed.end(), monday) != missed.end()) {
            monday = monday + kWeekDays;
        }
        weeks[i].monday = monday;
        monday = monday + kWeekDays;
    }
}

}  // namespace

BlockPlan withMissedWeeks(const BlockPlan& plan, std::span<const base::Date> mondays, MissedWeeks way)
{
    BlockPlan changed = plan;
    auto& weeks = changed.weeks;
    const auto isMissed = [&](const PlanWeek& w) { return std::find(mondays.begin(), mondays.end(), w.monday) != mondays.end(); };
    const auto first = std::find_if(weeks.begin(), weeks.end(), isMissed);
    if (first == weeks.end()) {
        return changed;
    }
    const auto from = static_cast<std::size_t>(first - weeks.begin());
    const base::Date monday = first->monday;
    if (way == MissedWeeks::Squeeze) {
        for (auto left = std::count_if(weeks.begin(), weeks.end(), isMissed); left > 0; --left) {
            const auto leftOut = nextLeftOut(weeks, from);
            if (!leftOut) {
                break;
            }
            weeks.erase(weeks.begin() + static_cast<std::ptrdiff_t>(*leftOut));
        }
    }
    layOut(weeks, from, monday, mondays);
    return changed;
}

std::optional<std::size_t> weekOn(const BlockPlan& plan, base::Date day)
{
    const base::Date monday = day - day.weekday();
    const auto found = std::find_if(plan.weeks.begin(), plan.weeks.end(), [monday](const PlanWeek& w) { return w.monday == monday; });
    return found == plan.weeks.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - plan.weeks.begin()));
}

}  // namespace chalk::direction
