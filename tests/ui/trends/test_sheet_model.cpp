#include "ui/trends/sheet_model.h"

#include <QAbstractItemModelTester>

#include <gtest/gtest.h>

namespace chalk::ui::trends {

TEST(SheetModel, IsASheet)
{
    SheetModel model({QStringLiteral("Weeks"), {QStringLiteral("Week of"), QStringLiteral("Total")}, {{QStringLiteral("2 Nov"), QStringLiteral("4 500")}}, 1});
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.rowCount(), 1);
    EXPECT_EQ(model.columnCount(), 2);
    EXPECT_EQ(model.index(0, 1).data().toString(), QStringLiteral("4 500"));
    EXPECT_EQ(model.headerData(0, Qt::Horizontal, Qt::DisplayRole).toString(), QStringLiteral("Week of"));
    EXPECT_TRUE(model.index(0, 1).data(Qt::TextAlignmentRole).value<Qt::Alignment>() & Qt::AlignRight) << "a number";
    EXPECT_TRUE(model.index(0, 0).data(Qt::TextAlignmentRole).value<Qt::Alignment>() & Qt::AlignLeft);
}

}  // namespace chalk::ui::trends
