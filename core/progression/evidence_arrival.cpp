#include "core/progression/evidence_arrival.h"

#include "core/progression/evidence.h"

#include <algorithm>

namespace chalk::progression {

namespace {

// Set build and Rest cut take as many records as there are sets and rests to go: far fewer than this in any policy.
constexpr int kMostRecords = 200;

Rehearsal goodRehearsal(const Policy& policy)
{
    Rehearsal rehearsal;
    rehearsal.criteria = {{"all", Verdict::Met}};
    rehearsal.reps = policy.controlReps;
    rehearsal.pauses = {policy.pauseMs, policy.pauseMs, policy.pauseMs};
    return rehearsal;
}

Exposure alike(const LiftMachine& machine, base::Sets sets, base::Reps reps, int rir)
{
    const Policy& policy = machine.setup().policy;
    const LiftState& state = machine.state();
    SetRecord set;
    set.load = *state.load;
    set.amount = amountFor(reps, machine.kit().measure, policy);
    set.rir = static_cast<std::int16_t>(rir);
    const auto rest = state.stage == Stage::RestCut ? state.rest.value_or(policy.baseRest) : policy.baseRest;
    set.restSeconds = static_cast<std::int16_t>(rest.value());
    return {0, std::vector<SetRecord>(static_cast<std::size_t>(sets.value()), set)};
}

/// Base load: reps and RIR that add up to the least capacity taken, or to a little more where the floor or the reserve ask.
std::optional<EventBody> firstLoadRecord(const LiftMachine& machine)
{
    const Policy& p = machine.setup().policy;
    const int least = std::max(p.capacityMin.value(), p.repFloor.value() + p.reserve);
    if (least > p.capacityMax.value()) {
        return std::nullopt;
    }
    const int reps = std::clamp(least - 10, p.repFloor.value(), least - p.reserve);
    const int comfortable = std::clamp(p.repCeiling.value(), reps, least - p.reserve);
    return alike(machine, p.baseSets, base::Reps(comfortable), least - comfortable);
}

}  // namespace

std::optional<EventBody> recordToTheLetter(const LiftMachine& machine)
{
    const Policy& p = machine.setup().policy;
    const LiftState& state = machine.state();
    switch (state.stage) {
        case Stage::Pattern: {
            Rehearsal met = goodRehearsal(p);
            met.pauses = {};  // so that it does not pass for Control as well
            return met;
        }
        case Stage::Control:
            return goodRehearsal(p);
        case Stage::BaseLoad:
            return firstLoadRecord(machine);
        case Stage::LoadBuild:
            return alike(machine, p.baseSets, state.bridgeTarget ? p.repGoal : p.hardReps, p.reserve);
        case Stage::RepBuild:
            return alike(machine, p.baseSets, p.repGoal, p.reserve);
        case Stage::SetBuild:
            return alike(machine, state.sets.value_or(p.topSets), state.holdReps.value_or(p.repGoal), p.reserve);
        case Stage::RestCut:
            return alike(machine, state.holdSets.value_or(p.topSets), state.holdReps.value_or(p.repGoal), p.reserve);
    }
    return std::nullopt;
}

std::optional<Arrival> arrivalOf(LiftMachine machine, base::Date day)
{
    machine = machine.withoutLighterWeek();
    const Stage stage = machine.state().stage;
    const int cycle = machine.state().cycle;
    for (int i = 0; i < kMostRecords; ++i) {
        const auto record = recordToTheLetter(machine);
        if (!record) {
            return std::nullopt;
        }
        machine.apply(day, *record);
        if (machine.state().stage != stage || machine.state().cycle != cycle) {
            return Arrival{machine.state().stage, machine.prescriptionOn(day)};
        }
    }
    return std::nullopt;
}

}  // namespace chalk::progression
