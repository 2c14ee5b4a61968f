#pragma once

#include "core/planning/starting_plan.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QGridLayout;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::onboarding {

/// The sessions of a week with their day and time, which can be set by hand, and below them the dates of the first two weeks.
class VisitTable : public QWidget {
    Q_OBJECT

public:
    explicit VisitTable(const common::Look& look, QWidget* parent = nullptr);

    void setPlan(const planning::StartingPlan& plan, const planning::PlanTemplate& used);

Q_SIGNALS:
    /// All slots of the week as they are now.
    void slotsChanged(const std::vector<chalk::planning::WeekSlot>& slots);

private:
    struct Row {
        planning::WeekSlot slot;
        QComboBox* day = nullptr;
        QComboBox* time = nullptr;
    };

    void addRow(const planning::WeekSlot& slot, const planning::StartingPlan& plan, const planning::PlanTemplate& used);
    void tell();

    const common::Look& m_look;
    QGridLayout* m_grid;
    std::vector<Row> m_rows;
};

}  // namespace chalk::ui::onboarding
