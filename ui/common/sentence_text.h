#pragma once

#include <QString>

namespace chalk::ui::common {

/// What the store answered, where it stands alone in a window: with a full stop, unless it has its end already. Messages of the store have none, so that
/// others can hold them.
[[nodiscard]] inline QString sentenceText(const QString& message)
{
    const QString text = message.trimmed();
    return text.isEmpty() || QStringLiteral(".!?\u2026").contains(text.back()) ? text : QString(text + QLatin1Char('.'));
}

}  // namespace chalk::ui::common
