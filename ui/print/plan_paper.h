#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/lift_for_plan.h"
#include "core/direction/plan_review.h"
#include "core/lifts/exercise.h"
#include "core/sessions/card_content.h"
#include "core/store/database.h"

#include <string>
#include <vector>

namespace chalk::ui::print {

/// All that a plan after the beginner months is written from, on paper and on the command line.
struct PlanPaper {
    std::string studioName;
    std::string clientName;
    std::string coachName;
    base::Date today;
    chalk::direction::ClientPlan plan;
    std::vector<chalk::direction::LiftForPlan> lifts;          ///< all of the client's, by pattern
    std::vector<std::string> names;                     ///< by lift of the plan, in its order
    std::vector<std::string> beside;                    ///< names of the client's other lifts, which stay on the ladder
    std::vector<sessions::CardCaution> cautions;        ///< in force
    std::vector<std::vector<chalk::direction::DoneSet>> done;  ///< by lift of the plan: what was done up to today

    /// The lift as it stands; null where it is the client's no longer.
    [[nodiscard]] const chalk::direction::LiftForPlan* liftAt(std::size_t lift) const;
    /// The single that a week's loads come from: for a week that is over as it was agreed on, else as it is now.
    [[nodiscard]] base::Load singleIn(std::size_t lift, base::Date monday) const;
    /// Whether it is on file and followed today.
    [[nodiscard]] bool isRunning() const { return !plan.id.isNone() && chalk::direction::isRunning(plan, today); }
    /// Whether a week's last day is before today.
    [[nodiscard]] bool isOver(base::Date monday) const;
};

/// Reads it for a plan, which need not be on file. Fails where there is no such client.
[[nodiscard]] store::Result<PlanPaper> readPlanPaper(store::Database& database, const lifts::Catalogue& catalogue,
                                                     const chalk::direction::ClientPlan& plan, base::Date today);

}  // namespace chalk::ui::print
