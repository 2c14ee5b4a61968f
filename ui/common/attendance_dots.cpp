#include "ui/common/attendance_dots.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::common {

namespace {

constexpr double kDotSide = 9;
constexpr double kDotPitch = 12;

QString attendanceWords(const char* text)
{
    return QCoreApplication::translate("Attendance", text);
}

/// One dot in the square of kDotSide at the origin.
void paintDot(QPainter& painter, Attendance attendance, const Theme& theme)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::NoBrush);
    switch (attendance) {
    case Attendance::Came:
        painter.setBrush(theme.attDot);
        painter.drawRoundedRect(QRectF(0, 0, kDotSide, kDotSide), 2, 2);
        return;
    case Attendance::CancelledInTime:
        painter.setPen(QPen(theme.ctl, 1));
        painter.drawRoundedRect(QRectF(0.5, 0.5, kDotSide - 1, kDotSide - 1), 2, 2);
        return;
    case Attendance::Missed:
        painter.setPen(QPen(theme.ink2, 1.5));
        painter.drawRoundedRect(QRectF(0.75, 0.75, kDotSide - 1.5, kDotSide - 1.5), 1.5, 1.5);
        painter.drawLine(QPointF(2.6, 2.6), QPointF(kDotSide - 2.6, kDotSide - 2.6));
        painter.drawLine(QPointF(kDotSide - 2.6, 2.6), QPointF(2.6, kDotSide - 2.6));
        return;
    case Attendance::None:
        painter.setBrush(theme.line2);
        painter.drawEllipse(QPointF(kDotSide / 2, kDotSide / 2), 1.2, 1.2);
        return;
    }
}

}  // namespace

double attendanceWidth(int count, const Theme& theme)
{
    return count <= 0 ? 0 : theme.scaled(count * kDotPitch - (kDotPitch - kDotSide));
}

void paintAttendance(QPainter& painter, const QRectF& rect, const AttendanceView& view, const Theme& theme)
{
    const double scale = theme.scaled(1);
    const auto room = static_cast<std::size_t>(std::max(0.0, (rect.width() / scale + kDotPitch - kDotSide) / kDotPitch));
    const std::size_t shown = std::min(room, view.sessions.size());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(rect.left(), rect.center().y() - kDotSide * scale / 2);
    painter.scale(scale, scale);
    for (std::size_t i = view.sessions.size() - shown; i < view.sessions.size(); ++i) {
        paintDot(painter, view.sessions[i], theme);
        painter.translate(kDotPitch, 0);
    }
    painter.restore();
}

QString attendanceText(const AttendanceView& view)
{
    const auto countOf = [&view](Attendance attendance) {
        return static_cast<int>(std::count(view.sessions.begin(), view.sessions.end(), attendance));
    };
    const int planned = static_cast<int>(view.sessions.size()) - countOf(Attendance::None);
    if (planned == 0) {
        return attendanceWords(QT_TRANSLATE_NOOP("Attendance", "no sessions yet"));
    }
    QString text = attendanceWords(QT_TRANSLATE_NOOP("Attendance", "came to %1 of %2")).arg(countOf(Attendance::Came)).arg(planned);
    if (const int missed = countOf(Attendance::Missed); missed > 0) {
        text += attendanceWords(QT_TRANSLATE_NOOP("Attendance", ", missed %1")).arg(missed);
    }
    if (const int cancelled = countOf(Attendance::CancelledInTime); cancelled > 0) {
        text += attendanceWords(QT_TRANSLATE_NOOP("Attendance", ", cancelled %1 in time")).arg(cancelled);
    }
    return text;
}

}  // namespace chalk::ui::common
