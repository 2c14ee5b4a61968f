#pragma once

#include "ui/direction/plan_editor_model.h"

#include <QWidget>

class QLabel;
class QScrollArea;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::direction {

class PlanChart;

/// What the plan comes to, while it is edited: its curves; which numbers leave their published ranges, with the source; repetitions of a strength lift
/// by zone of intensity, and weekly sets by muscle group, of the week that is read.
class PlanEditorGauges : public QWidget {
    Q_OBJECT

public:
    /// Both outlive it.
    PlanEditorGauges(const common::Look& look, PlanEditorModel& model, QWidget* parent = nullptr);

    /// The week and the lift (an index) that are read.
    void read(std::size_t week, std::size_t lift);
    /// All that is said beside the chart, without markup.
    [[nodiscard]] QString words() const;

private:
    void follow();
    [[nodiscard]] QString wordsHtml() const;

    const common::Look& m_look;
    PlanEditorModel& m_model;
    std::size_t m_week = 0;
    std::size_t m_lift = 0;
    PlanChart* m_chart;
    QScrollArea* m_column;
    QLabel* m_words;
};

}  // namespace chalk::ui::direction
