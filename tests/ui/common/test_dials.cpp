#include "ui/common/dials.h"
#include "ui/common/look.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

namespace chalk::ui::common {

TEST(Dials, OnlyTheNumberThatMovesIsFilled)
{
    const Theme theme = Look().theme();
    DialsView view{progression::Stage::RepBuild,
                   {{QStringLiteral("Load"), QStringLiteral("77.5 kg")},
                    {QStringLiteral("Reps"), QStringLiteral("7 → 8"), true},
                    {QStringLiteral("Sets"), QStringLiteral("3")},
                    {QStringLiteral("Rest"), QStringLiteral("2:30")}}};
    QImage image(400, 50, QImage::Format_RGB32);
    image.fill(theme.surface);
    QPainter painter(&image);
    paintDials(painter, QRectF(0, 0, 400, 50), view, theme);
    painter.end();
    const QColor fill = theme.stage(progression::Stage::RepBuild);
    EXPECT_EQ(image.pixelColor(105, 6), fill);
    EXPECT_EQ(image.pixelColor(195, 44), fill);
    EXPECT_EQ(image.pixelColor(50, 6), theme.raised);
    EXPECT_EQ(image.pixelColor(250, 6), theme.raised);
    EXPECT_EQ(image.pixelColor(350, 6), theme.raised);
}

TEST(Dials, ALongValueIsDrawnSmallerNotCut)
{
    const Theme theme = Look().theme();
    DialsView view{progression::Stage::LoadBuild, {{QStringLiteral("Load"), QStringLiteral("2 × 102.5 kg")}}};
    QImage image(64, 50, QImage::Format_RGB32);
    image.fill(theme.raised);
    QPainter painter(&image);
    paintDials(painter, QRectF(0, 0, 64, 50), view, theme);
    painter.end();
    for (int y = 24; y < 46; ++y) {  // nothing of the value at the padding of either side
        EXPECT_EQ(image.pixelColor(2, y), theme.raised) << y;
        EXPECT_EQ(image.pixelColor(61, y), theme.raised) << y;
    }
    paintDials(painter, QRectF(), {}, theme);  // no dials: nothing to draw, nothing to divide by
}

}  // namespace chalk::ui::common
