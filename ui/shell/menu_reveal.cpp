#include "ui/shell/menu_reveal.h"

#include <QAction>
#include <QApplication>
#include <QKeyEvent>
#include <QMenuBar>
#include <QTimer>

namespace chalk::ui::shell {

MenuReveal::MenuReveal(QMenuBar* bar) : QObject(bar), m_bar(bar)
{
    bar->hide();
    qApp->installEventFilter(this);
}

bool MenuReveal::isForOurWindow(QObject* watched) const
{
    const auto* widget = qobject_cast<QWidget*>(watched);
    return widget != nullptr && widget->window() == m_bar->window();
}

bool MenuReveal::eventFilter(QObject* watched, QEvent* event)
{
    // A key that is a shortcut, such as the 2 of Alt+2, arrives as an override alone and never as a key press.
    const bool isDown = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
    if ((isDown || event->type() == QEvent::KeyRelease) && isForOurWindow(watched)) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (isDown) {
            m_isAltAlone = key == Qt::Key_Alt;
            if (key == Qt::Key_Escape && m_bar->isVisible()) {
                m_bar->hide();
            }
        } else if (key == Qt::Key_Alt && m_isAltAlone) {
            m_isAltAlone = false;
            toggle();
            return true;
        }
    } else if (event->type() == QEvent::MouseButtonPress || event->type() == QEvent::WindowDeactivate) {
        m_isAltAlone = false;
    } else if (event->type() == QEvent::FocusOut && watched == m_bar) {
        // Menus that open take the focus as well, so it is looked at once that has happened.
        QTimer::singleShot(0, this, [this] {
            if (!m_bar->hasFocus() && QApplication::activePopupWidget() == nullptr) {
                m_bar->hide();
            }
        });
    }
    return QObject::eventFilter(watched, event);
}

void MenuReveal::toggle()
{
    if (m_bar->isVisible()) {
        m_bar->hide();
        return;
    }
    m_bar->show();
    m_bar->setFocus(Qt::MenuBarFocusReason);
    if (!m_bar->actions().isEmpty()) {
        m_bar->setActiveAction(m_bar->actions().constFirst());
    }
}

}  // namespace chalk::ui::shell
