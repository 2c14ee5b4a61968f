#pragma once

#include "core/screens/pattern_screen.h"
#include "core/screens/screen_catalogue.h"
#include "ui/onboarding/stopwatch.h"

#include <QWidget>

#include <vector>

class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QScrollArea;
class QSpinBox;
class QVBoxLayout;

namespace chalk::ui::common {
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class MarkedChoice;
class PauseCard;

/// What is marked for one pattern: six points, three pauses, steadiness, repetitions, pain, a note.
class PatternSheet : public QWidget {
    Q_OBJECT

public:
    /// `guide` outlives the sheet. `pauseMs`: how long a pause is asked for.
    PatternSheet(const common::Look& look, const screens::PatternGuide& guide, int pauseMs, QWidget* parent = nullptr);

    /// What is being typed in keeps its text.
    void setScreen(const screens::PatternScreen& screen);
    /// What the screen before said, beside each point; nothing: there is none.
    void setEarlier(const screens::PatternScreen* earlier);
    [[nodiscard]] screens::PatternScreen screen() const;
    /// The first point or pause that is open.
    void takeFocus();
    /// Starts the stopwatch at the pause with the focus, or at the first that was not timed; stops it and notes the time.
    void toggleStopwatch();
    /// False where it does not run.
    bool dropStopwatch();
    void askForPain();
    /// With another clock, for tests.
    void setNow(Stopwatch::Now now);

Q_SIGNALS:
    void marked();
    void typed();

protected:
    /// The digits of the pain score are the score itself.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void addHead(QVBoxLayout& column);
    void addPoints(QVBoxLayout& column);
    void addPauses(QVBoxLayout& column, int pauseMs);
    void addPain(QVBoxLayout& column);
    void move(std::size_t from, int by);
    void showPain();
    void reveal(QWidget* part);

    const common::Look& m_look;
    const screens::PatternGuide& m_guide;
    QScrollArea* m_scroll;
    std::vector<common::SegmentedChoice*> m_points;
    std::vector<QLabel*> m_views;       ///< from where a point is watched, and what it was
    std::vector<PauseCard*> m_pauses;
    std::vector<MarkedChoice*> m_keys;  ///< of the points, then of the pauses
    common::SegmentedChoice* m_steadiness;
    QLineEdit* m_reps;
    common::SegmentedChoice* m_pain;
    QWidget* m_painDetail;
    QLineEdit* m_painPlace;
    common::SegmentedChoice* m_painScore;
    QPlainTextEdit* m_note;
    Stopwatch* m_watch;
    std::size_t m_timed = 0;
};

}  // namespace chalk::ui::onboarding
