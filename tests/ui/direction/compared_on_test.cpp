#include "tests/ui/direction/compared_on_test.h"

#include "tests/support/lift_on_test.h"

namespace chalk::ui::direction {

PlanComparisonCase comparedOnTest()
{
    PlanComparisonCase facts;
    facts.plan = planFor(wishesOnTest());
    facts.client = QStringLiteral("Sefa Reid");
    facts.today = firstMonday() + 9;
    const std::vector<chalk::direction::DoneSet> done(4, {firstMonday() + 1, test::kilos(80), base::Reps(4)});
    facts.lifts = {{QStringLiteral("Back squat"), reviewOf(facts.plan, 0, test::kilos(100), done)},
                   {QStringLiteral("Bench press"), reviewOf(facts.plan, 1, test::kilos(80), {})},
                   {QStringLiteral("Row, \"one\" arm"), reviewOf(facts.plan, 2, test::kilos(40), {})}};
    return facts;
}

}  // namespace chalk::ui::direction
