#pragma once

#include "core/planning/plan_draft.h"
#include "core/progression/screen_start.h"
#include "core/screens/screen_catalogue.h"
#include "ui/common/lift_strip.h"
#include "ui/common/panel.h"

#include <QPointer>

#include <array>

class QComboBox;
class QLabel;
class QLineEdit;

namespace chalk::ui::common {
class ActionButton;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class FieldColumn;
class StartLadder;

/// What all patterns come to, for the outcome of one of them.
struct OutcomeView {
    progression::PatternStart start;
    const screens::PatternGuide* guide = nullptr;
    std::vector<screens::WorkForPoints> work;             ///< to do first
    std::optional<progression::StartChoice> choice;       ///< another stage that the coach wants
    common::LiftStripView strip;
    QString next;                                         ///< what Enter leads to: `Next: Hinge`
    QString words;                                        ///< about the screen as a whole: why a new one is due; may be empty
};

/// The outcome of one pattern, live: the rung, why, what is in the way, work to do first, all patterns so far; another stage with a reason.
class ScreenOutcome : public common::Panel {
    Q_OBJECT

public:
    explicit ScreenOutcome(const common::Look& look, QWidget* parent = nullptr);

    void setView(const OutcomeView& view);
    /// False where none is open.
    bool closeEditor();
    void openEditor();
    /// Whether another stage can be chosen.
    void setChoiceOpen(bool isOpen);

Q_SIGNALS:
    /// Another stage, or nothing for the screen's own.
    void stageChosen(const std::optional<chalk::progression::StartChoice>& choice);
    void nextAsked();

protected:
    /// Enter in the editor is the editor's, not the step's.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildEditor();
    void accept();
    void showWork(const OutcomeView& view);

    const common::Look& m_look;
    StartLadder* m_ladder;
    QLabel* m_words;
    QLabel* m_why;
    QLabel* m_work;
    QWidget* m_strip;
    FieldColumn* m_editor;
    common::SegmentedChoice* m_stage = nullptr;
    QPointer<QWidget> m_focusBefore;  ///< where the editor was opened from
    QLineEdit* m_reason = nullptr;
    common::ActionButton* m_other;
    common::ActionButton* m_next;
    OutcomeView m_view;
};

}  // namespace chalk::ui::onboarding
