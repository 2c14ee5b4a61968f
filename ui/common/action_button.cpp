#include "ui/common/action_button.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/style_sheet.h"
#include "ui/common/tags.h"

#include <QKeyEvent>
#include <QStyleOptionButton>
#include <QStylePainter>

#include <cmath>

namespace chalk::ui::common {

namespace {

constexpr double kButtonGap = 8;

const char* kindKey(ButtonKind kind)
{
    switch (kind) {
    case ButtonKind::Normal:
        return "";
    case ButtonKind::Primary:
        return "primary";
    case ButtonKind::Plain:
        return "plain";
    case ButtonKind::Link:
        return "link";
    case ButtonKind::Danger:
        return "danger";
    }
    return "";
}

const char* sizeKey(ButtonSize size)
{
    switch (size) {
    case ButtonSize::Normal:
        return "";
    case ButtonSize::Small:
        return "small";
    case ButtonSize::Large:
        return "large";
    }
    return "";
}

KeyCapView buttonCap(const QString& keys, ButtonKind kind, bool isEnabled = true)
{
    return {keys, kind == ButtonKind::Primary && isEnabled ? KeyCapGround::Primary : KeyCapGround::Page};
}

}  // namespace

ActionButton::ActionButton(const Look& look, const QString& text, QWidget* parent) : QPushButton(text, parent), m_look(look)
{
    setAutoDefault(false);
    connect(&look, &Look::changed, this, qOverload<>(&QWidget::update));
}

void ActionButton::setIconName(const QString& name)
{
    m_iconName = name;
    updateGeometry();
    update();
}

void ActionButton::setKeyText(const QString& keys)
{
    m_keys = keys;
    updateGeometry();
    update();
}

void ActionButton::setKind(ButtonKind kind)
{
    m_kind = kind;
    setProperty("kind", QLatin1String(kindKey(kind)));
    restyle(*this);
}

void ActionButton::setButtonSize(ButtonSize size)
{
    m_size = size;
    setProperty("sizing", QLatin1String(sizeKey(size)));
    restyle(*this);
}

double ActionButton::iconSide() const
{
    return m_look.theme().scaled(m_size == ButtonSize::Small ? 16 : 18);
}

QSize ActionButton::sizeHint() const
{
    const Theme& theme = m_look.theme();
    double more = 0;
    if (!m_iconName.isEmpty()) {
        more += iconSide() + (text().isEmpty() ? 0 : theme.scaled(kButtonGap));
    }
    if (!m_keys.isEmpty()) {
        more += keyCapWidth(buttonCap(m_keys, m_kind), theme) + theme.scaled(kButtonGap);
    }
    QSize hint = QPushButton::sizeHint();
    if (text().isEmpty()) {  // Qt measures a text of its own where there is none
        hint.setWidth(hint.height());
        return hint;
    }
    return hint + QSize(static_cast<int>(std::ceil(more)), 0);
}

QColor ActionButton::inkColour() const
{
    const Theme& theme = m_look.theme();
    if (!isEnabled()) {
        return theme.ink3;
    }
    switch (m_kind) {
    case ButtonKind::Normal:
        return theme.ink;
    case ButtonKind::Primary:
        return theme.priInk;
    case ButtonKind::Plain:
        return theme.ink2;
    case ButtonKind::Link:
        return theme.link;
    case ButtonKind::Danger:
        return theme.pain;
    }
    return theme.ink;
}

void ActionButton::keyPressEvent(QKeyEvent* event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier) {
        click();
        return;
    }
    QPushButton::keyPressEvent(event);
}

void ActionButton::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = m_look.theme();
    QStylePainter painter(this);
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text.clear();
    painter.drawControl(QStyle::CE_PushButton, option);

    const double textWidth = text().isEmpty() ? 0 : fontMetrics().horizontalAdvance(text(), Qt::TextShowMnemonic);
    const double capWidth = m_keys.isEmpty() ? 0 : keyCapWidth(buttonCap(m_keys, m_kind), theme);
    const double iconWidth = m_iconName.isEmpty() ? 0 : iconSide();
    const double gap = theme.scaled(kButtonGap);
    const double total = iconWidth + (iconWidth > 0 && textWidth > 0 ? gap : 0) + textWidth + (capWidth > 0 ? gap + capWidth : 0);
    double x = (width() - total) / 2;
    if (iconWidth > 0) {
        paintIcon(painter, QRectF(x, (height() - iconWidth) / 2.0, iconWidth, iconWidth), m_iconName, inkColour(), theme);
        x += iconWidth + (textWidth > 0 ? gap : 0);
    }
    painter.setPen(inkColour());
    painter.drawText(QRectF(x, 0, textWidth + 1, height()), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextHideMnemonic, text());
    if (capWidth > 0) {
        paintKeyCap(painter, QRectF(x + textWidth + gap, 0, capWidth, height()), buttonCap(m_keys, m_kind, isEnabled()), theme);
    }
}

}  // namespace chalk::ui::common
