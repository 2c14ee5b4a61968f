#include "ui/trends/trend_cards.h"

#include "tests/support/accessible_audit.h"
#include "tests/ui/trends/made_up_trends.h"
#include "ui/common/look.h"

#include <QLabel>
#include <QTest>

#include <gtest/gtest.h>

namespace chalk::ui::trends {

TEST(TrendCards, ShowAClientAndTheLastFinishedWeek)
{
    const common::Look look;
    TrendCards cards(look);
    EXPECT_EQ(cards.selectedWeek(), -1);
    cards.resize(1300, 700);
    cards.setView(viewOf(madeUpClient()));
    cards.show();
    EXPECT_EQ(cards.selectedWeek(), 2);
    EXPECT_TRUE(cards.views()[0]->accessibleName().contains(QStringLiteral("Monday 16 November")));
    cards.selectWeek(0);
    EXPECT_TRUE(cards.views()[0]->accessibleName().contains(QStringLiteral("Monday 2 November")));
    cards.selectWeek(-1);
    cards.selectWeek(4);
    EXPECT_EQ(cards.selectedWeek(), 0) << "there are no such weeks";
    cards.grab();
    QTest::mouseClick(cards.views()[0], Qt::LeftButton, {}, cards.views()[0]->spots()[1].area.center().toPoint());
    EXPECT_EQ(cards.selectedWeek(), 1);
    EXPECT_EQ(chalk::tests::unnamedFocusables(cards), QStringList());
    EXPECT_GE(chalk::tests::focusableCount(cards), 4);
}

TEST(TrendCards, ChartsThatAreThereCanLeave)
{
    const common::Look look;
    TrendCards cards(look);
    cards.resize(1300, 700);
    cards.setView(viewOf(madeUpClient()));
    QStringList names;
    for (const NamedChart& chart : cards.charts()) {
        names.append(chart.fileName);
    }
    EXPECT_EQ(names, (QStringList{QStringLiteral("load-volume"), QStringLiteral("best-single"), QStringLiteral("reps-and-rest"), QStringLiteral("monotony")}));
    cards.setView(viewOf(madeUpBeginner()));
    EXPECT_TRUE(cards.charts().empty()) << "ghosts stay";
    EXPECT_TRUE(cards.views()[3]->accessibleName().contains(QStringLiteral("Needs 2 more full weeks")));
    cards.setView(viewOf(madeUpStudio()));
    EXPECT_EQ(cards.charts().size(), 4U);
    EXPECT_EQ(cards.charts()[1].fileName, QStringLiteral("attendance"));
}

}  // namespace chalk::ui::trends
