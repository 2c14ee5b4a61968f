#pragma once

#include "ui/direction/plan_comparison_figures.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QStackedWidget;
class QTableView;

namespace chalk::ui::common {
class ActionButton;
class Dialogs;
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::trends {
class ChartView;
}

namespace chalk::ui::direction {

/// A plan beside what was done, of one lift or of all: as a chart or as a table, which T changes. The numbers go into a CSV file.
class PlanComparison : public QWidget {
    Q_OBJECT

public:
    /// Both outlive it.
    PlanComparison(const common::Look& look, common::Dialogs& dialogs, QWidget* parent = nullptr);

    void setCase(PlanComparisonCase facts);
    /// A lift of the plan (an index); nothing for all of them.
    void setLift(std::optional<std::size_t> lift);
    void setTable(bool isTable);
    [[nodiscard]] bool isTable() const;
    /// What is said of the last file; empty for nothing.
    [[nodiscard]] QString saying() const;

private:
    [[nodiscard]] std::optional<std::size_t> lift() const;
    void follow();
    void save();

    const common::Look& m_look;
    common::Dialogs& m_dialogs;
    PlanComparisonCase m_facts;
    QComboBox* m_lifts;
    common::SegmentedChoice* m_form;
    common::ActionButton* m_export;
    QLabel* m_saying;
    QStackedWidget* m_stack;
    trends::ChartView* m_chart;
    QTableView* m_table;
};

}  // namespace chalk::ui::direction
