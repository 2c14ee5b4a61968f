#pragma once

#include "ui/direction/plan_outcome_words.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace chalk::ui::common {
class ActionButton;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::direction {

/// The review at the end of a plan: what it came to, and where it goes from here. The two ways on stand beside each other, none of them first by itself.
class PlanOutcome : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives it.
    explicit PlanOutcome(const common::Look& look, QWidget* parent = nullptr);

    void setOutcome(const PlanOutcomeCase& outcome);

Q_SIGNALS:
    void nextPlanAsked();
    /// Back to the cycle of stages.
    void backAsked();
    void printAsked();

private:
    const common::Look& m_look;
    QLabel* m_title;
    QLabel* m_sentences;
    QTableView* m_table;
};

}  // namespace chalk::ui::direction
