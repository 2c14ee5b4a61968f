#include "core/progression/evidence.h"

#include "core/progression/evidence_arrival.h"
#include "core/progression/evidence_stages.h"

#include <algorithm>

namespace chalk::progression {

namespace {

/// An exposure without a set is kept in the log and changes nothing, but a layoff up to its day is dealt with first.
LiftMachine asOf(const LiftMachine& machine, base::Date day)
{
    LiftMachine now = machine;
    now.apply(day, Exposure{});
    return now;
}

void addFlagChecks(Evidence& evidence, const EvidenceSubject& lift)
{
    if (lift.state.flags.has(Flag::Rescreen)) {
        evidence.checks.push_back(plainCheck(CheckKind::Rescreened, false));
    }
    if (lift.state.flags.has(Flag::NeedsLighterOption)) {
        evidence.checks.push_back(plainCheck(CheckKind::LighterOption, false));
    }
}

void describe(Evidence& evidence, const EvidenceSubject& lift)
{
    addFlagChecks(evidence, lift);
    switch (lift.state.stage) {
        case Stage::Pattern:
            return describePattern(evidence, lift);
        case Stage::Control:
            return describeControl(evidence, lift);
        case Stage::BaseLoad:
            return describeBaseLoad(evidence, lift);
        case Stage::LoadBuild:
            return describeLoadBuild(evidence, lift);
        case Stage::RepBuild:
            return describeRepBuild(evidence, lift);
        case Stage::SetBuild:
            return describeSetBuild(evidence, lift);
        case Stage::RestCut:
            return describeRestCut(evidence, lift);
    }
}

}  // namespace

Check plainCheck(CheckKind kind, bool isMet, std::optional<base::Date> date, int value, int needed)
{
    Check check;
    check.kind = kind;
    check.isMet = isMet;
    check.date = date;
    check.value = value;
    check.needed = needed;
    return check;
}

void addBodyChecks(Evidence& evidence, const RecordFacts& facts, std::optional<base::Date> date)
{
    if (!date) {
        return;
    }
    Check pain = plainCheck(CheckKind::PainFree, facts.lastPain == 0, facts.lastDate, facts.lastPain);
    pain.count = facts.painFreeInARow;
    evidence.checks.push_back(pain);
    Check steady = plainCheck(CheckKind::Steady, facts.steadyInARow > 0, facts.lastDate);
    steady.count = facts.steadyInARow;
    evidence.checks.push_back(steady);
}

Evidence evidenceFor(const LiftMachine& machine, std::span<const JudgedEvent> history, base::Date day)
{
    const LiftMachine now = asOf(machine.withoutLighterWeek(), day);
    const RecordFacts facts = recordFactsOf(history, now.state().stage, now.setup().startStage);
    Evidence evidence;
    evidence.stage = now.state().stage;
    if (now.state().isOnHold) {
        evidence.checks.push_back(plainCheck(CheckKind::Released, false, facts.heldOn, facts.heldPain));
        return evidence;
    }
    if (now.state().block && isLoaded(now.state().stage)) {
        evidence.isPlanLed = true;
        return evidence;
    }
    EvidenceSubject lift{now, facts};
    if (facts.exposure) {
        lift.counted = factsOf(*facts.exposure, now.kit().measure, lift.policy);
    }
    describe(evidence, lift);
    if (const auto arrival = arrivalOf(now, day)) {
        evidence.next = arrival->stage;
        evidence.arrival = arrival->first;
    }
    return evidence;
}

const Check* checkOf(const Evidence& evidence, CheckKind kind)
{
    const auto found =
        std::find_if(evidence.checks.begin(), evidence.checks.end(), [kind](const Check& c) { return c.kind == kind; });
    return found == evidence.checks.end() ? nullptr : &*found;
}

int amountFor(base::Reps reps, lifts::Measure measure, const Policy& policy)
{
    switch (measure) {
        case lifts::Measure::Reps:
            return reps.value();
        case lifts::Measure::Seconds:
            return reps.value() * policy.secondsPerRep.value();
        case lifts::Measure::Metres:
            return reps.value() * policy.metresPerRep.value();
    }
    return reps.value();
}

}  // namespace chalk::progression
