#include "ui/print/plan_dialog.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/plan_writer.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/look.h"
#include "ui/print/paper_dialog.h"

#include <gtest/gtest.h>

namespace chalk::ui::print {

class PlanDialog : public ::testing::Test {
protected:
    PlanDialog() : m_ada(test::clientNamed(m_studio.database(), "Ada Lund")) {}

    [[nodiscard]] CardDialogServices services() { return {m_look, m_dialogs, [](QPrinter&, QWidget*) { return false; }}; }
    [[nodiscard]] std::unique_ptr<PaperDialog> dialogOn(base::Date day)
    {
        auto dialog = planDialog(services(), m_studio.database(), m_catalogue, m_ada, day);
        EXPECT_TRUE(dialog);
        return dialog ? *std::move(dialog) : nullptr;
    }
    /// Begins a plan of eight weeks with Ada's squat.
    void begin()
    {
        chalk::direction::ClientPlan plan;
        plan.client = m_ada;
        plan.begunOn = test::smallStudioDay();
        chalk::direction::PlanWishes wishes;
        wishes.weeks = 8;
        wishes.start = test::smallStudioDay() + (7 - test::smallStudioDay().weekday());
        wishes.lifts = {{test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat), chalk::direction::LiftRole::Main, 2}};
        plan.plan = chalk::direction::planFor(wishes);
        plan.singles.resize(1);
        ASSERT_TRUE(store::PlanWriter(m_studio.database(), [] { return test::someMoment(); }).begin(plan));
    }

    test::StudioOnTest m_studio;
    base::ClientId m_ada;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
};

TEST_F(PlanDialog, ThereIsNoneBeforeAPlanWasBegun)
{
    EXPECT_EQ(dialogOn(test::smallStudioDay()), nullptr);
    begin();
    EXPECT_EQ(dialogOn(test::smallStudioDay() - 1), nullptr) << "not begun yet on that day";
}

TEST_F(PlanDialog, ShowsThePlanThatRunsAndStillWhenItIsOver)
{
    begin();
    for (const int days : {0, 30, 100}) {
        const auto dialog = dialogOn(test::smallStudioDay() + days);
        ASSERT_NE(dialog, nullptr) << days;
        EXPECT_EQ(dialog->windowTitle(), QStringLiteral("Strength, 8 weeks"));
        EXPECT_EQ(dialog->pageCount(), 1);
    }
}

}  // namespace chalk::ui::print
