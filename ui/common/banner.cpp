#include "ui/common/banner.h"

#include "ui/common/action_button.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

namespace chalk::ui::common {

Banner::Banner(const Look& look, QWidget* parent)
    : QWidget(parent), m_look(look), m_icon(new QLabel(this)), m_text(new QLabel(this)), m_row(new QHBoxLayout(this))
{
    m_text->setWordWrap(true);
    m_text->setTextFormat(Qt::RichText);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_row->addWidget(m_icon, 0, Qt::AlignVCenter);
    m_row->addWidget(m_text, 1);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&look, &Look::changed, this, &Banner::dress);
    dress();
}

void Banner::setMessage(const BannerMessage& message)
{
    if (message == m_message) {
        return;
    }
    m_message = message;
    setAccessibleName(message.lead + QLatin1Char(' ') + message.text);
    dress();
    announce();
}

ActionButton* Banner::addButton(const QString& text)
{
    auto* button = new ActionButton(m_look, text, this);
    button->setKind(ButtonKind::Link);
    button->setButtonSize(ButtonSize::Small);
    m_row->addWidget(button, 0, Qt::AlignVCenter);
    return button;
}

void Banner::dress()
{
    const Theme& theme = m_look.theme();
    const int side = qRound(theme.scaled(20));
    m_row->setContentsMargins(qRound(theme.scaled(14)), qRound(theme.scaled(6)), qRound(theme.scaled(14)), qRound(theme.scaled(6)));
    m_text->setContentsMargins(0, qRound(theme.scaled(3)), 0, 0);  // the lines of prose have their leading below
    m_row->setSpacing(qRound(theme.scaled(12)));
    if (theme.icons != nullptr && !m_message.icon.isEmpty()) {
        m_icon->setPixmap(theme.icons->pixmap(m_message.icon, side, theme.signal(m_message.signal).ink, devicePixelRatioF()));
    }
    m_icon->setVisible(!m_message.icon.isEmpty());
    const QString lead = m_message.lead.isEmpty() ? QString() : QStringLiteral("<b>%1</b> ").arg(m_message.lead.toHtmlEscaped());
    m_text->setText(proseHtml(lead + m_message.text.toHtmlEscaped()));
    update();
}

void Banner::announce()
{
    if (isVisible()) {
        QAccessibleEvent event(this, QAccessible::Alert);
        QAccessible::updateAccessibility(&event);
    }
}

void Banner::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    announce();
}

void Banner::paintEvent(QPaintEvent* /*event*/)
{
    const SignalColours colours = m_look.theme().signal(m_message.signal);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colours.line, 1));
    painter.setBrush(colours.fill);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 8, 8);
}

}  // namespace chalk::ui::common
