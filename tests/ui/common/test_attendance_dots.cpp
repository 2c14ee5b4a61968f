#include "ui/common/attendance_dots.h"
#include "ui/common/look.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

namespace chalk::ui::common {

namespace {

constexpr Attendance kCame = Attendance::Came;
constexpr Attendance kMissed = Attendance::Missed;

/// The columns of 12 px in which the first pixel row of a dot is filled.
std::vector<bool> filledColumns(const AttendanceView& view, int width, const Theme& theme)
{
    QImage image(width, 20, QImage::Format_RGB32);
    image.fill(theme.surface);
    QPainter painter(&image);
    paintAttendance(painter, QRectF(0, 0, width, 20), view, theme);
    painter.end();
    std::vector<bool> filled;
    for (int x = 4; x < width; x += 12) {
        filled.push_back(image.pixelColor(x, 8) == theme.attDot);
    }
    return filled;
}

}  // namespace

TEST(AttendanceDots, ShowTheLatestThatFit)
{
    const Theme theme = Look().theme();
    const AttendanceView view{{kCame, kCame, kMissed, kCame, kMissed}};
    EXPECT_EQ(filledColumns(view, 60, theme), (std::vector<bool>{true, true, false, true, false}));
    EXPECT_EQ(filledColumns(view, 34, theme), (std::vector<bool>{false, true, false}));
    EXPECT_DOUBLE_EQ(attendanceWidth(12, theme), 141);
}

TEST(AttendanceDots, SayThemselvesInWords)
{
    EXPECT_EQ(attendanceText({}).toStdString(), "no sessions yet");
    EXPECT_EQ(attendanceText({{Attendance::None, kCame, kCame}}).toStdString(), "came to 2 of 2");
    EXPECT_EQ(attendanceText({{kCame, kMissed, Attendance::CancelledInTime, kCame}}).toStdString(),
              "came to 2 of 4, missed 1, cancelled 1 in time");
}

}  // namespace chalk::ui::common
