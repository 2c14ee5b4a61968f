#include "ui/direction/plan_editor_model.h"

#include "tests/support/lift_on_test.h"
#include "tests/ui/direction/plan_on_test.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

using chalk::direction::PlanFigure;
using chalk::direction::WeekKind;

TEST(PlanEditorModel, ChangesAreUndoneAndDoneAgain)
{
    PlanEditorModel model(caseOnTest());
    const auto before = model.plan();
    QSignalSpy changed(&model, &PlanEditorModel::changed);
    EXPECT_FALSE(model.isChanged());
    EXPECT_FALSE(model.setWork({0, 0, 0}, {WorkField::Sets, 6}));
    EXPECT_FALSE(model.setKind(1, WeekKind::Lighter));
    EXPECT_FALSE(model.copyDown(0, 0));
    model.setSingle(0, test::kilos(110));
    auto wishes = model.wishes();
    wishes.weeks = 10;
    EXPECT_FALSE(model.setWishes(wishes, true));
    const auto after = model.plan();
    EXPECT_EQ(changed.count(), 5);
    EXPECT_EQ(after.plan.weeks.size(), 10U);
    for (int i = 0; i < 5; ++i) {
        model.changes().undo();
    }
    EXPECT_EQ(model.plan(), before);
    EXPECT_FALSE(model.isChanged());
    for (int i = 0; i < 5; ++i) {
        model.changes().redo();
    }
    EXPECT_EQ(model.plan(), after);
}

TEST(PlanEditorModel, WhatIsRefusedOrTheSameIsNoStep)
{
    PlanEditorModel model(caseOnTest());
    const int sets = model.workAt({0, 0, 0})->scheme.sets.value();
    EXPECT_EQ(model.setWork({0, 0, 0}, {WorkField::Sets, 0}), EditFault::SetsRange);
    EXPECT_FALSE(model.setWork({0, 0, 0}, {WorkField::Sets, sets}));
    EXPECT_FALSE(model.setKind(0, WeekKind::Work));
    model.setSingle(0, test::kilos(100));
    auto wishes = model.wishes();
    EXPECT_FALSE(model.setWishes(wishes, true));
    wishes.weeks = 17;
    const auto fault = model.setWishes(wishes, true);
    ASSERT_TRUE(fault);
    EXPECT_EQ(fault->field, "weeks");
    EXPECT_EQ(model.changes().count(), 0);
}

TEST(PlanEditorModel, LoadsAreWhatTheEquipmentGives)
{
    PlanEditorModel model(caseOnTest());
    ASSERT_EQ(model.workAt({0, 0, 0})->scheme.share, base::Milli(800));
    EXPECT_EQ(model.loadAt({0, 0, 0}), test::kilos(80));
    EXPECT_FALSE(model.setWork({0, 0, 0}, {WorkField::Share, 834}));
    EXPECT_EQ(model.loadAt({0, 0, 0}), test::kilos(82.5)) << "83.4 is not to be had: the next below";
    EXPECT_FALSE(model.loadAt({0, 2, 0})) << "no single";
    model.setSingle(2, base::Load::fromCenti(5000));
    EXPECT_EQ(model.workAt({0, 2, 0})->scheme.share, base::Milli(750));
    EXPECT_EQ(model.loadAt({0, 2, 0}), base::Load::fromCenti(3500)) << "37.5 lb: the 35 of the set";
    EXPECT_EQ(model.unitOf(2), base::MassUnit::Pound);
    EXPECT_FALSE(model.loadAt({11, 0, 1})) << "a test";
    EXPECT_FALSE(model.loadAt({0, 2, 1})) << "not there";
}

TEST(PlanEditorModel, SinglesSayWhereTheyComeFrom)
{
    PlanEditorModel model(caseOnTest());
    EXPECT_EQ(model.originOf(0), SingleOrigin::Estimated);
    EXPECT_EQ(model.originOf(1), SingleOrigin::Tested);
    EXPECT_EQ(model.originOf(2), SingleOrigin::None);
    model.setSingle(1, test::kilos(85));
    EXPECT_EQ(model.originOf(1), SingleOrigin::Typed);
    model.setSingle(1, test::kilos(80));
    EXPECT_EQ(model.originOf(1), SingleOrigin::Tested) << "the tested one again";
}

TEST(PlanEditorModel, APlanOnFileStartsFromTheSinglesOfNow)
{
    PlanEditorCase facts = caseOnTest();
    facts.plan.singles[0] = {test::kilos(90), false};
    EXPECT_EQ(PlanEditorModel(facts).plan().singles[0].load, test::kilos(90));
    facts.plan.id = base::PlanId(3);
    const PlanEditorModel model(facts);
    EXPECT_EQ(model.plan().singles[0].load, test::kilos(100));
    EXPECT_EQ(model.plan().singles[2].load, base::Load()) << "none is known";
    EXPECT_FALSE(model.isChanged());
}

/// Haff and Triplett 2016, table 21.2: basic strength at 80 to 95 per cent, 2 to 6 sets of 2 to 6.
TEST(PlanEditorModel, DeparturesFollowEachChange)
{
    PlanEditorModel model(caseOnTest());
    EXPECT_TRUE(model.departures().empty());
    EXPECT_FALSE(model.setWork({0, 0, 0}, {WorkField::Share, 700}));
    ASSERT_EQ(model.departuresAt({0, 0, 0}).size(), 1U);
    EXPECT_EQ(model.departuresAt({0, 0, 0}).front().figure, PlanFigure::Share);
    EXPECT_EQ(model.departuresAt({0, 0, 0}).front().range, (chalk::direction::NumberRange{800, 950}));
    EXPECT_TRUE(model.departuresAt({0, 0, 1}).empty());
    model.changes().undo();
    EXPECT_TRUE(model.departures().empty());
}

TEST(PlanEditorModel, WeeksThatAreOverRefuse)
{
    PlanEditorModel model(caseOnTest(firstMonday() + 8));
    EXPECT_TRUE(model.hasBegun());
    EXPECT_TRUE(model.isOver(0));
    EXPECT_FALSE(model.isOver(1));
    EXPECT_EQ(model.setWork({0, 0, 0}, {WorkField::Sets, 3}), EditFault::WeekIsOver);
    EXPECT_FALSE(model.setWork({1, 0, 0}, {WorkField::Sets, 3}));
    EXPECT_EQ(model.exposures(std::nullopt), 2);
    EXPECT_EQ(model.exposures(2), 1);
}

}  // namespace chalk::ui::direction
