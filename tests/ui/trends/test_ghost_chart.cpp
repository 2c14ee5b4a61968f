#include "ui/trends/ghost_chart.h"

#include "tests/ui/trends/made_up_trends.h"
#include "ui/common/look.h"

#include <gtest/gtest.h>

namespace chalk::ui::trends {

TEST(GhostChart, EachShapeIsItsOwn)
{
    const common::Look look;
    const GapWords words{QStringLiteral("Two more sessions"), QStringLiteral("An estimate needs three loaded sessions.")};
    std::vector<QImage> images;
    for (const GhostShape shape : {GhostShape::Bars, GhostShape::Line, GhostShape::Steps, GhostShape::Wave}) {
        images.push_back(painted([&](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintGhost(painter, area, shape, words, theme); },
                                 look.theme())
                             .image);
    }
    for (std::size_t i = 1; i < images.size(); ++i) {
        EXPECT_NE(images[i], images[0]);
        EXPECT_NE(images[i], images[i - 1]);
    }
}

TEST(GhostChart, TheWordsStandEvenWithoutRoomForAPicture)
{
    const common::Look look;
    const auto paint = [](const GapWords& words) {
        return [words](QPainter& painter, const QRectF& area, const common::Theme& theme) { return paintGhost(painter, area, GhostShape::Bars, words, theme); };
    };
    const auto some = painted(paint({QStringLiteral("Two more"), QStringLiteral("Sessions.")}), look.theme(), {240, 70});
    EXPECT_GT(some.inked(look.theme()), 100);
    EXPECT_EQ(painted(paint({}), look.theme(), {240, 30}).inked(look.theme()), 0);
}

}  // namespace chalk::ui::trends
