#pragma once

#include "core/screens/pattern_screen.h"
#include "core/screens/screen_catalogue.h"

#include <QFrame>

class QLabel;
class QLineEdit;

namespace chalk::ui::common {
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class MarkedChoice;

/// One pause of a screen: the depth, how it went, and its seconds where a stopwatch was used.
class PauseCard : public QFrame {
    Q_OBJECT

public:
    PauseCard(const common::Look& look, const screens::DepthName& name, screens::PauseDepth depth, QWidget* parent = nullptr);

    void setTry(const screens::PauseTry& pause);
    [[nodiscard]] screens::PauseTry pause() const;
    /// What a running stopwatch shows; nothing: it does not run here.
    void showRunning(std::optional<int> elapsedMs);
    [[nodiscard]] MarkedChoice& keys() const { return *m_keys; }
    [[nodiscard]] bool hasFocusInside() const;

Q_SIGNALS:
    void changed();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const common::Look& m_look;
    screens::PauseDepth m_depth;
    common::SegmentedChoice* m_choice;
    MarkedChoice* m_keys;
    QLineEdit* m_seconds;
    QLabel* m_running;
};

/// `2.4`, or nothing for what is no number of seconds up to ten minutes.
[[nodiscard]] std::optional<int> pauseMsOf(const QString& text);

}  // namespace chalk::ui::onboarding
