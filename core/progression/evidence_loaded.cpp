#include "core/progression/evidence_stages.h"

#include <algorithm>

namespace chalk::progression {

namespace {

void addTargetCheck(Evidence& evidence, const EvidenceSubject& lift, std::optional<int> came)
{
    evidence.checks.push_back(plainCheck(CheckKind::Target, false, came ? lift.facts.exposureDate : std::nullopt,
                                         came.value_or(-1), evidence.target->repsLeast.value()));
}

/// Pain, steadiness and reserve of the last exposure, then the target.
void addExposureChecks(Evidence& evidence, const EvidenceSubject& lift)
{
    addBodyChecks(evidence, lift.facts, lift.facts.exposureDate);
    if (lift.counted && lift.counted->leastRir) {
        const int least = *lift.counted->leastRir;
        evidence.checks.push_back(plainCheck(CheckKind::ReserveKept, least >= lift.policy.reserve, lift.facts.exposureDate,
                                             least, lift.policy.reserve));
    }
    addTargetCheck(evidence, lift, lift.counted ? std::optional(lift.counted->adjustedReps) : std::nullopt);
}

/// The reps that Set build and Rest cut hold, and the fewest that still pass.
EvidenceTarget heldRepsTarget(const EvidenceSubject& lift, base::Sets sets)
{
    const base::Reps held = lift.state.holdReps.value_or(lift.policy.repGoal);
    EvidenceTarget target{*lift.state.load, sets, held, held, std::max(base::Reps(), held - lift.policy.repTolerance)};
    target.isOpenAbove = true;
    target.reserve = lift.policy.reserve;
    return target;
}

/// What the last exposure lacked for B-5, its capacity left aside.
void addFirstLoadChecks(Evidence& evidence, const EvidenceSubject& lift)
{
    const ExposureFacts sets = lift.counted.value_or(ExposureFacts{});
    const auto date = lift.facts.exposureDate;
    const int setsNeeded = lift.policy.baseSets.value();
    const int reserve = lift.policy.reserve;
    const bool isFull = sets.counted >= setsNeeded && sets.leastReps >= lift.policy.repFloor.value();
    const int rir = sets.leastRir.value_or(-1);
    evidence.checks.push_back(plainCheck(CheckKind::RirRecorded, sets.leastRir.has_value(), date));
    evidence.checks.push_back(plainCheck(CheckKind::FullSets, isFull, date, sets.counted, setsNeeded));
    evidence.checks.push_back(plainCheck(CheckKind::ReserveKept, rir >= reserve, date, rir, reserve));
}

}  // namespace

void describeBaseLoad(Evidence& evidence, const EvidenceSubject& lift)
{
    const Policy& p = lift.policy;
    EvidenceTarget target{*lift.state.load, p.baseSets, p.repFloor, p.repCeiling, p.repFloor};
    target.isOpenAbove = true;
    target.reserve = p.reserve;
    target.capacityMin = p.capacityMin;
    if (lift.machine.loads().nextAbove(*lift.state.load)) {
        target.capacityMax = p.capacityMax;
    }
    evidence.target = target;
    addBodyChecks(evidence, lift.facts, lift.facts.exposureDate);
    addFirstLoadChecks(evidence, lift);
    for (const CheckKind kind : {CheckKind::RirRecorded, CheckKind::FullSets, CheckKind::ReserveKept}) {
        evidence.progress.done += checkOf(evidence, kind)->isMet ? 1 : 0;
    }
    evidence.progress.unit = EvidenceProgress::Unit::Checks;
    evidence.progress.needed = 4;
    addTargetCheck(evidence, lift, lift.counted ? lift.counted->capacity : std::nullopt);
    evidence.checks.back().needed = p.capacityMin.value();
}

void describeLoadBuild(Evidence& evidence, const EvidenceSubject& lift)
{
    const Policy& p = lift.policy;
    const auto above = lift.machine.loads().nextAbove(*lift.state.load);
    EvidenceTarget target{*lift.state.load, p.baseSets, p.repFloor, p.hardReps, p.repFloor};
    target.reserve = p.reserve;
    evidence.progress = {EvidenceProgress::Unit::Records, 0, 1};
    if (lift.state.bridgeTarget && above) {
        const int made = lift.state.bridgeTarget->value() - 1;
        target.load = *above;
        evidence.progress = {EvidenceProgress::Unit::Reps, made, p.repGoal.value()};
        evidence.checks.push_back(
            plainCheck(CheckKind::BridgeCrossed, false, lift.facts.exposureDate, made, p.repGoal.value()));
        evidence.checks.back().load = *above;
    }
    target.isOpenAbove = !lift.machine.loads().nextAbove(target.load);
    evidence.target = target;
    addExposureChecks(evidence, lift);
    const auto settled = lift.state.lastMade;
    evidence.shortfall = Shortfall{settled ? Shortfall::End::SettleLoad : Shortfall::End::CutLoad,
                                   lift.state.misses,
                                   p.missLimit,
                                   settled.value_or(base::Load()),
                                   {},
                                   {}};
}

void describeRepBuild(Evidence& evidence, const EvidenceSubject& lift)
{
    const Policy& p = lift.policy;
    evidence.target = EvidenceTarget{*lift.state.load, p.baseSets, p.repGoal, p.repGoal, p.repGoal};
    evidence.target->isOpenAbove = true;
    evidence.target->reserve = p.reserve;
    evidence.progress = {EvidenceProgress::Unit::Reps, std::min(lift.state.best, p.repGoal).value(), p.repGoal.value()};
    addExposureChecks(evidence, lift);
    const bool isEnough = lift.state.best >= p.repCeiling;
    evidence.shortfall = Shortfall{isEnough ? Shortfall::End::MoveOnWithReps : Shortfall::End::CutLoad,
                                   lift.state.misses,
                                   p.repMissLimit,
                                   {},
                                   isEnough ? lift.state.best : base::Reps(),
                                   {}};
}

void describeSetBuild(Evidence& evidence, const EvidenceSubject& lift)
{
    const Policy& p = lift.policy;
    const base::Sets now = lift.state.sets.value_or(p.baseSets);
    const base::Sets top = std::max(now, p.topSets);
    evidence.target = heldRepsTarget(lift, top);
    const int done = std::max(0, std::min(now, p.topSets).value() - p.baseSets.value() - 1);
    evidence.progress = {EvidenceProgress::Unit::Sets, done, p.topSets.value() - p.baseSets.value()};
    evidence.checks.push_back(
        plainCheck(CheckKind::SetsReached, now >= p.topSets, lift.facts.exposureDate, now.value(), p.topSets.value()));
    addExposureChecks(evidence, lift);
    const base::Sets fewer = now - base::Sets(1);
    const bool isEnough = fewer >= p.leastSetsToPass;
    evidence.shortfall = Shortfall{isEnough ? Shortfall::End::MoveOnWithSets : Shortfall::End::CutLoad,
                                   lift.state.misses,
                                   p.missLimit,
                                   {},
                                   {},
                                   isEnough ? fewer : base::Sets()};
}

void describeRestCut(Evidence& evidence, const EvidenceSubject& lift)
{
    const Policy& p = lift.policy;
    const base::Seconds now = lift.state.rest.value_or(p.restSteps.front());
    const base::Seconds last = std::min(now, p.restSteps.back());
    evidence.target = heldRepsTarget(lift, lift.state.holdSets.value_or(p.topSets));
    evidence.target->rest = last;
    const auto toGo =
        std::count_if(p.restSteps.begin(), p.restSteps.end(), [now](base::Seconds step) { return step < now; });
    const int steps = static_cast<int>(p.restSteps.size());
    evidence.progress = {EvidenceProgress::Unit::RestSteps, std::max(0, steps - static_cast<int>(toGo) - 1), steps};
    evidence.checks.push_back(
        plainCheck(CheckKind::RestReached, toGo == 0, lift.facts.exposureDate, now.value(), last.value()));
    addExposureChecks(evidence, lift);
    evidence.shortfall = Shortfall{Shortfall::End::RestFound, lift.state.misses, p.missLimit, {}, {}, {}};
}

}  // namespace chalk::progression
