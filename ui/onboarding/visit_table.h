#pragma once

#include "ui/onboarding/plan_desk.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QGridLayout;

namespace chalk::ui::onboarding {

/// The sessions of a week: day and time and the lifts in their order, all of which can be set by hand, and the dates of the first two weeks.
class VisitTable : public QWidget {
    Q_OBJECT

public:
    explicit VisitTable(QWidget* parent = nullptr);

    /// Shows the plan of the desk. What had the focus has it again.
    void setDesk(const PlanDesk& desk);

Q_SIGNALS:
    /// All slots of the week as they are now.
    void slotsChanged(const std::vector<chalk::planning::WeekSlot>& slots);
    void contentsChanged(const chalk::planning::SessionContents& contents);

private:
    struct Row {
        planning::WeekSlot slot;
        QComboBox* day = nullptr;
        QComboBox* time = nullptr;
    };

    void clear();
    void addRow(const planning::WeekSlot& slot, const PlanDesk& desk, const WeekContents& contents);
    void addLifts(int line, std::size_t session, const WeekContents& contents);
    void tell();

    QGridLayout* m_grid;
    std::vector<Row> m_rows;
    QString m_focusName;  ///< what the focus goes to when the plan was worked out anew
};

}  // namespace chalk::ui::onboarding
