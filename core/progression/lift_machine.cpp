#include "core/progression/lift_machine.h"

#include "core/progression/coach_rules.h"
#include "core/progression/kit_change.h"
#include "core/progression/layoff.h"
#include "core/progression/prescription.h"
#include "core/progression/rule_case.h"

namespace chalk::progression {

namespace {

using Fault = std::optional<LiftFault>;

LiftFault cannotGive(const char* field)
{
    return {field, "is not a load that the equipment can give"};
}

/// The loads of a kit; fails where the equipment makes no sense, or the start load or the body share does not fit it.
tl::expected<lifts::LoadTable, LiftFault> loadsOfKit(const Kit& kit, const LiftSetup& setup)
{
    auto loads = lifts::LoadTable::of(kit.equipment);
    if (!loads) {
        return tl::make_unexpected(LiftFault{"equipment." + loads.error().field, loads.error().reason});
    }
    if (kit.bodyShare.value() < 0 || kit.bodyShare.value() > 1000) {
        return tl::make_unexpected(LiftFault{"body_share", "must be 0 to 1"});
    }
    if (kit.bodyShare.value() > 0 && !setup.bodyMass) {
        return tl::make_unexpected(LiftFault{"body_mass", "is needed where body_share is above 0"});
    }
    if (kit.startLoad && !loads->canGive(*kit.startLoad)) {
        return tl::make_unexpected(cannotGive("start_load"));
    }
    return *std::move(loads);
}

/// Whether `field`, where it is there, means something in the stages from `first` to `last`.
Fault faultOfField(bool isThere, const char* field, Stage stage, Stage first, Stage last)
{
    if (isThere && (stage < first || stage > last)) {
        return LiftFault{field, "has no use in this stage"};
    }
    return std::nullopt;
}

Fault faultOfSet(const CoachSet& set, const LiftState& state, const lifts::LoadTable& loads)
{
    if (set.reason.empty()) {
        return LiftFault{"reason", "is required"};
    }
    const Stage stage = set.stage.value_or(state.stage);
    for (const Fault& fault : {faultOfField(set.load.has_value(), "load", stage, Stage::BaseLoad, Stage::RestCut),
                               faultOfField(set.reps.has_value(), "reps", stage, Stage::RepBuild, Stage::RestCut),
                               faultOfField(set.sets.has_value(), "sets", stage, Stage::SetBuild, Stage::RestCut),
                               faultOfField(set.rest.has_value(), "rest_s", stage, Stage::RestCut, Stage::RestCut)}) {
        if (fault) {
            return fault;
        }
    }
    return set.load && !loads.canGive(*set.load) ? Fault(cannotGive("load")) : std::nullopt;
}

/// Judges one event on one lift: the state before is in it, the state after too.
struct Judge {
    const LiftSetup& setup;
    Kit& kit;
    lifts::LoadTable& loads;
    LiftState& state;
    base::Date date;
    RuleList fired;

    void lookAtGap(const LoadSteps& steps)
    {
        if (const auto rule = layoffRuleOn(date, state, setup.policy)) {
            fired.add(*rule);
            applyLayoff(*rule, state, setup.policy, steps);
        }
    }

    void operator()(const Exposure& exposure)
    {
        const LoadSteps steps(setup, kit, loads);
        lookAtGap(steps);
        RuleCase c{setup.policy, steps, state, fired, nullptr, exposure.pain, factsOf(exposure, kit.measure, setup.policy)};
        if (c.facts.workingSets > 0) {
            state.lastWork = date;
            state.isGapDealtWith = false;
        }
        if (!fireFirst(exposureRules(), c)) {
            state.isPauseAsked = false;
            fireFirst(stageRules(state.stage), c);
        }
    }

    void operator()(const Rehearsal& rehearsal)
    {
        const LoadSteps steps(setup, kit, loads);
        lookAtGap(steps);
        state.flags.clear(Flag::Rescreen);
        RuleCase c{setup.policy, steps, state, fired, &rehearsal, rehearsal.pain, {}};
        fireFirst(rehearsalRules(), c);
    }

    void operator()(const Release&) { fired.add(applyRelease(state)); }

    void operator()(const CoachSet& set)
    {
        fired.add(applyCoachSet(set, state, setup.policy, LoadSteps(setup, kit, loads)));
    }

    void operator()(const Swap& swap)
    {
        kit = kitAfter(swap, kit);
        loads = *lifts::LoadTable::of(kit.equipment);
        fired.add(applySwap(state, LoadSteps(setup, kit, loads)));
    }
};

}  // namespace

LiftMachine::LiftMachine(LiftSetup setup, Kit kit, lifts::LoadTable loads, LiftState state)
    : m_setup(std::move(setup)), m_kit(std::move(kit)), m_loads(std::move(loads)), m_state(state)
{
}

tl::expected<LiftMachine, LiftFault> LiftMachine::create(LiftSetup setup)
{
    LiftState state;
    state.stage = setup.startStage;
    Kit kit = setup.kit;
    auto machine = resume(std::move(setup), std::move(kit), state);
    if (machine && isLoaded(state.stage)) {
        if (state.stage != Stage::BaseLoad) {
            return tl::make_unexpected(LiftFault{"stage", "must be pattern, control or base_load"});
        }
        machine->m_state.load = LoadSteps(machine->m_setup, machine->m_kit, machine->m_loads).startLoad();
    }
    return machine;
}

tl::expected<LiftMachine, LiftFault> LiftMachine::resume(LiftSetup setup, Kit kit, LiftState state)
{
    if (const auto fault = progression::faultOf(setup.policy)) {
        return tl::make_unexpected(LiftFault{"policy." + fault->field, fault->reason});
    }
    if (setup.bodyMass && setup.bodyMass->centi() <= 0) {
        return tl::make_unexpected(LiftFault{"body_mass", "must be above 0"});
    }
    auto loads = loadsOfKit(kit, setup);
    if (!loads) {
        return tl::make_unexpected(loads.error());
    }
    return LiftMachine(std::move(setup), std::move(kit), *std::move(loads), state);
}

std::optional<LiftFault> LiftMachine::faultOf(const EventBody& body) const
{
    if (const auto* release = std::get_if<Release>(&body)) {
        return release->note.empty() ? Fault(LiftFault{"note", "is required"}) : std::nullopt;
    }
    if (const auto* set = std::get_if<CoachSet>(&body)) {
        return faultOfSet(*set, m_state, m_loads);
    }
    if (const auto* swap = std::get_if<Swap>(&body)) {
        const auto loads = loadsOfKit(kitAfter(*swap, m_kit), m_setup);
        return loads ? std::nullopt : Fault(loads.error());
    }
    return std::nullopt;
}

RuleList LiftMachine::apply(base::Date date, const EventBody& body)
{
    Judge judge{m_setup, m_kit, m_loads, m_state, date, {}};
    std::visit(judge, body);
    return judge.fired;
}

Prescription LiftMachine::prescriptionOn(base::Date day) const
{
    const auto rule = layoffRuleOn(day, m_state, m_setup.policy);
    if (!rule) {
        return prescriptionOf(m_state, m_setup.policy);
    }
    LiftState later = m_state;
    applyLayoff(*rule, later, m_setup.policy, LoadSteps(m_setup, m_kit, m_loads));
    Prescription next = prescriptionOf(later, m_setup.policy);
    next.rules.add(*rule);
    return next;
}

}  // namespace chalk::progression
