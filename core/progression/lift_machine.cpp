#include "core/progression/lift_machine.h"

#include "core/progression/block_rules.h"
#include "core/progression/coach_rules.h"
#include "core/progression/kit_change.h"
#include "core/progression/layoff.h"
#include "core/progression/lighter_week.h"
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

    void lookAtDay(const LoadSteps& steps)
    {
        if (isBlockOver(date, state)) {
            fired.add(Rule::N3);
            endBlock(state, setup.policy, steps);
        }
        if (const auto rule = layoffRuleOn(date, state, setup.policy)) {
            fired.add(*rule);
            applyLayoff(*rule, state, setup.policy, steps);
        } else if (isLighterWeekOver(date, state)) {
            fired.add(Rule::D3);
        }
        if (!isInLighterWeek(date, state)) {
            state.lighterUntil.reset();
        }
    }

    void operator()(const Exposure& exposure)
    {
        const LoadSteps steps(setup, kit, loads);
        lookAtDay(steps);
        RuleCase c{setup.policy, steps, state, fired, nullptr, exposure.pain, factsOf(exposure, kit.measure, setup.policy),
                   isInLighterWeek(date, state)};
        if (c.facts.workingSets > 0) {
            state.lastWork = date;
            state.isGapDealtWith = false;
        }
        if (!fireFirst(exposureRules(), c)) {
            state.isPauseAsked = false;
            judgeWork(exposure, c);
        }
        if (state.block && c.facts.workingSets > 0) {
            countExposure(date, *state.block);
        }
    }

    void judgeWork(const Exposure& exposure, RuleCase& c)
    {
        if (state.block && placeOn(date, *state.block)) {
            fired.add(Rule::N2);
            moveSingle(date, exposure, kit, state, setup.policy, c.steps);
        } else {
            fireFirst(stageRules(state.stage), c);
        }
    }

    void operator()(const Rehearsal& rehearsal)
    {
        const LoadSteps steps(setup, kit, loads);
        lookAtDay(steps);
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

    void operator()(const Block& block) { fired.add(applyBlock(block, state, setup.policy, LoadSteps(setup, kit, loads))); }

    void operator()(const LighterWeek&) { fired.add(beginLighterWeek(date, state, setup.policy)); }
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
    if (const auto* block = std::get_if<Block>(&body)) {
        const auto fault = progression::faultOf(*block);
        return fault ? Fault(LiftFault{fault->field, std::string(fault->reason)}) : std::nullopt;
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
    const LoadSteps steps(m_setup, m_kit, m_loads);
    LiftState then = m_state;
    const bool isEnded = isBlockOver(day, then);
    if (isEnded) {
        endBlock(then, m_setup.policy, steps);
    }
    const auto rule = layoffRuleOn(day, then, m_setup.policy);
    if (rule) {
        applyLayoff(*rule, then, m_setup.policy, steps);
    }
    Prescription next = prescriptionOf(then, m_setup.policy);
    if (then.block) {
        followBlock(next, day, *then.block, steps);
    }
    if (isEnded) {
        next.rules.add(Rule::N3);
    }
    if (rule) {
        next.rules.add(*rule);
    } else if (isLighterWeekOver(day, then)) {
        next.rules.add(Rule::D3);
    }
    if (isInLighterWeek(day, then)) {
        makeLighter(next, *then.lighterUntil, m_setup.policy, steps);
    }
    return next;
}

LiftMachine LiftMachine::withoutLighterWeek() const
{
    LiftMachine usual = *this;
    usual.m_state.lighterUntil.reset();
    return usual;
}

}  // namespace chalk::progression
