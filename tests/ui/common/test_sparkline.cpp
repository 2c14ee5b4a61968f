#include "ui/common/look.h"
#include "ui/common/sparkline.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

namespace chalk::ui::common {

namespace {

QImage paintedLine(const SparklineView& view, const Theme& theme)
{
    QImage image(140, 30, QImage::Format_RGB32);
    image.fill(theme.surface);
    QPainter painter(&image);
    paintSparkline(painter, QRectF(0, 0, 140, 30), view, theme);
    return image;
}

/// The topmost row with ink in a column; -1 where there is none.
int inkAt(const QImage& image, int x, const Theme& theme)
{
    for (int y = 0; y < image.height(); ++y) {
        if (image.pixelColor(x, y) != theme.surface && image.pixelColor(x, y) != theme.line) {
            return y;
        }
    }
    return -1;
}

}  // namespace

TEST(Sparkline, RisesWithItsValuesAndLeavesGaps)
{
    const Theme theme = Look().theme();
    const QImage rising = paintedLine({{10.0, 20.0, 30.0}, {}, false}, theme);
    EXPECT_GT(inkAt(rising, 6, theme), inkAt(rising, 50, theme));
    const QImage gap = paintedLine({{10.0, 20.0, std::nullopt, 30.0, 30.0}, {}, false}, theme);
    EXPECT_EQ(inkAt(gap, 29, theme), -1);
    EXPECT_GE(inkAt(gap, 10, theme), 0);
}

TEST(Sparkline, WithoutALineItStillSaysItsWord)
{
    const Theme theme = Look().theme();
    const QImage one = paintedLine({{10.0}, QStringLiteral("new"), false}, theme);
    int inked = 0;
    for (int x = 0; x < 40; ++x) {
        inked += inkAt(one, x, theme) >= 0 ? 1 : 0;
    }
    EXPECT_GT(inked, 10);
    EXPECT_EQ(paintedLine({}, theme), paintedLine({{}, QString(), true}, theme));
    EXPECT_GE(inkAt(paintedLine({{5.0, 5.0}, {}, false}, theme), 20, theme), 0);  // level: no division by nothing
}

}  // namespace chalk::ui::common
