#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/lift_for_plan.h"
#include "core/direction/plan_review.h"
#include "core/direction/tested_maximum.h"
#include "core/store/database.h"

#include <map>
#include <optional>
#include <vector>

namespace chalk::store {

/// The last plan of a client that was begun: when its last day is, or was.
struct PlanStanding {
    base::Date begunOn;
    base::Date lastDay;

    [[nodiscard]] bool isRunning(base::Date day) const { return begunOn <= day && day <= lastDay; }
};

/// Reads plans and what they are made from; what was taken back is left out.
class PlanReader {
public:
    explicit PlanReader(Database& database) : m_database(database) {}

    /// Of a client, the one begun last first.
    [[nodiscard]] Result<std::vector<direction::ClientPlan>> history(base::ClientId client);
    /// The one that a client follows on a day; of several the one begun last.
    [[nodiscard]] Result<std::optional<direction::ClientPlan>> running(base::ClientId client, base::Date day);
    /// One plan; refused where there is none with that id.
    [[nodiscard]] Result<direction::ClientPlan> plan(base::PlanId id);
    /// Of each client who was begun a plan with on `day` or before it.
    [[nodiscard]] Result<std::map<base::ClientId, PlanStanding>> standings(base::Date day);
    /// What tests found of a client, the latest first.
    [[nodiscard]] Result<std::vector<direction::TestedMaximum>> tests(base::ClientId client);
    /// All lifts of a client by pattern, with what a plan of `day` would start from.
    [[nodiscard]] Result<std::vector<direction::LiftForPlan>> lifts(base::ClientId client, base::Date day);
    /// By lift of the plan, in its order: the working sets that were done in its days up to `day`, by date, with the loads as the lift moves them now.
    [[nodiscard]] Result<std::vector<std::vector<direction::DoneSet>>> done(const direction::ClientPlan& plan, base::Date day);

private:
    [[nodiscard]] std::vector<direction::ClientPlan> plansWhere(const QString& condition, std::int64_t id);

    Database& m_database;
};

}  // namespace chalk::store
