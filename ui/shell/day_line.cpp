#include "ui/shell/day_line.h"

#include "ui/common/look.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPolygonF>
#include <QToolTip>

#include <algorithm>

namespace chalk::ui::shell {

namespace {

constexpr double kLineMargin = 6;
constexpr double kAxisAt = 26.0 / 41;      // of the height
constexpr double kRowsTop = 4;
constexpr double kMostBarHeight = 7;
constexpr double kHourLabelWidth = 30;

QColor halfWay(const QColor& a, const QColor& b)
{
    return QColor::fromRgbF((a.redF() + b.redF()) / 2, (a.greenF() + b.greenF()) / 2, (a.blueF() + b.blueF()) / 2);
}

}  // namespace

DayLine::DayLine(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setMouseTracking(true);
    connect(&look, &common::Look::changed, this, qOverload<>(&QWidget::update));
}

void DayLine::setDay(const LedgeDay& day)
{
    m_day = day;
    QStringList bars;
    for (const LedgeBar& bar : day.bars) {
        bars.append(barText(bar));
    }
    setAccessibleName(tr("Sessions of today"));
    setAccessibleDescription(bars.join(QStringLiteral("; ")));
    update();
}

double DayLine::xOf(double minute) const
{
    const double first = m_day.firstHour * 60 - 30;
    const double last = m_day.lastHour * 60;
    return kLineMargin + (std::clamp(minute, first, last) - first) / (last - first) * (width() - 2 * kLineMargin);
}

double DayLine::axisY() const
{
    return height() * kAxisAt;
}

QRectF DayLine::barRect(const LedgeBar& bar) const
{
    const double pitch = (axisY() - kRowsTop - 1) / std::max(2, m_day.rows);
    const double barHeight = std::min(m_look.theme().scaled(kMostBarHeight), pitch - 1.5);
    const double left = xOf(bar.startMinute) + 1;
    return {left, kRowsTop + bar.row * pitch, std::max(4.0, xOf(bar.endMinute) - left - 2), barHeight};
}

const LedgeBar* DayLine::barAt(const QPointF& point) const
{
    for (const LedgeBar& bar : m_day.bars) {
        if (barRect(bar).adjusted(-1, -2, 1, 3).contains(point)) {
            return &bar;
        }
    }
    return nullptr;
}

void DayLine::paintHours(QPainter& painter) const
{
    const common::Theme& theme = m_look.theme();
    painter.setPen(QPen(theme.railLine, 2, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(2, axisY()), QPointF(width() - 2, axisY()));
    painter.setFont(theme.font(12, QFont::Normal));
    const double perHour = xOf(m_day.firstHour * 60 + 60) - xOf(m_day.firstHour * 60);
    const int every = perHour < theme.scaled(14) ? 3 : 2;
    for (int hour = m_day.firstHour; hour <= m_day.lastHour; ++hour) {
        const double x = xOf(hour * 60);
        painter.setPen(QPen(theme.railLine, 1));
        painter.drawLine(QPointF(x, axisY() - 2.5), QPointF(x, axisY()));
        if ((hour - m_day.firstHour) % every == 0 && x + kHourLabelWidth / 4 < width()) {
            painter.setPen(theme.railInk);
            painter.drawText(QRectF(x - kHourLabelWidth / 2, axisY() + 1, kHourLabelWidth, height() - axisY() - 1), Qt::AlignCenter,
                             QString::number(hour));
        }
    }
}

void DayLine::paintBars(QPainter& painter) const
{
    const common::Theme& theme = m_look.theme();
    for (const LedgeBar& bar : m_day.bars) {
        const QRectF rect = barRect(bar);
        QColor colour = theme.railInk;
        QBrush brush(Qt::NoBrush);
        if (bar.state == BarState::Over) {
            colour = halfWay(theme.rail, theme.railInk);
            brush = colour;
        } else if (bar.state == BarState::Present) {
            colour = theme.chalk;
            brush = colour;
        }
        painter.setPen(QPen(colour, 1.3));
        painter.setBrush(brush);
        painter.drawRoundedRect(rect, rect.height() / 2, rect.height() / 2);
    }
}

void DayLine::paintNow(QPainter& painter) const
{
    const common::Theme& theme = m_look.theme();
    if (m_day.nowMinute < m_day.firstHour * 60 - 30 || m_day.nowMinute > m_day.lastHour * 60) {
        return;
    }
    const double x = xOf(m_day.nowMinute);
    painter.setPen(QPen(theme.chalk, 1.6));
    painter.drawLine(QPointF(x, 2), QPointF(x, axisY()));
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.chalk);
    painter.drawPolygon(QPolygonF({{x - 4, 0}, {x + 4, 0}, {x, 5}}));
}

void DayLine::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintHours(painter);
    paintBars(painter);
    paintNow(painter);
}

void DayLine::mouseReleaseEvent(QMouseEvent* event)
{
    if (const LedgeBar* bar = barAt(event->position()); bar != nullptr && event->button() == Qt::LeftButton) {
        Q_EMIT sessionChosen(bar->first);
    }
}

void DayLine::mouseMoveEvent(QMouseEvent* event)
{
    setCursor(barAt(event->position()) != nullptr ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

bool DayLine::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const LedgeBar* bar = barAt(help->pos());
        QToolTip::showText(help->globalPos(), bar == nullptr ? QString() : barText(*bar), this);
        return true;
    }
    return QWidget::event(event);
}

}  // namespace chalk::ui::shell
