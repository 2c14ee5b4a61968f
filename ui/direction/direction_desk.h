#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/act.h"
#include "core/store/database.h"
#include "ui/direction/direction_case.h"

#include <QString>

#include <functional>

namespace chalk::ui::direction {

/// Between the tab and the studio: reads what it shows, writes what is decided there. Each write is one act.
class DirectionDesk {
public:
    /// The database and the catalogue outlive the desk. `atUtc` is the moment of an act, ISO 8601.
    DirectionDesk(store::Database& database, const lifts::Catalogue& catalogue, std::function<QString()> atUtc);

    /// Fails where there is no such client.
    [[nodiscard]] store::Result<DirectionCase> read(base::ClientId client, base::Date today);

    /// Begins a plan on `today`. Refused as store::PlanWriter refuses it.
    [[nodiscard]] store::Result<store::ActOutcome> begin(base::ClientId client, base::Date today, const chalk::direction::BlockPlan& plan,
                                                         const std::vector<chalk::direction::PlanSingle>& singles);
    /// Keeps that the talk was had and the client stays in the cycle; the next review is in kCycleReviewDays.
    [[nodiscard]] store::Result<store::ActOutcome> oneMoreCycle(base::ClientId client, base::Date today);
    /// Puts a changed version in the place of the running plan.
    [[nodiscard]] store::Result<store::ActOutcome> change(const chalk::direction::ClientPlan& plan, base::Date today,
                                                          const std::optional<chalk::direction::ClientPlan>& seen);
    [[nodiscard]] store::Result<store::ActOutcome> end(const chalk::direction::ClientPlan& plan, base::Date today);

private:
    store::Database& m_database;
    const lifts::Catalogue& m_catalogue;
    std::function<QString()> m_atUtc;
};

/// A cycle is given so many days before the talk is had again. Common practice.
inline constexpr int kCycleReviewDays = 84;

/// The running plan with the singles that its lifts have now: those of lifts that follow it as results have moved them, of others what is known of them.
/// Changing to it lets lifts that left the plan take it up again.
[[nodiscard]] chalk::direction::ClientPlan withLiftsTakenUp(const DirectionCase& client);

}  // namespace chalk::ui::direction
