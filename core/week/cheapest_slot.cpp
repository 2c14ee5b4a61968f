#include "core/week/cheapest_slot.h"

#include "core/week/plan_cost.h"
#include "core/week/slot_cost.h"

#include <algorithm>
#include <vector>

namespace chalk::week {

long placedCost(const WeekProblem& problem, const WeekPlan& plan)
{
    const Objective objective = objectiveOf(problem, plan);
    return objective.total() - objective.unplaced;
}

std::optional<PricedSlot> cheapestSlot(const WeekProblem& problem, const SlotTable& table, std::size_t session, const SlotPrice& priceOf)
{
    const SessionWish& wish = problem.sessions[session];
    std::vector<PricedSlot> fitting;
    for (const Slot& slot : table.candidatesOf(session)) {
        const std::optional<int> price = wish.isLocked && wish.standing != slot ? std::nullopt : priceOf(slot);
        if (price && table.fits(session, slot)) {
            fitting.push_back({slot, slotCost(problem, wish, slot) + *price});
        }
    }
    std::stable_sort(fitting.begin(), fitting.end(), [](const PricedSlot& a, const PricedSlot& b) { return a.cost < b.cost; });

    // By how much a session can make a coach's day cheaper at most: it fills a gap.
    const long mostSaved = problem.weights.gapPer15 * ((wish.minutes + problem.grid + 14) / 15);
    const long before = placedCost(problem, table.plan());
    WeekPlan plan = table.plan();
    std::optional<PricedSlot> best;
    for (const PricedSlot& one : fitting) {
        if (best && one.cost - mostSaved >= best->cost) {
            break;
        }
        plan[session] = one.slot;
        const long alone = slotCost(problem, wish, one.slot);
        const PricedSlot priced{one.slot, placedCost(problem, plan) - before + one.cost - alone};
        if (!best || priced.cost < best->cost) {
            best = priced;
        }
    }
    return best;
}

}  // namespace chalk::week
