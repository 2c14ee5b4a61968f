#include "ui/trends/ghost_chart.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <array>

namespace chalk::ui::trends {

namespace {

using common::TextStyle;
using common::Theme;

constexpr double kGhostWidth = 280;
constexpr double kGhostHeight = 76;
constexpr double kWordsWidth = 340;
constexpr double kGhostGap = 16;
constexpr std::array kGhostBars{0.28, 0.40, 0.50, 0.56, 0.64, 0.42, 0.70, 0.78, 0.84, 0.92, 1.0};
constexpr double kGhostBarWidth = 15;

QPen ghostPen(const Theme& theme)
{
    QPen pen(theme.ctl, 1.75, Qt::CustomDashLine);
    pen.setDashPattern({2, 2.2});
    return pen;
}

void paintGhostBars(QPainter& painter, const QRectF& box, const Theme& theme)
{
    const double step = box.width() / static_cast<double>(kGhostBars.size());
    for (std::size_t i = 0; i < kGhostBars.size(); ++i) {
        const double height = kGhostBars[i] * box.height();
        const QRectF bar(box.left() + (static_cast<double>(i) + 0.5) * step - kGhostBarWidth / 2, box.bottom() - height, kGhostBarWidth, height);
        painter.setPen(i == 0 ? QPen(Qt::NoPen) : ghostPen(theme));
        painter.setBrush(i == 0 ? QBrush(theme.ink3) : QBrush(Qt::NoBrush));
        painter.drawRoundedRect(bar, 2, 2);
    }
}

QPainterPath ghostPath(const QRectF& box, GhostShape shape)
{
    QPainterPath path(QPointF(box.left() + 10, box.bottom() - 14));
    const auto at = [&box](double x, double y) { return QPointF(box.left() + x * box.width(), box.bottom() - y * box.height()); };
    switch (shape) {
    case GhostShape::Bars:
    case GhostShape::Line:
        path.cubicTo(at(0.4, 0.45), at(0.6, 0.5), at(0.96, 0.85));
        break;
    case GhostShape::Steps:
        for (int step = 1; step <= 3; ++step) {
            path.lineTo(at(0.25 * step, 0.18 + 0.2 * (step - 1)));
            path.lineTo(at(0.25 * step, 0.18 + 0.2 * step));
        }
        path.lineTo(at(0.96, 0.78));
        break;
    case GhostShape::Wave:
        path.cubicTo(at(0.2, 0.75), at(0.35, 0.15), at(0.55, 0.4));
        path.cubicTo(at(0.7, 0.6), at(0.85, 0.6), at(0.96, 0.4));
        break;
    }
    return path;
}

void paintGhostShape(QPainter& painter, const QRectF& box, GhostShape shape, const Theme& theme)
{
    painter.setPen(QPen(theme.ctl, 1.5));
    painter.drawLine(box.bottomLeft(), box.bottomRight());
    if (shape == GhostShape::Bars) {
        paintGhostBars(painter, box.adjusted(8, 0, -8, -1), theme);
        return;
    }
    const QPainterPath path = ghostPath(box, shape);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(ghostPen(theme));
    painter.drawPath(path);
    if (shape != GhostShape::Wave) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.ink3);
        painter.drawEllipse(path.elementAt(0), 4.5, 4.5);
    }
}

}  // namespace

HotSpots paintGhost(QPainter& painter, const QRectF& area, GhostShape shape, const GapWords& words, const Theme& theme)
{
    const double width = std::min(theme.scaled(kWordsWidth), area.width());
    const QFontMetricsF head(theme.font(TextStyle::Section));
    const QFontMetricsF body(theme.font(TextStyle::Small));
    const double headHeight = head.boundingRect(QRectF(0, 0, width, 1000), Qt::AlignHCenter | Qt::TextWordWrap, words.headline).height();
    const double bodyHeight = body.boundingRect(QRectF(0, 0, width, 1000), Qt::AlignHCenter | Qt::TextWordWrap, words.text).height();
    const double texts = headHeight + 4 + bodyHeight;
    const double ghost = std::clamp(area.height() - texts - 2 * kGhostGap, 0.0, theme.scaled(kGhostHeight));
    double top = area.center().y() - (ghost + kGhostGap + texts) / 2;
    const double ghostWidth = std::min(theme.scaled(kGhostWidth), area.width());
    if (ghost > theme.scaled(kGhostHeight) / 3) {
        paintGhostShape(painter, QRectF(area.center().x() - ghostWidth / 2, top, ghostWidth, ghost), shape, theme);
        top += ghost + kGhostGap;
    }
    const double left = area.center().x() - width / 2;
    painter.setFont(theme.font(TextStyle::Section));
    painter.setPen(theme.ink);
    painter.drawText(QRectF(left, top, width, headHeight), Qt::AlignHCenter | Qt::TextWordWrap, words.headline);
    painter.setFont(theme.font(TextStyle::Small));
    painter.setPen(theme.ink2);
    painter.drawText(QRectF(left, top + headHeight + 4, width, bodyHeight), Qt::AlignHCenter | Qt::TextWordWrap, words.text);
    return {};
}

}  // namespace chalk::ui::trends
