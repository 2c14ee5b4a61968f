#pragma once

#include <QTimer>

namespace chalk::ui::onboarding {

/// How long the typing rests before it is kept.
inline constexpr int kTypingPauseMs = 700;

/// A timer that runs out once typing rests: started anew at every key.
[[nodiscard]] inline QTimer* typingPause(QObject* parent)
{
    auto* timer = new QTimer(parent);
    timer->setSingleShot(true);
    timer->setInterval(kTypingPauseMs);
    return timer;
}

}  // namespace chalk::ui::onboarding
