#include "ui/common/plain_typing.h"

#include <QKeyEvent>

namespace chalk::ui::common {

bool isPlainTyping(const QKeyEvent& key)
{
    const bool isPlain = (key.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    return isPlain && !key.text().isEmpty() && key.text().front().isPrint();
}

}  // namespace chalk::ui::common
