#include "ui/roster/menu_button.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"

#include <QFontMetricsF>
#include <QMenu>
#include <QPainter>

#include <cmath>

namespace chalk::ui::roster {

namespace {

constexpr double kMenuButtonHeight = 32;
constexpr double kMenuButtonPadding = 8;
constexpr double kMenuArrowSide = 14;
constexpr double kMenuArrowGap = 4;

}  // namespace

MenuButton::MenuButton(const common::Look& look, QWidget* parent) : QAbstractButton(parent), m_look(look)
{
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(this, &QAbstractButton::clicked, this, &MenuButton::openMenu);
    connect(&look, &common::Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

QSize MenuButton::sizeHint() const
{
    const common::Theme& theme = m_look.theme();
    const double text = QFontMetricsF(theme.font(common::TextStyle::Small)).horizontalAdvance(this->text());
    return {static_cast<int>(std::ceil(text + theme.scaled(2 * kMenuButtonPadding + kMenuArrowGap + kMenuArrowSide))),
            qRound(theme.scaled(kMenuButtonHeight))};
}

void MenuButton::openMenu()
{
    if (m_menu != nullptr) {
        const QSize size = m_menu->sizeHint();
        m_menu->popup(mapToGlobal(QPoint(width() - size.width(), height() + 2)));
    }
}

void MenuButton::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void MenuButton::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

void MenuButton::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(hasFocus() ? QPen(theme.focus, 2) : QPen(Qt::NoPen));
    painter.setBrush(underMouse() ? QBrush(theme.hover) : QBrush(Qt::NoBrush));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 6, 6);
    const double side = theme.scaled(kMenuArrowSide);
    const double right = width() - theme.scaled(kMenuButtonPadding);
    common::paintIcon(painter, QRectF(right - side, (height() - side) / 2, side, side), QStringLiteral("down"), theme.ink2, theme);
    painter.setFont(theme.font(common::TextStyle::Small));
    painter.setPen(theme.ink2);
    painter.drawText(QRectF(0, 0, right - side - theme.scaled(kMenuArrowGap), height()), Qt::AlignRight | Qt::AlignVCenter, text());
}

}  // namespace chalk::ui::roster
