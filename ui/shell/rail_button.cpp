#include "ui/shell/rail_button.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"

#include <QEnterEvent>
#include <QPainter>

namespace chalk::ui::shell {

namespace {

constexpr double kRailWidth = 80;
constexpr double kPageHeight = 58;
constexpr double kClientHeight = 38;
constexpr double kInitialsWidth = 36;
constexpr double kInitialsHeight = 32;
constexpr double kRailIconSide = 22;

}  // namespace

RailButton::RailButton(const common::Look& look, RailButtonKind kind, const QString& text, const QString& icon, QWidget* parent)
    : QAbstractButton(parent), m_look(look), m_kind(kind), m_icon(icon)
{
    setText(text);
    setCheckable(true);
    setFocusPolicy(Qt::TabFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(&look, &common::Look::changed, this, &RailButton::fit);
}

QSize RailButton::sizeHint() const
{
    const double height = m_kind == RailButtonKind::Page ? kPageHeight : kClientHeight;
    return {qRound(kRailWidth), qRound(m_look.theme().scaled(height))};
}

void RailButton::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_kind == RailButtonKind::Page) {
        paintPage(painter);
    } else {
        paintClient(painter);
    }
}

void RailButton::paintPage(QPainter& painter) const
{
    const common::Theme& theme = m_look.theme();
    const QRectF ground = QRectF(rect()).adjusted(7, 3, -7, -3);
    painter.setPen(hasFocus() ? QPen(theme.focus.lighter(130), 2) : QPen(Qt::NoPen));
    painter.setBrush(isChecked() || underMouse() ? QBrush(theme.rail2) : QBrush(Qt::NoBrush));
    painter.drawRoundedRect(ground, 8, 8);
    if (isChecked()) {
        const double markHeight = theme.scaled(32);
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.chalk);
        painter.drawRoundedRect(QRectF(-3, (height() - markHeight) / 2, 7, markHeight), 3, 3);
    }
    const QColor ink = isChecked() ? theme.railOn : theme.railInk;
    const double side = theme.scaled(kRailIconSide);
    const double textHeight = theme.scaled(14);
    const double top = (height() - side - theme.scaled(4) - textHeight) / 2;
    common::paintIcon(painter, QRectF((width() - side) / 2, top, side, side), m_icon, ink, theme);
    QFont font = theme.font(12, isChecked() ? QFont::DemiBold : QFont::Medium);
    for (double px = 12; px > 9 && QFontMetricsF(font).horizontalAdvance(text()) > width() - 6; px -= 0.5) {
        font = theme.font(px, isChecked() ? QFont::DemiBold : QFont::Medium);  // the rail keeps its width at any text size
    }
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(QRectF(0, top + side + theme.scaled(4), width(), textHeight), Qt::AlignCenter | Qt::TextDontClip, text());
}

void RailButton::paintClient(QPainter& painter) const
{
    const common::Theme& theme = m_look.theme();
    const QSizeF size(theme.scaled(kInitialsWidth), theme.scaled(kInitialsHeight));
    const QRectF ground(QPointF((width() - size.width()) / 2, (height() - size.height()) / 2), size);
    painter.setPen(hasFocus() ? QPen(theme.focus.lighter(130), 2) : underMouse() ? QPen(theme.railInk, 1) : QPen(Qt::NoPen));
    painter.setBrush(isChecked() ? theme.chalk : theme.rail2);
    painter.drawRoundedRect(ground, 6, 6);
    painter.setFont(theme.font(12, QFont::DemiBold));
    painter.setPen(isChecked() ? theme.chalkInk : theme.railInk);
    painter.drawText(ground, Qt::AlignCenter, text());
}

void RailButton::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void RailButton::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

void RailButton::fit()
{
    updateGeometry();
    update();
}

}  // namespace chalk::ui::shell
