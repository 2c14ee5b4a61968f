#include "core/direction/client_plan.h"

#include <fmt/core.h>

#include <algorithm>

namespace chalk::direction {

namespace {

constexpr int kSundayOfWeek = 6;

}  // namespace

base::Date lastDayOf(const ClientPlan& plan)
{
    const base::Date planned = plan.plan.weeks.back().monday + kSundayOfWeek;
    return plan.endedOn ? std::min(planned, *plan.endedOn - 1) : planned;
}

bool isRunning(const ClientPlan& plan, base::Date day)
{
    return plan.begunOn <= day && day <= lastDayOf(plan);
}

std::optional<ClientPlanFault> faultOf(const ClientPlan& plan)
{
    if (plan.plan.weeks.empty()) {
        return ClientPlanFault{"plan", "has no weeks"};
    }
    if (plan.singles.size() != plan.plan.wishes.lifts.size()) {
        return ClientPlanFault{"singles", "there has to be one for each lift"};
    }
    for (std::size_t i = 0; i < plan.singles.size(); ++i) {
        if (plan.singles[i].load < base::Load()) {
            return ClientPlanFault{fmt::format("singles[{}]", i), "is below 0"};
        }
    }
    if (plan.begunOn > plan.plan.weeks.back().monday + kSundayOfWeek) {
        return ClientPlanFault{"begun_on", "is after the last week"};
    }
    if (plan.endedOn && *plan.endedOn < plan.begunOn) {
        return ClientPlanFault{"ended_on", "is before it was begun"};
    }
    return std::nullopt;
}

}  // namespace chalk::direction
