#include "ui/trends/volume_chart.h"

#include "tests/ui/trends/made_up_trends.h"
#include "ui/common/look.h"

#include <gtest/gtest.h>

#include <set>

namespace chalk::ui::trends {

namespace {

VolumeScene sceneOfFerro(int selected)
{
    return {madeUpClient().trends.weeks, base::MassUnit::Kilogram, selected};
}

PaintedChart barsOf(const VolumeScene& scene, const common::Theme& theme)
{
    return painted([&scene](QPainter& painter, const QRectF& area, const common::Theme& colours) { return paintVolume(painter, area, scene, colours); }, theme, {800, 380});
}

}  // namespace

TEST(VolumeChart, AWeekIsABarOfItsPatterns)
{
    const common::Look look;
    const auto chart = barsOf(sceneOfFerro(2), look.theme());
    ASSERT_EQ(chart.spots.size(), 4U);
    EXPECT_EQ(chart.spots[2].words, QStringLiteral("Week of Monday 16 November: 4\u202F560 kg × reps\nSquat 3\u202F060\nHorizontal pull 1\u202F500"));
    const auto x = static_cast<int>(chart.spots[0].area.center().x());
    std::set<QRgb> colours;
    for (int y = 0; y < chart.image.height(); ++y) {
        colours.insert(chart.image.pixel(x, y));
    }
    EXPECT_TRUE(colours.count(look.theme().pattern(lifts::Pattern::Squat).fill.rgb()));
    EXPECT_TRUE(colours.count(look.theme().pattern(lifts::Pattern::HorizontalPull).fill.rgb()));
    EXPECT_FALSE(colours.count(look.theme().pattern(lifts::Pattern::HorizontalPush).fill.rgb())) << "none was done";
}

TEST(VolumeChart, TheSelectedWeekIsFramed)
{
    const common::Look look;
    EXPECT_NE(barsOf(sceneOfFerro(1), look.theme()).image, barsOf(sceneOfFerro(2), look.theme()).image);
}

TEST(VolumeChart, ALighterWeekSaysSo)
{
    const common::Look look;
    VolumeScene scene = sceneOfFerro(2);
    const QImage before = barsOf(scene, look.theme()).image;
    scene.weeks[1].lighterLifts = 2;
    const auto chart = barsOf(scene, look.theme());
    EXPECT_NE(chart.image, before);
    EXPECT_TRUE(chart.spots[1].words.contains(QStringLiteral("lighter week")));
    EXPECT_FALSE(chart.spots[0].words.contains(QStringLiteral("lighter week")));
}

TEST(VolumeChart, EveryPatternIsStackedOnce)
{
    EXPECT_EQ(std::set<lifts::Pattern>(kStackOrder.begin(), kStackOrder.end()).size(), lifts::kPatterns.size());
}

TEST(VolumeChart, TheWeekIsSpokenAndWritten)
{
    const common::Look look;
    EXPECT_EQ(spokenVolume(sceneOfFerro(0)), QStringLiteral("Load-volume by week. Week of Monday 2 November: 4\u202F500 kg × reps, Squat 3\u202F000, Horizontal pull 1\u202F500"));
    const VolumeScene scene = sceneOfFerro(0);
    const auto values = painted(
        [&scene](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintWeekValues(painter, area, scene, QStringLiteral("Total 4 500."), theme); },
        look.theme(), {220, 380});
    EXPECT_GT(values.inked(look.theme()), 1500);
}

}  // namespace chalk::ui::trends
