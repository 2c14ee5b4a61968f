#include "ui/trends/studio_charts.h"

#include "tests/ui/trends/made_up_trends.h"
#include "ui/common/look.h"

#include <gtest/gtest.h>

namespace chalk::ui::trends {

TEST(StudioCharts, AttendanceByWeek)
{
    const common::Look look;
    const auto chart =
        painted([](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintAttendance(painter, area, madeUpStudio(), theme); }, look.theme());
    ASSERT_EQ(chart.spots.size(), 4U);
    EXPECT_EQ(chart.spots[1].words, QStringLiteral("Week of Monday 9 November: 67 % (2 of 3)"));
    EXPECT_EQ(chart.spots[3].words, QStringLiteral("Week of Monday 23 November: none counted"));
    const auto at = [&chart](std::size_t week, double share) {
        return chart.image.pixelColor(static_cast<int>(chart.spots[week].area.center().x()), static_cast<int>(274 - share * 264));
    };
    EXPECT_EQ(at(0, 0.9), look.theme().attDot) << "everybody came";
    EXPECT_EQ(at(1, 0.6), look.theme().attDot);
    EXPECT_NE(at(1, 0.72), look.theme().attDot);
}

TEST(StudioCharts, FallsBeforeRises)
{
    const auto changes = loadChanges(madeUpStudio());
    ASSERT_EQ(changes.size(), 2U) << "who has no change is left out";
    EXPECT_EQ(changes[0].name, QStringLiteral("Tove Lind"));
    EXPECT_EQ(changes[0].number, QStringLiteral("\u221212 %"));
    EXPECT_EQ(changes[1].number, QStringLiteral("+8 %"));
}

TEST(StudioCharts, WhoseDaysAreAlike)
{
    const auto alike = tooMuchAlike(madeUpStudio());
    ASSERT_EQ(alike.size(), 1U);
    EXPECT_EQ(alike[0].client, base::ClientId(1));
    EXPECT_EQ(alike[0].number, QStringLiteral("2.1"));
}

TEST(StudioCharts, AsManyRowsAsThereIsRoomFor)
{
    const common::Look look;
    const std::vector<NamedNumber> rows(9, {base::ClientId(1), QStringLiteral("Somebody"), QStringLiteral("2.0")});
    const auto in = [&](const std::vector<NamedNumber>& some, int height) {
        return painted([&some](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintNumbers(painter, area, some, QStringLiteral("Nobody."), theme); },
                       look.theme(), {200, height});
    };
    EXPECT_EQ(in(rows, 280).spots.size(), 9U);
    EXPECT_EQ(in(rows, 100).spots.size(), 2U) << "the third row says how many more";
    const auto none = in({}, 100);
    EXPECT_TRUE(none.spots.empty());
    EXPECT_GT(none.inked(look.theme()), 50) << "it says that there are none";
}

}  // namespace chalk::ui::trends
