#include "ui/trends/trend_tables.h"

#include "tests/ui/trends/made_up_trends.h"
#include "ui/common/look.h"

#include <QLabel>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::trends {

TEST(TrendTables, ShowSheetsAndNotesAndAreCopied)
{
    const common::Look look;
    TrendTables tables(look);
    tables.resize(1200, 700);
    tables.setSheets(sheetsOf(madeUpClient()), {QStringLiteral("A note.")});
    tables.show();
    tables.activateWindow();
    ASSERT_EQ(tables.tables().size(), 3U);
    EXPECT_EQ(tables.tables()[1]->model()->rowCount(), 4);
    EXPECT_TRUE(tables.tables()[2]->accessibleName().contains(QStringLiteral("Reps and rest")));
    const auto labels = tables.findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) { return label->text() == QStringLiteral("A note."); }));
    EXPECT_TRUE(tables.copyText().contains(QStringLiteral("2 Nov\t95 (92–99)\t58 (55–62)\n"))) << "all of them";
    tables.focusFirst();
    ASSERT_TRUE(QTest::qWaitFor([&tables] { return tables.tables().front()->hasFocus(); }));
    tables.tables().front()->setCurrentIndex(tables.tables().front()->model()->index(0, 0));
    QTest::keyClick(tables.tables().front(), Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(tables.copyText(), QStringLiteral("2 Nov\t3\u202F000")) << "what is selected alone";
    tables.setSheets(sheetsOf(madeUpBeginner()), {});
    EXPECT_EQ(tables.tables().size(), 1U);
}

}  // namespace chalk::ui::trends
