#include "ui/shell/overlay.h"

#include "ui/common/look.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

namespace chalk::ui::shell {

Overlay::Overlay(const common::Look& look, QWidget* window) : QWidget(window), m_look(look)
{
    hide();
    setFocusPolicy(Qt::StrongFocus);
    window->installEventFilter(this);
    connect(&look, &common::Look::changed, this, &Overlay::fit);
}

void Overlay::open()
{
    if (!isVisible()) {
        m_focusBefore = window()->focusWidget();
    }
    fit();
    show();
    raise();
    focusTarget()->setFocus(Qt::PopupFocusReason);
}

void Overlay::close()
{
    if (isHidden()) {
        return;
    }
    hide();
    if (m_focusBefore != nullptr) {
        m_focusBefore->setFocus(Qt::PopupFocusReason);
    }
    Q_EMIT closed();
}

void Overlay::fit()
{
    setGeometry(parentWidget()->rect());
    layCard();
    update();
}

void Overlay::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme.ctl, 1));
    painter.setBrush(theme.raised);
    painter.drawRoundedRect(QRectF(cardRect()).adjusted(0.5, 0.5, -0.5, -0.5), 10, 10);
}

void Overlay::mousePressEvent(QMouseEvent* event)
{
    if (!cardRect().contains(event->position().toPoint())) {
        close();
    }
}

void Overlay::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape) {
        close();
        return;
    }
    QWidget::keyPressEvent(event);
}

bool Overlay::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == parentWidget() && event->type() == QEvent::Resize && isVisible()) {
        fit();
    }
    return QWidget::eventFilter(watched, event);
}

bool Overlay::focusNextPrevChild(bool /*next*/)
{
    return true;  // Tab stays on the card
}

}  // namespace chalk::ui::shell
