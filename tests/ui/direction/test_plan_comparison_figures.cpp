#include "ui/direction/plan_comparison_figures.h"

#include "tests/support/lift_on_test.h"
#include "tests/ui/direction/compared_on_test.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

namespace {

std::string rowOf(const trends::TrendSheet& sheet, std::size_t row)
{
    return sheet.rows[row].join(QLatin1Char('|')).toStdString();
}

}  // namespace

TEST(PlanComparisonFigures, AllLiftsAreSummedAndSharesWeighedByRepetitions)
{
    PlanComparisonCase facts;
    facts.plan = planFor(wishesOnTest());
    facts.plan.weeks.resize(1);
    facts.lifts = {{QStringLiteral("A"), {{firstMonday(), 4, 3, 20, 10, 0.8, 0.9}}}, {QStringLiteral("B"), {{firstMonday(), 6, 6, 60, 30, 0.6, 0.5}}}};
    const auto all = comparedWeeks(facts, std::nullopt);
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].plannedSets, 10);
    EXPECT_EQ(all[0].doneSets, 9);
    EXPECT_EQ(all[0].plannedReps, 80);
    EXPECT_EQ(all[0].doneReps, 40);
    EXPECT_DOUBLE_EQ(all[0].plannedShare, (0.8 * 20 + 0.6 * 60) / 80);
    EXPECT_DOUBLE_EQ(all[0].doneShare, (0.9 * 10 + 0.5 * 30) / 40);
    EXPECT_EQ(comparedWeeks(facts, 1), facts.lifts[1].weeks);
}

TEST(PlanComparisonFigures, TheTableSaysWhatIsPlannedAndDone)
{
    const trends::TrendSheet sheet = comparisonSheet(comparedOnTest(), 0);
    ASSERT_EQ(sheet.rows.size(), 12U);
    EXPECT_EQ(sheet.title, QStringLiteral("Back squat"));
    EXPECT_EQ(rowOf(sheet, 0), "1  30 Nov|Base|8|4|32|16|72|80") << "4 × 4 at 80 and 64 planned; 4 × 4 at 80 kg of 100 done";
    EXPECT_EQ(rowOf(sheet, 1), "2  7 Dec · this week|Base|10|0|40|0|72.9|");
    EXPECT_EQ(rowOf(sheet, 3), "4  21 Dec|Base, lighter|6||24||59|") << "it has not begun";
    EXPECT_EQ(sheet.heads.size(), sheet.rows[0].size());
}

TEST(PlanComparisonFigures, TheCsvHasARecordForEachLiftAndWeek)
{
    const QList<QByteArray> lines = comparisonCsv(comparedOnTest()).split('\n');
    ASSERT_EQ(lines.size(), 1 + 3 * 12 + 1);
    EXPECT_EQ(lines[1].trimmed(), "Back squat,1,2026-11-30,base,work,8,4,32,16,72,80");
    EXPECT_EQ(lines[4].trimmed(), "Back squat,4,2026-12-21,base,lighter,6,,24,,59,");
    EXPECT_TRUE(lines[25].startsWith("\"Row, \"\"one\"\" arm\",1,")) << lines[25].toStdString();
    EXPECT_TRUE(lines[1].endsWith('\r'));
}

TEST(PlanComparisonFigures, WordsOfAWeekAndOfAll)
{
    const PlanComparisonCase facts = comparedOnTest();
    const auto weeks = comparedWeeks(facts, 0);
    EXPECT_EQ(comparedText(0, weeks[0], facts.today), QStringLiteral("Week 1, from 30 Nov: 8 sets planned, 4 done; 72 % planned, 80 % done"));
    EXPECT_EQ(comparedText(3, weeks[3], facts.today), QStringLiteral("Week 4, from 21 Dec: 6 sets planned; 59 % planned"));
    EXPECT_EQ(comparedSoFar(weeks, facts.today), QStringLiteral("4 of 18 sets done so far."));
}

}  // namespace chalk::ui::direction
