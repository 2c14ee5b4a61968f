#include "ui/shell/typing_guard.h"

#include <QApplication>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTextDocument>
#include <QTextEdit>

namespace chalk::ui::shell {

bool isInTheMiddle(const QWidget* filter)
{
    if (QApplication::activeModalWidget() != nullptr || QApplication::activePopupWidget() != nullptr) {
        return true;
    }
    const QWidget* focus = QApplication::focusWidget();
    if (focus == nullptr || focus == filter) {
        return false;
    }
    if (const auto* line = qobject_cast<const QLineEdit*>(focus)) {
        return line->isModified() && !line->isReadOnly();
    }
    if (const auto* text = qobject_cast<const QPlainTextEdit*>(focus)) {
        return text->document()->isModified() && !text->isReadOnly();
    }
    if (const auto* text = qobject_cast<const QTextEdit*>(focus)) {
        return text->document()->isModified() && !text->isReadOnly();
    }
    return false;
}

}  // namespace chalk::ui::shell
