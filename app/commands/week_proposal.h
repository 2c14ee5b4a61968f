#pragma once

#include "app/commands/command.h"
#include "core/week/contradictions.h"
#include "core/week/left_over.h"
#include "core/week/week_case.h"
#include "ui/common/week_words.h"

#include <QJsonObject>

namespace chalk::app {

/// A week with a plan for it, and what there is to say of it.
struct WeekProposal {
    week::WeekFacts facts;
    week::WeekCase week;
    week::WeekPlan plan;                              ///< as booked, or with what was proposed
    week::Objective objective;
    std::vector<week::PlanFault> faults;
    std::vector<week::Contradiction> contradictions;
    std::vector<week::LeftOver> leftOver;

    [[nodiscard]] bool isProposed(std::size_t session) const { return plan[session].has_value() && plan[session] != week.booked[session]; }
    [[nodiscard]] ui::common::WeekNames names() const;
    /// `Tomasz Wyre, 3rd of 3`.
    [[nodiscard]] QString sessionText(std::size_t session) const;
};

/// Judges the plan.
void judge(WeekProposal& proposal);

/// Days, sessions, conflicts, and what is left over with its reasons and the cheapest ways out.
void writeText(QTextStream& out, const WeekProposal& proposal);
[[nodiscard]] QJsonObject toJson(const WeekProposal& proposal);

}  // namespace chalk::app
