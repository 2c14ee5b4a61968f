#include "ui/direction/plan_editor_model.h"

#include "core/progression/load_steps.h"

#include <QUndoCommand>

#include <algorithm>

namespace chalk::ui::direction {

using chalk::direction::ClientPlan;
using chalk::direction::PlannedWork;
using chalk::direction::PlanSingle;

/// The plan before and after; whole plans are small.
class PlanEditorModel::Change : public QUndoCommand {
public:
    Change(PlanEditorModel& model, ClientPlan after) : m_model(model), m_before(model.m_plan), m_after(std::move(after)) {}

    void undo() override { m_model.show(m_before); }
    void redo() override { m_model.show(m_after); }

private:
    PlanEditorModel& m_model;
    ClientPlan m_before;
    ClientPlan m_after;
};

PlanEditorModel::PlanEditorModel(PlanEditorCase facts, QObject* parent) : QObject(parent), m_facts(std::move(facts)), m_plan(m_facts.plan)
{
    const bool isOnFile = m_plan.id.value() != 0;
    for (std::size_t i = 0; i < m_plan.singles.size(); ++i) {
        const auto fact = factOf(i);
        if (isOnFile && fact && m_facts.lifts[*fact].single) {
            m_plan.singles[i] = *m_facts.lifts[*fact].single;
        }
    }
    m_departures = departuresOf(m_plan.plan);
}

void PlanEditorModel::show(const ClientPlan& plan)
{
    m_plan = plan;
    m_departures = departuresOf(m_plan.plan);
    Q_EMIT changed();
}

void PlanEditorModel::take(ClientPlan edited)
{
    if (edited != m_plan) {
        m_changes.push(new Change(*this, std::move(edited)));
    }
}

std::optional<EditFault> PlanEditorModel::take(const EditedPlan& edited)
{
    if (!edited) {
        return edited.error();
    }
    take(*edited);
    return std::nullopt;
}

std::optional<EditFault> PlanEditorModel::setWork(const WorkPlace& place, const WorkEdit& edit)
{
    return take(withEdit(m_plan, place, edit, m_facts.today));
}

std::optional<EditFault> PlanEditorModel::setKind(std::size_t week, chalk::direction::WeekKind kind)
{
    return take(withKind(m_plan, week, kind, m_facts.today));
}

std::optional<EditFault> PlanEditorModel::copyDown(std::size_t week, std::size_t lift)
{
    return take(copiedDown(m_plan, week, lift, m_facts.today));
}

std::optional<chalk::direction::WishFault> PlanEditorModel::setWishes(const chalk::direction::PlanWishes& wishes, bool keepsEdits)
{
    if (const auto fault = faultOf(wishes)) {
        return fault;
    }
    if (wishes != m_plan.plan.wishes) {
        take(refitted(m_plan, wishes, m_facts.lifts, keepsEdits, m_facts.today));
    }
    return std::nullopt;
}

void PlanEditorModel::setSingle(std::size_t lift, base::Load load)
{
    if (lift >= m_plan.singles.size() || m_plan.singles[lift].load == load) {
        return;
    }
    ClientPlan edited = m_plan;
    const auto fact = factOf(lift);
    const auto& known = fact ? m_facts.lifts[*fact].single : std::nullopt;
    edited.singles[lift] = known && known->load == load ? *known : PlanSingle{load, false};
    take(std::move(edited));
}

const PlannedWork* PlanEditorModel::workAt(const WorkPlace& place) const
{
    const auto& weeks = m_plan.plan.weeks;
    if (place.week >= weeks.size() || place.lift >= weeks[place.week].work.size() || place.exposure >= weeks[place.week].work[place.lift].size()) {
        return nullptr;
    }
    return &weeks[place.week].work[place.lift][place.exposure];
}

std::optional<base::Load> PlanEditorModel::loadAt(const WorkPlace& place) const
{
    const PlannedWork* work = workAt(place);
    const auto fact = factOf(place.lift);
    if (work == nullptr || work->isTest || !fact || m_plan.singles[place.lift].load <= base::Load()) {
        return std::nullopt;
    }
    const progression::LiftMachine& machine = m_facts.lifts[*fact].machine;
    return progression::LoadSteps(machine.setup(), machine.kit(), machine.loads()).atShare(m_plan.singles[place.lift].load, work->scheme.share);
}

std::vector<chalk::direction::Departure> PlanEditorModel::departuresAt(const WorkPlace& place) const
{
    std::vector<chalk::direction::Departure> found;
    for (const auto& one : m_departures) {
        if (WorkPlace{one.week, one.lift, one.exposure} == place) {
            found.push_back(one.departure);
        }
    }
    return found;
}

SingleOrigin PlanEditorModel::originOf(std::size_t lift) const
{
    const PlanSingle& single = m_plan.singles[lift];
    if (single.load <= base::Load()) {
        return SingleOrigin::None;
    }
    if (single.isTested) {
        return SingleOrigin::Tested;
    }
    const auto fact = factOf(lift);
    return fact && m_facts.lifts[*fact].single == single ? SingleOrigin::Estimated : SingleOrigin::Typed;
}

std::optional<std::size_t> PlanEditorModel::factOf(std::size_t lift) const
{
    const base::LiftId id = m_plan.plan.wishes.lifts[lift].lift;
    const auto found = std::find_if(m_facts.lifts.begin(), m_facts.lifts.end(), [id](const auto& one) { return one.lift == id; });
    return found == m_facts.lifts.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - m_facts.lifts.begin()));
}

QString PlanEditorModel::nameOf(std::size_t lift) const
{
    const auto fact = factOf(lift);
    return fact ? m_facts.names[*fact] : tr("A lift that is gone");
}

base::MassUnit PlanEditorModel::unitOf(std::size_t lift) const
{
    const auto fact = factOf(lift);
    return fact ? m_facts.lifts[*fact].machine.setup().unit : base::MassUnit::Kilogram;
}

int PlanEditorModel::exposures(std::optional<std::size_t> lift) const
{
    const auto& lifts = wishes().lifts;
    int most = 0;
    for (std::size_t i = 0; i < lifts.size(); ++i) {
        most = !lift || *lift == i ? std::max(most, lifts[i].exposures) : most;
    }
    return most;
}

}  // namespace chalk::ui::direction
