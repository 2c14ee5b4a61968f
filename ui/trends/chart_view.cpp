#include "ui/trends/chart_view.h"

#include "ui/common/look.h"

#include <QHelpEvent>
#include <QMarginsF>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

namespace chalk::ui::trends {

namespace {

constexpr double kFocusRound = 4;
constexpr QMarginsF kRoomForFocus{6, 4, 6, 4};

}  // namespace

ChartView::ChartView(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&look, &common::Look::changed, this, qOverload<>(&QWidget::update));
}

void ChartView::setChart(ChartPaint paint, const QString& words)
{
    m_paint = std::move(paint);
    setAccessibleName(words);
    update();
}

bool ChartView::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip) {
        return QWidget::event(event);
    }
    const auto* help = static_cast<QHelpEvent*>(event);
    const int spot = spotAt(help->pos());
    if (spot < 0) {
        QToolTip::hideText();
        event->ignore();
    } else {
        const HotSpot& at = m_spots[static_cast<std::size_t>(spot)];
        QToolTip::showText(help->globalPos(), at.words, this, at.area.toAlignedRect());
    }
    return true;
}

void ChartView::mousePressEvent(QMouseEvent* event)
{
    if (const int spot = spotAt(event->position()); spot >= 0 && event->button() == Qt::LeftButton) {
        Q_EMIT spotChosen(spot);
    }
}

void ChartView::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_paint) {
        m_spots = m_paint(painter, QRectF(rect()).marginsRemoved(kRoomForFocus), m_look.theme());
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_look.theme().focus, 2));
        painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), kFocusRound, kFocusRound);
    }
}

int ChartView::spotAt(const QPointF& place) const
{
    for (std::size_t i = 0; i < m_spots.size(); ++i) {
        if (m_spots[i].area.contains(place)) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

}  // namespace chalk::ui::trends
