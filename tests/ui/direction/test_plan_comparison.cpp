#include "ui/direction/plan_comparison.h"

#include "tests/support/accessible_audit.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/ui/direction/compared_on_test.h"
#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/trends/chart_view.h"

#include <QComboBox>
#include <QFile>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

class PlanComparisonTest : public ::testing::Test {
protected:
    PlanComparisonTest()
    {
        m_comparison.setCase(comparedOnTest());
        m_comparison.resize(900, 500);
        m_comparison.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_comparison));
    }
    QTableView& table() { return *m_comparison.findChild<QTableView*>(); }
    void pressExport()
    {
        for (common::ActionButton* button : m_comparison.findChildren<common::ActionButton*>()) {
            QTest::mouseClick(button, Qt::LeftButton);
        }
    }

    const common::Look m_look;
    tests::ScriptedDialogs m_dialogs;
    PlanComparison m_comparison{m_look, m_dialogs};
};

TEST_F(PlanComparisonTest, TChangesBetweenChartAndTable)
{
    auto* chart = m_comparison.findChild<trends::ChartView*>();
    chart->setFocus();
    EXPECT_FALSE(m_comparison.isTable());
    QTest::keyClick(chart, Qt::Key_T);
    EXPECT_TRUE(m_comparison.isTable());
    EXPECT_TRUE(table().hasFocus());
    EXPECT_EQ(table().currentIndex().row(), 1) << "the present week";
    QTest::keyClick(&table(), Qt::Key_T);
    EXPECT_FALSE(m_comparison.isTable());
}

TEST_F(PlanComparisonTest, ALiftIsChosenForBoth)
{
    m_comparison.setLift(0);
    m_comparison.setTable(true);
    EXPECT_EQ(table().model()->index(0, 3).data().toString(), QStringLiteral("4"));
    EXPECT_EQ(m_comparison.saying(), QStringLiteral("4 of 18 sets done so far."));
    QTest::keyClick(m_comparison.findChild<QComboBox*>(), Qt::Key_Down);
    EXPECT_EQ(table().model()->index(0, 3).data().toString(), QStringLiteral("0"));
}

TEST_F(PlanComparisonTest, TheNumbersGoIntoAFile)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("plan.csv"));
    m_dialogs.paths = {path};
    pressExport();
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(), comparisonCsv(comparedOnTest()));
    EXPECT_EQ(m_dialogs.askedFiles.front().suggestion, QStringLiteral("sefa-reid-plan-and-done.csv"));
    EXPECT_TRUE(m_comparison.saying().contains(path));
    m_dialogs.paths = {folder.filePath(QStringLiteral("no/such/place.csv"))};
    pressExport();
    EXPECT_TRUE(m_comparison.saying().contains(QStringLiteral("could not be written"))) << "it says so";
}

TEST_F(PlanComparisonTest, NamesWhatTakesTheFocus)
{
    EXPECT_GT(tests::focusableCount(m_comparison), 3);
    EXPECT_EQ(tests::unnamedFocusables(m_comparison), QStringList());
}

}  // namespace chalk::ui::direction
