#pragma once

#include "core/week/slot_table.h"

#include <cstddef>
#include <functional>
#include <optional>

namespace chalk::week {

struct PricedSlot {
    Slot slot;
    long cost = 0;  ///< by which the plan costs more with the session there, leaving it over not counted, and its price

    bool operator==(const PricedSlot&) const = default;
};

/// What a slot counts on top of what it costs, 0 or more; nothing where it is out of the question.
using SlotPrice = std::function<std::optional<int>(const Slot&)>;

/// The cheapest slot where a session fits beside all the others, which must be left over in the table; the first of the cheapest in the order of
/// the candidates. Nothing where it fits nowhere.
[[nodiscard]] std::optional<PricedSlot> cheapestSlot(const WeekProblem& problem, const SlotTable& table, std::size_t session, const SlotPrice& priceOf);

/// What the plan of a table costs, left-over sessions not counted.
[[nodiscard]] long placedCost(const WeekProblem& problem, const WeekPlan& plan);

}  // namespace chalk::week
