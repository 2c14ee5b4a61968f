#include "ui/direction/plan_editor_sheet.h"

#include "tests/ui/direction/plan_on_test.h"
#include "ui/direction/plan_editor_words.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

class PlanEditorSheetTest : public ::testing::Test {
protected:
    [[nodiscard]] QModelIndex at(int row, int column, int exposure = 0) const
    {
        return m_sheet.index(row, PlanEditorSheet::FirstWorkColumn + exposure * PlanEditorSheet::WorkColumns + column);
    }
    [[nodiscard]] std::string textAt(int row, int column, int exposure = 0) const
    {
        return at(row, column, exposure).data(Qt::DisplayRole).toString().toStdString();
    }

    PlanEditorModel m_model{caseOnTest()};
    PlanEditorSheet m_sheet{m_model};
    QAbstractItemModelTester m_tester{&m_sheet, QAbstractItemModelTester::FailureReportingMode::Warning};
};

TEST_F(PlanEditorSheetTest, ALiftHasARowForEachWeek)
{
    EXPECT_EQ(m_sheet.rowCount(), 12);
    EXPECT_EQ(m_sheet.columnCount(), 2 + 2 * 8);
    EXPECT_EQ(textAt(0, PlanEditorSheet::SetsColumn), "4");
    EXPECT_EQ(textAt(0, PlanEditorSheet::ShareColumn), "80");
    EXPECT_EQ(textAt(0, PlanEditorSheet::LoadColumn), "80");
    EXPECT_EQ(textAt(0, PlanEditorSheet::RestColumn), "3:00");
    EXPECT_EQ(textAt(11, PlanEditorSheet::LoadColumn, 1), "test");
    EXPECT_EQ(at(11, PlanEditorSheet::TestColumn, 1).data(Qt::CheckStateRole).toInt(), Qt::Checked);
    EXPECT_EQ(m_sheet.headerData(5, Qt::Vertical, Qt::DisplayRole).toString(), QStringLiteral("6  4 Jan"));
    EXPECT_EQ(m_sheet.headerData(2, Qt::Horizontal, Qt::DisplayRole).toString(), QStringLiteral("Day 1\nSets"));
}

TEST_F(PlanEditorSheetTest, AllLiftsStandBesideEachOther)
{
    m_sheet.setLift(std::nullopt);
    EXPECT_EQ(m_sheet.rowCount(), 36);
    EXPECT_EQ(m_sheet.weekOf(4), 1U);
    EXPECT_EQ(m_sheet.liftOf(4), 1U);
    EXPECT_EQ(m_sheet.headerData(4, Qt::Vertical, Qt::DisplayRole).toString(), QStringLiteral("2  7 Dec  Bench press"));
    EXPECT_EQ(textAt(1, PlanEditorSheet::LoadColumn), "62.5 kg");
    m_model.setSingle(2, base::Load::fromCenti(5000));
    EXPECT_EQ(textAt(2, PlanEditorSheet::LoadColumn), "35 lb");
    EXPECT_EQ(textAt(2, PlanEditorSheet::SetsColumn, 1), "") << "the row is done once a week";
    EXPECT_FALSE(m_sheet.flags(at(2, PlanEditorSheet::SetsColumn, 1)) & Qt::ItemIsEditable);
}

