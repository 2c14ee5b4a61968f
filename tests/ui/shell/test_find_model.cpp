#include "ui/shell/find_model.h"

#include <QAbstractItemModelTester>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

TEST(FindModel, HeadingsStandBetweenResultsAndCannotBeChosen)
{
    FindModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    EXPECT_EQ(model.resultRow(0, 1), -1);
    model.setItems({{FindGroup::Do, {}, {{QStringLiteral("Print")}, {QStringLiteral("A5"), FindWeight::Detail}}, {}, 5, {}},
                    {FindGroup::GoTo, {}, {{QStringLiteral("Joaquin Ferro")}, {QStringLiteral(", board")}}, {}, 4, {}},
                    {FindGroup::GoTo, {}, {{QStringLiteral("Adaeze Quill")}}, {}, 3, {}}});
    ASSERT_EQ(model.rowCount(), 5);
    EXPECT_EQ(model.index(0, 0).data().toString().toStdString(), "Do");
    EXPECT_EQ(model.index(1, 0).data().toString().toStdString(), "Print A5");
    EXPECT_EQ(model.index(2, 0).data().toString().toStdString(), "Go to");
    EXPECT_EQ(model.index(3, 0).data().toString().toStdString(), "Joaquin Ferro, board");
    EXPECT_EQ(model.flags(model.index(2, 0)), Qt::NoItemFlags);
    EXPECT_EQ(model.resultRow(2, 1), 3);
    EXPECT_EQ(model.resultRow(2, -1), 1);
    EXPECT_EQ(model.resultRow(0, -1), -1);
    EXPECT_EQ(model.resultRow(5, 1), -1);
    EXPECT_EQ(model.itemAt(0), nullptr);
    EXPECT_EQ(model.itemAt(-1), nullptr);
    EXPECT_NE(model.itemAt(4), nullptr);
    model.setItems({});
    EXPECT_EQ(model.rowCount(), 0);
}

}  // namespace chalk::ui::shell
