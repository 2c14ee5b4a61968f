#include "ui/floor/next_time_bar.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QTimer>

namespace chalk::ui::floor {

namespace {

constexpr int kRestBeforeSpeakingMs = 600;

}  // namespace

NextTimeBar::NextTimeBar(const common::Look& look, QWidget* parent)
    : QWidget(parent), m_look(look), m_icon(new QLabel(this)), m_text(new QLabel(this)), m_rest(new QTimer(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(12, 9, 12, 9);
    row->setSpacing(10);
    row->addWidget(m_icon, 0, Qt::AlignTop);
    row->addWidget(m_text, 1);
    m_text->setWordWrap(true);
    m_text->setTextFormat(Qt::RichText);
    m_rest->setSingleShot(true);
    m_rest->setInterval(kRestBeforeSpeakingMs);
    connect(m_rest, &QTimer::timeout, this, &NextTimeBar::announce);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&look, &common::Look::changed, this, &NextTimeBar::dress);
    dress();
}

void NextTimeBar::setMessage(const common::BannerMessage& message)
{
    if (message == m_message) {
        return;
    }
    m_message = message;
    setAccessibleName(message.lead + QLatin1Char(' ') + message.text);
    dress();
    m_rest->start();
}

void NextTimeBar::announce()
{
    if (isVisible()) {
        QAccessibleEvent event(this, QAccessible::Alert);
        QAccessible::updateAccessibility(&event);
    }
}

void NextTimeBar::dress()
{
    const common::Theme& theme = m_look.theme();
    const bool isMuted = m_message.signal == common::Signal::Muted;
    const QColor ink = isMuted ? theme.ink : theme.signal(m_message.signal).ink;
    if (theme.icons != nullptr && !m_message.icon.isEmpty()) {
        m_icon->setPixmap(theme.icons->pixmap(m_message.icon, qRound(theme.scaled(18)), ink, devicePixelRatioF()));
    }
    m_icon->setVisible(!m_message.icon.isEmpty());
    const QString text = QStringLiteral("<b>%1</b> <span style='color:%2'>%3</span>")
                             .arg(m_message.lead.toHtmlEscaped(), (isMuted ? theme.ink2 : theme.ink).name(), m_message.text.toHtmlEscaped());
    m_text->setText(common::proseHtml(text));
    update();
}

void NextTimeBar::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    const bool isMuted = m_message.signal == common::Signal::Muted;
    const common::SignalColours colours = theme.signal(m_message.signal);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(isMuted ? QPen(Qt::NoPen) : QPen(colours.line, 1));
    painter.setBrush(isMuted ? theme.wash : colours.fill);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
}

}  // namespace chalk::ui::floor
