#include "ui/direction/plan_editor_gauges.h"

#include "tests/ui/direction/plan_on_test.h"
#include "ui/common/look.h"
#include "ui/direction/plan_chart.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

class PlanEditorGaugesTest : public ::testing::Test {
protected:
    [[nodiscard]] bool says(const char* words) const { return m_gauges.words().contains(QString::fromUtf8(words)); }

    const common::Look m_look;
    PlanEditorModel m_model{caseOnTest()};
    PlanEditorGauges m_gauges{m_look, m_model};
};

TEST_F(PlanEditorGaugesTest, TheCurvesFollowEachChange)
{
    const auto* chart = m_gauges.findChild<PlanChart*>();
    const int before = chart->scene().weeks[0].hardSets;
    m_model.setWork({0, 0, 0}, {WorkField::Sets, 6});
    EXPECT_EQ(chart->scene().weeks[0].hardSets, before + 2);
    m_model.changes().undo();
    EXPECT_EQ(chart->scene().weeks[0].hardSets, before);
}

TEST_F(PlanEditorGaugesTest, DeparturesAreSaidWithTheirSource)
{
    EXPECT_TRUE(says("Every number of a week of work lies in its published range."));
    m_model.setWork({0, 0, 0}, {WorkField::Sets, 7});
    EXPECT_TRUE(says("Back squat, week 1, day 1: Sets 7; published 2–6 (Haff and Triplett 2016, table 21.2)"));
    EXPECT_FALSE(says("Every number"));
}

TEST_F(PlanEditorGaugesTest, AStrengthLiftStandsBesideThePrintedTable)
{
    m_gauges.read(4, 1);
    EXPECT_TRUE(says("Bench press, week 5: repetitions by intensity"));
    EXPECT_TRUE(says("Day 1: 12 reps at 80–89 %; printed 10–20, best 15")) << "4 × 3 at 85 per cent";
    EXPECT_TRUE(says("Laputin and Oleshko 1982"));
    m_gauges.read(4, 2);
    EXPECT_FALSE(says("repetitions by intensity")) << "the table is not for assistance";
}

TEST_F(PlanEditorGaugesTest, PhysiqueCountsSetsByMuscleGroup)
{
    EXPECT_FALSE(says("sets by muscle group"));
    auto wishes = m_model.wishes();
    wishes.direction = chalk::direction::Direction::Physique;
    ASSERT_FALSE(m_model.setWishes(wishes, false));
    EXPECT_TRUE(says("Week 1: sets by muscle group"));
    EXPECT_TRUE(says("Schoenfeld 2017"));
    EXPECT_FALSE(says("repetitions by intensity"));
}

TEST_F(PlanEditorGaugesTest, WhatIsReadStaysInThePlan)
{
    m_gauges.read(11, 2);
    auto wishes = m_model.wishes();
    wishes.weeks = 8;
    wishes.lifts.pop_back();
    ASSERT_FALSE(m_model.setWishes(wishes, false));
    EXPECT_TRUE(says("Bench press, week 8: repetitions by intensity"));
}

}  // namespace chalk::ui::direction
