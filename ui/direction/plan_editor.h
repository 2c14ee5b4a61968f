#pragma once

#include "ui/direction/plan_editor_model.h"

#include <QDialog>

class QComboBox;
class QLabel;

namespace chalk::ui::common {
class ActionButton;
class Dialogs;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::direction {

class PlanEditorGauges;
class PlanEditorSheet;
class PlanEditorTable;
class PlanEditorWishes;

/// A plan is edited: its wishes at the left, every number of its weeks in a table, and what that comes to below it. It writes nothing: after
/// `accept()` the plan as it was edited is there to be taken. Of a plan that runs, weeks that are over are only read.
class PlanEditor : public QDialog {
    Q_OBJECT

public:
    /// `look` and `dialogs` outlive the dialog. The plan has a lift and a week.
    PlanEditor(const common::Look& look, common::Dialogs& dialogs, PlanEditorCase facts, QWidget* parent = nullptr);

    /// The plan as it stands now.
    [[nodiscard]] const chalk::direction::ClientPlan& plan() const { return m_model.plan(); }
    [[nodiscard]] PlanEditorModel& model() { return m_model; }
    /// What is said below the table; empty for nothing.
    [[nodiscard]] QString saying() const;

    /// Asks first where something was changed.
    void reject() override;

private:
    [[nodiscard]] QWidget* middle();
    [[nodiscard]] QWidget* foot();
    void addKeys();
    void showLifts();
    void chooseLift(int index);
    void stepLift(int step);
    void takeWishes(const chalk::direction::PlanWishes& wishes);
    /// How wishes are followed where something was set by hand: whether that is kept; nothing where the plan is left as it is.
    [[nodiscard]] std::optional<bool> keepsEdits();
    void readCell(const QString& remark);
    void say(const QString& sentence, bool isRefusal);
    void follow();
    void goOn();

    const common::Look& m_look;
    common::Dialogs& m_dialogs;
    PlanEditorModel m_model;
    PlanEditorSheet* m_sheet;
    PlanEditorTable* m_table;
    PlanEditorWishes* m_wishes;
    PlanEditorGauges* m_gauges;
    QComboBox* m_lifts;
    QLabel* m_title;
    QLabel* m_saying;
    common::ActionButton* m_undo = nullptr;
    common::ActionButton* m_redo = nullptr;
};

}  // namespace chalk::ui::direction
