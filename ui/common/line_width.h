#pragma once

#include "ui/common/prose.h"

#include <QFont>
#include <QFontMetricsF>

namespace chalk::ui::common {

inline constexpr double kBoldAllowance = 1.06;  ///< bold words are wider than they are measured

/// How wide one line of rich text is at most, in pixels.
[[nodiscard]] inline double lineWidth(const QString& html, const QFont& font)
{
    return QFontMetricsF(font).horizontalAdvance(plainText(html)) * kBoldAllowance;
}

}  // namespace chalk::ui::common
