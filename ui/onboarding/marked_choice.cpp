#include "ui/onboarding/marked_choice.h"

#include "ui/common/segmented_choice.h"

#include <QKeyEvent>
#include <QToolButton>

#include <algorithm>

namespace chalk::ui::onboarding {

MarkedChoice::MarkedChoice(common::SegmentedChoice& choice) : QObject(&choice), m_choice(choice)
{
    for (QToolButton* button : choice.findChildren<QToolButton*>()) {
        button->installEventFilter(this);  // runs before the choice's own
    }
}

void MarkedChoice::takeFocus()
{
    m_choice.findChildren<QToolButton*>().at(std::max(0, m_choice.chosen()))->setFocus(Qt::TabFocusReason);
}

bool MarkedChoice::eventFilter(QObject* watched, QEvent* event)
{
    const bool isKey = event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress;
    if (!isKey || (static_cast<QKeyEvent*>(event)->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier) {
        return QObject::eventFilter(watched, event);  // Alt and the arrows go through the steps
    }
    if (event->type() == QEvent::ShortcutOverride) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down || (key >= Qt::Key_1 && key <= Qt::Key_3)) {
            event->accept();
            return true;
        }
    }
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key >= Qt::Key_1 && key <= Qt::Key_3) {
        const auto buttons = m_choice.findChildren<QToolButton*>();
        if (m_choice.chosen() != key - Qt::Key_1) {
            buttons.at(key - Qt::Key_1)->click();
        }
        Q_EMIT moveAsked(1);
        return true;
    }
    if (key == Qt::Key_Up || key == Qt::Key_Down) {
        Q_EMIT moveAsked(key == Qt::Key_Down ? 1 : -1);
        return true;
    }
    return QObject::eventFilter(watched, event);
}

}  // namespace chalk::ui::onboarding
