#pragma once

#include "core/base/load.h"
#include "core/direction/block_plan.h"

#include <optional>
#include <string>
#include <vector>

namespace chalk::direction {

/// A single that the loads of a plan are shares of.
struct PlanSingle {
    base::Load load;         ///< effective, in the lift's unit; 0 where none is known: the lift keeps to the ladder until there is one
    bool isTested = false;   ///< lifted, not estimated

    bool operator==(const PlanSingle&) const = default;
};

/// A plan that was begun with a client, as it stands.
struct ClientPlan {
    base::PlanId id;                      ///< none: not on file yet
    base::ClientId client;
    base::Date begunOn;                   ///< the day it was agreed on, not after its first week
    BlockPlan plan;
    std::vector<PlanSingle> singles;      ///< by lift, in the order of the plan's lifts: as they were when it was begun or last changed
    std::optional<base::Date> endedOn;    ///< the day that it was ended on by hand, before its last week was over
    std::string note;                     ///< of the coach, may be empty

    bool operator==(const ClientPlan&) const = default;
};

/// The Sunday of its last week, or the day before it was ended by hand.
[[nodiscard]] base::Date lastDayOf(const ClientPlan& plan);
/// Whether it is followed on a day: from the day it was agreed on to its last day.
[[nodiscard]] bool isRunning(const ClientPlan& plan, base::Date day);

/// Why a plan cannot be kept: a field (`plan`, `singles[2]`, `begun_on`, `ended_on`) and a reason.
struct ClientPlanFault {
    std::string field;
    std::string_view reason;
};

[[nodiscard]] std::optional<ClientPlanFault> faultOf(const ClientPlan& plan);

}  // namespace chalk::direction
