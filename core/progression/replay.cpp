#include "core/progression/lift_machine.h"

#include <algorithm>
#include <numeric>

namespace chalk::progression {

namespace {

/// The indexes of the events by date; those of one day keep their order.
std::vector<std::size_t> orderOf(std::span<const Event> events)
{
    std::vector<std::size_t> order(events.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [events](std::size_t a, std::size_t b) { return events[a].date < events[b].date; });
    return order;
}

}  // namespace

tl::expected<std::vector<Decision>, ReplayFault> replay(LiftMachine& machine, std::span<const Event> events)
{
    std::vector<Decision> decisions;
    decisions.reserve(events.size());
    for (const std::size_t index : orderOf(events)) {
        const Event& event = events[index];
        if (auto fault = machine.faultOf(event.body)) {
            return tl::make_unexpected(ReplayFault{index, *std::move(fault)});
        }
        const RuleList rules = machine.apply(event.date, event.body);
        decisions.push_back({index, event.date, rules, machine.prescriptionOn(event.date)});
    }
    return decisions;
}

}  // namespace chalk::progression
