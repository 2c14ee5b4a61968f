#pragma once

#include "ui/onboarding/plan_desk.h"
#include "ui/onboarding/plan_words.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;

namespace chalk::ui::common {
class ActionButton;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

/// One pattern of the plan: what is done for it, with what, and why; each can be changed and put back to the suggestion. A pattern without a
/// lift shows its way out; one that has not begun in a plan that runs can be begun.
class PlanLiftRow : public QWidget {
    Q_OBJECT

public:
    PlanLiftRow(const common::Look& look, lifts::Pattern pattern, QWidget* parent = nullptr);

    /// `isRunning`: the plan has begun.
    void setDesk(const PlanDesk& desk, const lifts::Catalogue& catalogue, base::MassUnit unit, bool isRunning);

Q_SIGNALS:
    /// Nothing: as suggested.
    void exerciseChosen(const std::string& key);
    void equipmentChosen(const std::string& key);
    void firstLoadChosen(std::optional<base::Load> load);
    void leftOut(bool isLeftOut);
    void whyLeftOut(const QString& why);
    void wayOutAsked(chalk::ui::onboarding::WayOut way);
    void beginAsked();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void build();
    void layOut();
    void showGap(const PlanDesk& desk, const lifts::Catalogue& catalogue, bool isRunning);
    void fillEquipment(const PlanDesk& desk, const planning::PlannedLift* lift);
    void fillExercises(const PlanDesk& desk, const planning::PlannedLift* lift);
    void fillLoads(const PlanDesk& desk, const planning::PlannedLift* lift, base::MassUnit unit);

    const common::Look& m_look;
    lifts::Pattern m_pattern;
    QLabel* m_name;
    QLabel* m_stage;
    QCheckBox* m_isIn;
    QComboBox* m_exercise;
    QComboBox* m_load;
    QComboBox* m_equipment;
    QLabel* m_why;
    QLineEdit* m_whyLeftOut;
    common::ActionButton* m_way;    ///< out of a gap
    common::ActionButton* m_begin;  ///< a lift in a plan that runs
    WayOut m_wayOut = WayOut::None;
};

}  // namespace chalk::ui::onboarding
