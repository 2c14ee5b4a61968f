#include "core/week/left_over.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <limits>

namespace chalk::week {

namespace {

LeftOver countBlocks(const WeekProblem& problem, const SlotTable& table, std::size_t session)
{
    LeftOver left;
    left.session = session;
    std::array<BlockCount, kSlotBlockCount> counts;
    std::array<int, kSlotBlockCount> nearest{};
    int nearestFree = 0;
    for (const Slot& slot : table.candidatesOf(session)) {
        ++left.candidates;
        const int away = minutesFromWanted(problem, session, slot);
        const std::optional<BlockedSlot> blocked = table.blockOf(session, slot);
        if (!blocked) {
            if (left.free++ == 0 || away < nearestFree) {
                nearestFree = away;
                left.nearestFree = slot;
            }
            continue;
        }
        const auto rule = static_cast<std::size_t>(blocked->block);
        if (counts[rule].count++ == 0 || away < nearest[rule]) {
            nearest[rule] = away;
            counts[rule].block = blocked->block;
            counts[rule].nearest = slot;
            counts[rule].example = *blocked;
        }
    }
    std::copy_if(counts.begin(), counts.end(), std::back_inserter(left.blocks), [](const BlockCount& one) { return one.count > 0; });
    return left;
}

}  // namespace

int LeftOver::countOf(SlotBlock block) const
{
    const auto found = std::find_if(blocks.begin(), blocks.end(), [&](const BlockCount& one) { return one.block == block; });
    return found == blocks.end() ? 0 : found->count;
}

int minutesFromWanted(const WeekProblem& problem, std::size_t session, const Slot& slot)
{
    const SessionWish& wish = problem.sessions[session];
    if (wish.standing) {
        return std::abs(slot.start - wish.standing->start);
    }
    const std::vector<DaySpan>& preferred = problem.clients[wish.client].preferred;
    int away = preferred.empty() ? slot.start : std::numeric_limits<int>::max();
    for (const DaySpan& span : preferred) {
        const int midnight = span.day * kDayMinutes;
        away = std::min(away, std::max({0, midnight + span.from - slot.start, slot.start - midnight - span.to}));
    }
    return away;
}

LeftOver leftOverOf(const WeekProblem& problem, const WeekPlan& plan, std::size_t session)
{
    SlotTable table(problem, plan);
    table.remove(session);
    return countBlocks(problem, table, session);
}

std::vector<LeftOver> allLeftOver(const WeekProblem& problem, const WeekPlan& plan)
{
    const SlotTable table(problem, plan);
    std::vector<LeftOver> all;
    for (std::size_t session = 0; session < problem.sessions.size(); ++session) {
        if (!table.plan()[session]) {
            all.push_back(countBlocks(problem, table, session));
        }
    }
    return all;
}

}  // namespace chalk::week
