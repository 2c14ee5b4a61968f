#include "ui/trends/line_charts.h"

#include "tests/ui/trends/made_up_trends.h"
#include "ui/common/look.h"

#include <gtest/gtest.h>

namespace chalk::ui::trends {

namespace {

ChartPaint paintOf(HotSpots (*paint)(QPainter&, const QRectF&, const checkin::Trends&, const common::Theme&), const checkin::Trends& trends)
{
    return [paint, trends](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paint(painter, area, trends, theme); };
}

}  // namespace

TEST(LineCharts, EachEstimateCanBeAsked)
{
    const common::Look look;
    const auto chart = painted(paintOf(paintSingles, madeUpClient().trends), look.theme());
    ASSERT_EQ(chart.spots.size(), 6U);
    EXPECT_EQ(chart.spots[0].words, QStringLiteral("Back squat, Tue 3 Nov: about 95 kg (92 to 99), an estimate"));
    EXPECT_LT(chart.spots[0].area.center().y(), chart.spots[3].area.center().y()) << "more stands higher";
    EXPECT_LT(chart.spots[0].area.center().x(), chart.spots[1].area.center().x());
}

TEST(LineCharts, TooFewEstimatesArePointsWithoutALine)
{
    const common::Look look;
    checkin::Trends trends = madeUpClient().trends;
    const int withLines = painted(paintOf(paintSingles, trends), look.theme()).inked(look.theme());
    for (checkin::LiftTrend& lift : trends.lifts) {
        lift.estimates = 2;
    }
    const auto points = painted(paintOf(paintSingles, trends), look.theme());
    EXPECT_EQ(points.spots.size(), 6U);
    EXPECT_LT(points.inked(look.theme()), withLines);
}

TEST(LineCharts, MonotonyHasABand)
{
    const common::Look look;
    const auto chart = painted(paintOf(paintMonotony, madeUpClient().trends), look.theme());
    ASSERT_EQ(chart.spots.size(), 3U) << "the week that is not over has none";
    EXPECT_EQ(chart.spots[2].words, QStringLiteral("Week of Monday 16 November: monotony 2.10, strain 2\u202F940"));
    EXPECT_EQ(chart.image.pixelColor(static_cast<int>(chart.spots[2].area.center().x()) + 60, static_cast<int>(chart.spots[2].area.center().y())),
              look.theme().warnBg)
        << "2.1 lies in the band";
}

TEST(LineCharts, LabelsDoNotLieOnEachOther)
{
    const std::vector<double> middles = placedApart({50, 52, 51, 10}, 16, 0, 200);
    EXPECT_EQ(middles[3], 10);
    EXPECT_EQ(middles[0], 50);
    EXPECT_EQ(middles[2], 66);
    EXPECT_EQ(middles[1], 82);
    const std::vector<double> low = placedApart({195, 199}, 16, 0, 200);
    EXPECT_EQ(low[1], 192) << "they stay in the room";
    EXPECT_EQ(low[0], 176);
}

}  // namespace chalk::ui::trends
