#include "core/progression/load_steps.h"

#include "core/progression/exposure_facts.h"
#include "tests/support/journey.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace chalk::test {

namespace {

using progression::Exposure;
using progression::LiftMachine;
using progression::LiftState;
using progression::Prescription;
using progression::PrescriptionKind;
using progression::Rule;
using progression::RuleList;
using progression::Stage;

constexpr std::size_t kLongHistory = 150;

std::vector<std::uint32_t> anyLife()
{
    return *rc::gen::container<std::vector<std::uint32_t>>(kLongHistory, rc::gen::arbitrary<std::uint32_t>());
}

/// Long lives of lifts with all kinds of equipment, in both units and regions.
progression::LiftSetup anySetup()
{
    progression::LiftSetup setup = lowerLift();
    switch (*rc::gen::inRange(0, 5)) {
    case 0:
        break;
    case 1:
        setup.kit = fixedKit({8, 12, 16, 24, 40});
        break;
    case 2:
        setup.kit = fixedKit({10, 12});
        setup.unit = base::MassUnit::Pound;
        setup.policy = progression::Policy::defaultsFor(setup.unit);
        break;
    case 3:
        setup.kit.equipment = lifts::Stack{kilos(5), kilos(80), kilos(2.5)};
        setup.kit.measure = lifts::Measure::Seconds;
        break;
    default:
        setup.kit = {lifts::BodyAdded{{kilos(-30), kilos(-15), kilos(0), kilos(5), kilos(10)}}, base::Milli(1000), {}, {}, {}, 1};
        setup.bodyMass = kilos(71.35);
        break;
    }
    setup.region = *rc::gen::arbitrary<bool>() ? lifts::Region::Upper : lifts::Region::Lower;
    return setup;
}

/// One step of a life: what stood before, what was done, what followed.
struct Step {
    LiftState before;
    Prescription due;
    progression::JudgedEvent event;
    LiftState after;
    Prescription next;
};

/// Lives a lift and shows every step to `check`.
template <class Check>
void liveLong(Check&& check)
{
    Journey journey(anySetup());
    for (const std::uint32_t whim : anyLife()) {
        const LiftState before = journey.state();
        const Prescription due = journey.machine().prescriptionOn(journey.day());
        journey.live(whim);
        check(journey.machine(), Step{before, due, journey.last(), journey.state(), journey.machine().prescriptionOn(journey.day())});
    }
}

bool isAny(const RuleList& rules, std::initializer_list<Rule> some)
{
    return std::any_of(some.begin(), some.end(), [&rules](Rule rule) { return rules.has(rule); });
}

}  // namespace

RC_GTEST_PROP(MachineProperties, TheSameHistoryGivesTheSameState, ())
{
    const auto setup = anySetup();
    Journey journey(setup);
    for (const std::uint32_t whim : anyLife()) {
        journey.live(whim);
    }
    std::vector<progression::Event> events;
    for (const auto& judged : journey.history()) {
        events.push_back({judged.date, *judged.body});
    }
    LiftMachine again = LiftMachine::create(setup).value();
    const auto decisions = replay(again, events);
    RC_ASSERT(decisions.has_value());
    RC_ASSERT(again.state() == journey.state());
    const auto history = journey.history();
    for (std::size_t i = 0; i < events.size(); ++i) {
        RC_ASSERT((*decisions)[i].rules == history[i].rules);
    }
}

RC_GTEST_PROP(MachineProperties, AStateIsAllThatIsNeededToGoOn, ())
{
    const auto setup = anySetup();
    Journey journey(setup);
    for (const std::uint32_t whim : anyLife()) {
        const auto resumed = LiftMachine::resume(journey.machine().setup(), journey.machine().kit(), journey.state());
        journey.live(whim);
        const auto last = journey.last();
        LiftMachine other = resumed.value();
        RC_ASSERT(other.apply(last.date, *last.body) == last.rules);
        RC_ASSERT(other.state() == journey.state());
    }
}

RC_GTEST_PROP(MachineProperties, APrescribedLoadCanBeSetUpOrWasLifted, ())
{
    std::vector<base::Load> lifted;
    liveLong([&lifted](const LiftMachine& machine, const Step& step) {
        if (const auto* exposure = std::get_if<Exposure>(step.event.body)) {
            for (const auto& set : exposure->sets) {
                lifted.push_back(set.load);
            }
        }
        const bool canBe = machine.loads().canGive(step.next.load) || std::find(lifted.begin(), lifted.end(), step.next.load) != lifted.end();
        RC_ASSERT((step.next.kind != PrescriptionKind::Work || canBe));
    });
}

RC_GTEST_PROP(MachineProperties, NoLoadRisesByMoreThanAStepOrABridge, ())
{
    liveLong([](const LiftMachine& machine, const Step& step) {
        const auto* exposure = std::get_if<Exposure>(step.event.body);
        const bool isFound = isAny(step.event.rules, {Rule::B2, Rule::B3});  // a first load is still being looked for
        if (exposure == nullptr || isFound || step.next.kind != PrescriptionKind::Work || !step.before.load) {
            return;
        }
        const auto facts = factsOf(*exposure, machine.kit().measure, machine.setup().policy);
        const base::Load from = std::max(*step.before.load, facts.workingLoad);
        const progression::LoadSteps steps(machine.setup(), machine.kit(), machine.loads());
        RC_ASSERT(step.next.load <= std::max(from, steps.stepUp(from).load));
    });
}

RC_GTEST_PROP(MachineProperties, NothingAdvancesThroughPainAHoldOrALostSet, ())
{
    liveLong([](const LiftMachine&, const Step& step) {
        const auto* exposure = std::get_if<Exposure>(step.event.body);
        if (exposure == nullptr) {
            return;
        }
        const bool isLost = std::any_of(exposure->sets.begin(), exposure->sets.end(), [](const auto& set) {
            return !set.isWarmup && set.steadiness == progression::Steadiness::Lost;
        });
        if (exposure->pain == 0 && !step.before.isOnHold && !isLost) {
            return;
        }
        const bool isLayoff = isAny(step.event.rules, {Rule::G1, Rule::G2, Rule::G3});
        RC_ASSERT(step.after.stage <= step.before.stage);
        RC_ASSERT(step.after.cycle == step.before.cycle);
        RC_ASSERT((!step.after.load || *step.after.load <= *step.before.load));
        RC_ASSERT((isLayoff || step.after.best == step.before.best));
        RC_ASSERT((isLayoff || step.after.misses == step.before.misses));
    });
}

}  // namespace chalk::test
