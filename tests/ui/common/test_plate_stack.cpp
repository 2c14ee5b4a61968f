#include "ui/common/look.h"
#include "ui/common/plate_stack.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

namespace chalk::ui::common {

namespace {

PlateStackView platesOf(std::initializer_list<int> centis, base::MassUnit unit = base::MassUnit::Kilogram)
{
    PlateStackView view;
    view.unit = unit;
    for (const int centi : centis) {
        view.plates.push_back(base::Load::fromCenti(centi));
    }
    return view;
}

}  // namespace

TEST(PlateStack, SaysItsPlates)
{
    EXPECT_EQ(plateStackText(platesOf({2500, 250, 125})).toStdString(), "25 + 2.5 + 1.25");
    EXPECT_EQ(plateStackText({}).toStdString(), "no plates");
}

TEST(PlateStack, GrowsWithEachPlateAndWithTheText)
{
    Look look;
    double last = plateStackSize({}, look.theme()).width();
    for (const auto& view : {platesOf({2500}), platesOf({2500, 1500}), platesOf({2500, 1500, 125})}) {
        const double width = plateStackSize(view, look.theme()).width();
        EXPECT_GT(width, last + 4);
        last = width;
    }
    look.setTextPercent(150);
    EXPECT_NEAR(plateStackSize(platesOf({2500}), look.theme()).height(), 78, 0.01);
}

TEST(PlateStack, NeverPaintsOutsideItsRectangle)
{
    const Theme theme = Look().theme();
    const QRectF room(20, 10, 90, 26);
    QImage image(200, 60, QImage::Format_RGB32);
    image.fill(theme.surface);
    QPainter painter(&image);
    paintPlateStack(painter, room, platesOf({2500, 2500, 2000, 1500, 1000, 500, 250, 125, 50}), theme);
    painter.end();
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (!room.adjusted(-1, -1, 1, 1).contains(x, y)) {
                ASSERT_EQ(image.pixelColor(x, y), theme.surface) << x << ", " << y;
            }
        }
    }
}

}  // namespace chalk::ui::common
