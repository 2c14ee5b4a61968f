#pragma once

#include "ui/common/theme.h"

#include <QRectF>

#include <vector>

class QPainter;

namespace chalk::ui::common {

/// What became of one planned session; None is a place before the first one or with nothing planned.
enum class Attendance : std::uint8_t { None, Came, CancelledInTime, Missed };

/// The last sessions, oldest first.
struct AttendanceView {
    std::vector<Attendance> sessions;

    bool operator==(const AttendanceView&) const = default;
};

/// The width of `count` dots.
[[nodiscard]] double attendanceWidth(int count, const Theme& theme);
/// Draws the latest of them that fit into `rect`, from its left edge: filled came, outline cancelled in time, crossed missed, dot none.
void paintAttendance(QPainter& painter, const QRectF& rect, const AttendanceView& view, const Theme& theme);
/// `10 of 12 came, 1 missed, 1 cancelled in time`.
[[nodiscard]] QString attendanceText(const AttendanceView& view);

}  // namespace chalk::ui::common
