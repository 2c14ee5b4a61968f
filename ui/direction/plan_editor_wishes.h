#pragma once

#include "ui/direction/plan_editor_model.h"

#include <QWidget>

#include <functional>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QSpinBox;
class QVBoxLayout;

namespace chalk::ui::common {
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::direction {

class MondayEntry;

/// What a plan is made from: direction, weeks, sessions, lifts with their singles. A change is only asked for; whoever owns this does it.
class PlanEditorWishes : public QWidget {
    Q_OBJECT

public:
    /// Both outlive it.
    PlanEditorWishes(const common::Look& look, PlanEditorModel& model, QWidget* parent = nullptr);

    /// Shows the wishes of the plan as they are.
    void follow();

Q_SIGNALS:
    void asked(const chalk::direction::PlanWishes& wishes);
    void refused(const QString& sentence);

private:
    /// A lift of the client's.
    struct LiftRow {
        QCheckBox* isIn;
        QComboBox* role;
        QSpinBox* days;
        QLineEdit* single;
        QLabel* origin;
    };

    [[nodiscard]] QWidget* planPart();
    void addLift(QVBoxLayout& column, std::size_t fact);
    void followLift(std::size_t fact);
    [[nodiscard]] QString originOf(std::size_t fact, std::optional<std::size_t> lift) const;
    /// A lift of the client's in the plan.
    [[nodiscard]] std::optional<std::size_t> liftOf(std::size_t fact) const;
    /// Asks for the wishes of the plan, changed so.
    void ask(const std::function<void(chalk::direction::PlanWishes&)>& change);
    void askLift(std::size_t fact);
    /// What stands in the field of a lift of the plan.
    [[nodiscard]] base::Load shownSingle(std::size_t lift) const;
    void takeSingle(std::size_t fact);

    const common::Look& m_look;
    PlanEditorModel& m_model;
    common::SegmentedChoice* m_direction;
    common::SegmentedChoice* m_wave;
    QSpinBox* m_weeks;
    QSpinBox* m_sessions;
    QCheckBox* m_test;
    MondayEntry* m_start;
    std::vector<std::optional<LiftRow>> m_lifts;  ///< by lift of the client; nothing for those that cannot be planned
};

}  // namespace chalk::ui::direction
