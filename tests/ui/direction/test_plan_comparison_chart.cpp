#include "ui/direction/plan_comparison_chart.h"

#include "core/direction/plan_calendar.h"
#include "tests/ui/direction/compared_on_test.h"
#include "ui/common/look.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

namespace chalk::ui::direction {

class PlanComparisonChartTest : public ::testing::Test {
protected:
    [[nodiscard]] static PlanComparisonScene scene()
    {
        const PlanComparisonCase facts = comparedOnTest();
        return {comparedWeeks(facts, 0), weekOn(facts.plan, facts.today), facts.today};
    }
    QImage painted(const PlanComparisonScene& shown)
    {
        QImage image(900, 420, QImage::Format_RGB32);
        image.fill(m_look.theme().surface);
        QPainter painter(&image);
        m_spots = paintPlanComparison(painter, QRectF(image.rect()), shown, m_look.theme());
        return image;
    }
    /// How many pixels of a week's column are of a colour.
    [[nodiscard]] int countIn(const QImage& image, std::size_t week, const QColor& colour) const
    {
        const QRect column = m_spots[week].area.toRect() & image.rect();
        int count = 0;
        for (int y = column.top(); y <= column.bottom(); ++y) {
            for (int x = column.left(); x <= column.right(); ++x) {
                count += image.pixelColor(x, y) == colour ? 1 : 0;
            }
        }
        return count;
    }

    const common::Look m_look;
    trends::HotSpots m_spots;
};

TEST_F(PlanComparisonChartTest, EachWeekHasASpotWithItsWords)
{
    const auto shown = scene();
    painted(shown);
    ASSERT_EQ(m_spots.size(), 12U);
    EXPECT_EQ(m_spots[0].words, comparedText(0, shown.weeks[0], shown.today));
    EXPECT_LT(m_spots[0].area.right(), m_spots[1].area.right());
}

TEST_F(PlanComparisonChartTest, WhatWasDoneIsFilledAndWhatIsPlannedIsNot)
{
    const QImage image = painted(scene());
    EXPECT_GT(countIn(image, 0, m_look.theme().pri), 300) << "four sets";
    EXPECT_LT(countIn(image, 2, m_look.theme().pri), 40) << "nothing yet";
    EXPECT_GT(countIn(image, 2, m_look.theme().ink2), 40) << "the outline";
}

TEST_F(PlanComparisonChartTest, ThePresentWeekStandsOnAGroundOfItsOwn)
{
    const QImage image = painted(scene());
    EXPECT_GT(countIn(image, 1, m_look.theme().wash), 1000);
    EXPECT_EQ(countIn(image, 5, m_look.theme().wash), 0);
}

TEST_F(PlanComparisonChartTest, APlanWithoutASingleRepetitionIsPaintedToo)
{
    const QImage image = painted({{{firstMonday()}}, std::nullopt, firstMonday()});
    EXPECT_EQ(m_spots.size(), 1U);
    EXPECT_FALSE(image.isNull());
}

}  // namespace chalk::ui::direction
