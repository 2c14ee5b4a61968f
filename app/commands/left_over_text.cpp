#include "app/commands/left_over_text.h"

#include "core/week/ways_out.h"

namespace chalk::app {

LeftOverText leftOverText(const week::WeekProblem& problem, const week::WeekPlan& plan, const week::LeftOver& left, const ui::common::WeekNames& names)
{
    LeftOverText text{ui::common::whyLeftOver(left, problem, names), {}};
    for (const week::WayOut& way : week::waysOut(problem, plan, left.session)) {
        text.waysOut.append(ui::common::offerText(way, problem, left.session, names));
    }
    return text;
}

}  // namespace chalk::app
