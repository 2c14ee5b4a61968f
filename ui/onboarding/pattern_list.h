#pragma once

#include "core/progression/screen_start.h"

#include <QAbstractButton>
#include <QWidget>

#include <array>
#include <vector>

class QLabel;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::onboarding {

/// One pattern in the list: its icon, its name, where it starts.
class PatternButton : public QAbstractButton {
    Q_OBJECT

public:
    PatternButton(const common::Look& look, lifts::Pattern pattern, QWidget* parent = nullptr);

    [[nodiscard]] lifts::Pattern pattern() const { return m_pattern; }
    void setStart(const progression::PatternStart& start, bool isPresent);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintResult(QPainter& painter, double right) const;

    const common::Look& m_look;
    lifts::Pattern m_pattern;
    progression::PatternStart m_start;
    bool m_isPresent = false;
};

/// The eight patterns and how far the screen is.
class PatternList : public QWidget {
    Q_OBJECT

public:
    explicit PatternList(const common::Look& look, QWidget* parent = nullptr);

    void setStarts(const std::array<progression::PatternStart, lifts::kPatterns.size()>& starts, lifts::Pattern present);
    void setNarrow(bool isNarrow);

Q_SIGNALS:
    void patternChosen(lifts::Pattern pattern);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void dress();

    const common::Look& m_look;
    std::vector<PatternButton*> m_buttons;
    QLabel* m_count;
    bool m_isNarrow = false;
};

}  // namespace chalk::ui::onboarding