TEST_F(PlanEditorSheetTest, CellsAreSetAndWhatIsBadIsRefusedWithASentence)
{
    QSignalSpy refused(&m_sheet, &PlanEditorSheet::refused);
    EXPECT_TRUE(m_sheet.setData(at(0, PlanEditorSheet::ShareColumn), QStringLiteral("82.5"), Qt::EditRole));
    EXPECT_EQ(textAt(0, PlanEditorSheet::ShareColumn), "82.5");
    EXPECT_TRUE(m_sheet.setData(at(0, PlanEditorSheet::PauseColumn), Qt::Checked, Qt::CheckStateRole));
    EXPECT_TRUE(m_model.workAt({0, 0, 0})->isPauseAsked);
    EXPECT_EQ(refused.count(), 0);
    EXPECT_FALSE(m_sheet.setData(at(0, PlanEditorSheet::SetsColumn), QStringLiteral("0"), Qt::EditRole));
    EXPECT_FALSE(m_sheet.setData(at(0, PlanEditorSheet::ShareColumn), QStringLiteral("150"), Qt::EditRole));
    EXPECT_FALSE(m_sheet.setData(at(0, PlanEditorSheet::LoadColumn), QStringLiteral("85"), Qt::EditRole)) << "loads are shown, not typed";
    ASSERT_EQ(refused.count(), 2);
    EXPECT_EQ(refused[1][0].toString(), editFaultText(EditFault::ShareRange));
    EXPECT_EQ(textAt(0, PlanEditorSheet::SetsColumn), "4");
    EXPECT_EQ(m_sheet.refusalOf(at(0, PlanEditorSheet::SetsColumn), QStringLiteral("5")), QString());
}

TEST_F(PlanEditorSheetTest, WhatLeavesItsRangeIsMarkedAndSaysWhy)
{
    const QModelIndex share = at(0, PlanEditorSheet::ShareColumn);
    EXPECT_FALSE(share.data(PlanEditorSheet::IsOutsideRole).toBool());
    m_sheet.setData(share, QStringLiteral("70"), Qt::EditRole);
    EXPECT_TRUE(share.data(PlanEditorSheet::IsOutsideRole).toBool());
    EXPECT_FALSE(at(0, PlanEditorSheet::SetsColumn).data(PlanEditorSheet::IsOutsideRole).toBool());
    EXPECT_TRUE(share.data(Qt::ToolTipRole).toString().contains(QStringLiteral("published 80 %–95 %")));
    EXPECT_TRUE(share.data(Qt::AccessibleTextRole).toString().startsWith(QStringLiteral("Day 1, % 70. ")));
}

TEST_F(PlanEditorSheetTest, KindsGoThereAndBackButForTheTest)
{
    const auto before = m_model.plan();
    QSignalSpy refused(&m_sheet, &PlanEditorSheet::refused);
    m_sheet.toggleKind(0);
    EXPECT_EQ(m_sheet.index(0, PlanEditorSheet::KindColumn).data().toString(), QStringLiteral("lighter"));
    EXPECT_EQ(textAt(0, PlanEditorSheet::SetsColumn), "2");
    m_sheet.toggleKind(0);
    EXPECT_EQ(m_model.plan(), before);
    m_sheet.toggleKind(11);
    EXPECT_EQ(refused.count(), 1);
}

TEST_F(PlanEditorSheetTest, FollowsWishesThatChangeItsSize)
{
    auto wishes = m_model.wishes();
    wishes.weeks = 9;
    wishes.lifts[0].exposures = 3;
    m_model.setWishes(wishes, true);
    EXPECT_EQ(m_sheet.rowCount(), 9);
    EXPECT_EQ(m_sheet.columnCount(), 2 + 3 * 8);
    m_sheet.setLift(2);
    wishes.lifts.pop_back();
    m_model.setWishes(wishes, true);
    EXPECT_EQ(m_sheet.lift(), 0U) << "the row is out of the plan";
}

TEST(PlanEditorSheet, WeeksThatAreOverAreOnlyRead)
{
    PlanEditorModel model(caseOnTest(firstMonday() + 9));
    const PlanEditorSheet sheet(model);
    const QModelIndex over = sheet.index(0, PlanEditorSheet::FirstWorkColumn);
    EXPECT_FALSE(sheet.flags(over) & Qt::ItemIsEditable);
    EXPECT_TRUE(over.data(PlanEditorSheet::IsOverRole).toBool());
    EXPECT_TRUE(sheet.flags(sheet.index(1, PlanEditorSheet::FirstWorkColumn)) & Qt::ItemIsEditable);
}

}  // namespace chalk::ui::direction
