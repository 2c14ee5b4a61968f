#include "ui/common/chip.h"

#include "ui/common/look.h"

#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace chalk::ui::common {

namespace {

constexpr double kChipHeight = 32;
constexpr double kChipPadding = 12;
constexpr double kChipGap = 6;

// Measured in the weight that it has when it is on, so that nothing moves when it goes on or off.
QFont chipFont(const Theme& theme, bool isOn)
{
    return theme.font(13, isOn ? QFont::DemiBold : QFont::Medium);
}

}  // namespace

Chip::Chip(const Look& look, const QString& text, QWidget* parent) : QAbstractButton(parent), m_look(look)
{
    setText(text);
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(&look, &Look::changed, this, &Chip::fit);
}

void Chip::setCount(std::optional<int> count)
{
    if (m_count != count) {
        m_count = count;
        setAccessibleDescription(count ? tr("%n client(s)", nullptr, *count) : QString());
        fit();
    }
}

QSize Chip::sizeHint() const
{
    const Theme& theme = m_look.theme();
    double width = 2 * theme.scaled(kChipPadding) + QFontMetricsF(chipFont(theme, true)).horizontalAdvance(text());
    if (m_count) {
        width += theme.scaled(kChipGap) + QFontMetricsF(theme.font(TextStyle::Micro)).horizontalAdvance(QString::number(*m_count));
    }
    return {static_cast<int>(std::ceil(width)), qRound(theme.scaled(kChipHeight))};
}

void Chip::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    if (isChecked() || underMouse()) {
        painter.setPen(isChecked() ? QPen(theme.line2, 1) : QPen(Qt::NoPen));
        painter.setBrush(isChecked() ? theme.raised : theme.hover);
        painter.drawRoundedRect(frame, 6, 6);
    }
    if (hasFocus()) {
        painter.setPen(QPen(theme.focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(frame.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
    }
    const double left = theme.scaled(kChipPadding);
    const QFont font = chipFont(theme, isChecked());
    painter.setFont(font);
    painter.setPen(isChecked() ? theme.ink : theme.ink2);
    painter.drawText(QRectF(left, 0, width() - left, height()), Qt::AlignLeft | Qt::AlignVCenter, text());
    if (m_count) {
        const double right = width() - theme.scaled(kChipPadding);
        painter.setFont(theme.font(TextStyle::Micro));
        painter.setPen(theme.ink3);
        painter.drawText(QRectF(0, 0, right, height()), Qt::AlignRight | Qt::AlignVCenter, QString::number(*m_count));
    }
}

void Chip::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void Chip::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

void Chip::fit()
{
    updateGeometry();
    update();
}

}  // namespace chalk::ui::common
