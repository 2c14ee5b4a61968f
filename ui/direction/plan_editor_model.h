#pragma once

#include "core/direction/plan_curves.h"
#include "ui/direction/plan_chart_scene.h"
#include "ui/direction/plan_editor_edits.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

namespace chalk::ui::direction {

/// What a plan is edited with.
struct PlanEditorCase {
    chalk::direction::ClientPlan plan;
    std::vector<chalk::direction::LiftForPlan> lifts;  ///< all of the client's, by pattern
    std::vector<QString> names;                        ///< of each of them
    QString client;
    base::Date today;
    std::vector<ClosedDays> closures;                  ///< of the studio, for the chart
};

/// Where a single comes from.
enum class SingleOrigin : std::uint8_t { None, Estimated, Tested, Typed };

/// A plan while it is edited: a copy of its own, with every change undone and done again. Of a plan on file the singles are what results have made of
/// them by now. No store and no words.
class PlanEditorModel : public QObject {
    Q_OBJECT

public:
    explicit PlanEditorModel(PlanEditorCase facts, QObject* parent = nullptr);

    [[nodiscard]] const chalk::direction::ClientPlan& plan() const { return m_plan; }
    [[nodiscard]] const chalk::direction::PlanWishes& wishes() const { return m_plan.plan.wishes; }
    [[nodiscard]] const PlanEditorCase& facts() const { return m_facts; }
    [[nodiscard]] QUndoStack& changes() { return m_changes; }
    [[nodiscard]] bool isChanged() const { return !m_changes.isClean(); }

    // Each answers why it was refused; nothing where it was done. What changes nothing is no step to undo.
    std::optional<EditFault> setWork(const WorkPlace& place, const WorkEdit& edit);
    std::optional<EditFault> setKind(std::size_t week, chalk::direction::WeekKind kind);
    std::optional<EditFault> copyDown(std::size_t week, std::size_t lift);
    std::optional<chalk::direction::WishFault> setWishes(const chalk::direction::PlanWishes& wishes, bool keepsEdits);
    /// The single of a lift of the plan (an index), effective, in the lift's unit; 0 for none.
    void setSingle(std::size_t lift, base::Load load);

    [[nodiscard]] bool isOver(std::size_t week) const { return isWeekOver(m_plan.plan, week, m_facts.today); }
    /// Whether weeks of it are over: its start stays.
    [[nodiscard]] bool hasBegun() const { return isOver(0); }
    [[nodiscard]] int handEdits() const { return direction::handEdits(m_plan.plan); }
    [[nodiscard]] const chalk::direction::PlannedWork* workAt(const WorkPlace& place) const;
    /// What the equipment gives at the share of the lift's single; nothing where no single is known, and for a test.
    [[nodiscard]] std::optional<base::Load> loadAt(const WorkPlace& place) const;
    /// Which figures of an exposure leave their published range.
    [[nodiscard]] std::vector<chalk::direction::Departure> departuresAt(const WorkPlace& place) const;
    [[nodiscard]] const std::vector<chalk::direction::PlanDeparture>& departures() const { return m_departures; }
    [[nodiscard]] SingleOrigin originOf(std::size_t lift) const;

    /// A lift of the plan (an index) among the client's; nothing where it is not one of them any more.
    [[nodiscard]] std::optional<std::size_t> factOf(std::size_t lift) const;
    [[nodiscard]] QString nameOf(std::size_t lift) const;
    [[nodiscard]] base::MassUnit unitOf(std::size_t lift) const;
    /// The most exposures that a lift has in a week; of all lifts without one.
    [[nodiscard]] int exposures(std::optional<std::size_t> lift) const;

Q_SIGNALS:
    /// The plan is another one; `changes()` still stands before the step.
    void changed();

private:
    class Change;
    std::optional<EditFault> take(const EditedPlan& edited);
    void take(chalk::direction::ClientPlan edited);
    void show(const chalk::direction::ClientPlan& plan);

    PlanEditorCase m_facts;
    chalk::direction::ClientPlan m_plan;
    std::vector<chalk::direction::PlanDeparture> m_departures;
    QUndoStack m_changes;
};

}  // namespace chalk::ui::direction
