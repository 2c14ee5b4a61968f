#pragma once

#include "ui/onboarding/plan_desk.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QLabel;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::onboarding {

/// One pattern of the plan: what is done for it, with what, and why; each can be changed and put back to the suggestion.
class PlanLiftRow : public QWidget {
    Q_OBJECT

public:
    PlanLiftRow(const common::Look& look, lifts::Pattern pattern, QWidget* parent = nullptr);

    void setDesk(const PlanDesk& desk, const lifts::Catalogue& catalogue, base::MassUnit unit);

Q_SIGNALS:
    /// Nothing: as suggested.
    void exerciseChosen(const std::string& key);
    void firstLoadChosen(std::optional<base::Load> load);
    void leftOut(bool isLeftOut);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void fillExercises(const PlanDesk& desk, const planning::PlannedLift* lift);
    void fillLoads(const PlanDesk& desk, const planning::PlannedLift* lift, base::MassUnit unit);

    const common::Look& m_look;
    lifts::Pattern m_pattern;
    QLabel* m_name;
    QLabel* m_stage;
    QComboBox* m_exercise;
    QComboBox* m_load;
    QCheckBox* m_isIn;
    QLabel* m_why;
};

}  // namespace chalk::ui::onboarding
