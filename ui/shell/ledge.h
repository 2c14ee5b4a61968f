#pragma once

#include "ui/common/act_history.h"
#include "ui/shell/ledge_day.h"
#include "ui/shell/page.h"

#include <QWidget>

class QHBoxLayout;
class QLabel;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::shell {

class DayLine;
class KeyHintsLine;
class LedgeNote;

/// The foot of the window, 44 px high at a text size of 100 %: the clock, today's line, what is now or next, the keys of the page,
/// and what was done last.
class Ledge : public QWidget {
    Q_OBJECT

public:
    Ledge(const common::Look& look, common::ActHistory& acts, QWidget* parent = nullptr);

    void setDay(const LedgeDay& day);
    void setHints(const std::vector<KeyHint>& hints);
    void setNarrow(bool isNarrow);
    [[nodiscard]] DayLine* dayLine() const { return m_dayLine; }
    [[nodiscard]] LedgeNote* note() const { return m_note; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void dress();
    /// The sentence and the note share what the others leave: both are elided before anything is cut off.
    void fitWords();

    const common::Look& m_look;
    LedgeDay m_day;
    bool m_isNarrow = false;
    QHBoxLayout* m_row;
    QLabel* m_clock;
    DayLine* m_dayLine;
    QWidget* m_dot;
    QLabel* m_sentence;
    KeyHintsLine* m_hints;
    LedgeNote* m_note;
};

}  // namespace chalk::ui::shell
