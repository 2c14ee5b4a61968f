#include "tests/ui/direction/outcome_on_test.h"

#include "tests/support/lift_on_test.h"

namespace chalk::ui::direction {

PlanOutcomeCase outcomeOnTest()
{
    const PlanEditorCase facts = caseOnTest();
    PlanOutcomeCase outcome;
    outcome.plan = facts.plan;
    outcome.client = facts.client;
    std::vector<chalk::direction::DoneSet> done(9, {firstMonday() + 1, test::kilos(80), base::Reps(4)});
    done.insert(done.end(), 9, {firstMonday() + 8, test::kilos(80), base::Reps(4)});
    const auto& plan = facts.plan.plan;
    outcome.lifts = {{facts.names[0], base::MassUnit::Kilogram, facts.plan.singles[0], chalk::direction::PlanSingle{test::kilos(107.5), true},
                      reviewOf(plan, 0, test::kilos(100), done), 0, false},
                     {facts.names[1], base::MassUnit::Kilogram, facts.plan.singles[1], chalk::direction::PlanSingle{test::kilos(78), false},
                      reviewOf(plan, 1, test::kilos(80), {}), 2, true},
                     {facts.names[2], base::MassUnit::Pound, facts.plan.singles[2], std::nullopt, reviewOf(plan, 2, test::kilos(40), {}), 0, false}};
    return outcome;
}

}  // namespace chalk::ui::direction
