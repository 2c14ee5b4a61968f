#include "core/progression/evidence_stages.h"

namespace chalk::progression {

namespace {

void addPause(Evidence& evidence, const EvidenceSubject& lift, CheckKind kind, std::optional<int> held)
{
    const bool isMet = held && *held >= lift.policy.pauseMs;
    evidence.checks.push_back(plainCheck(kind, isMet, lift.facts.rehearsalDate, held.value_or(-1), lift.policy.pauseMs));
    evidence.progress.done += isMet ? 1 : 0;
}

}  // namespace

void describePattern(Evidence& evidence, const EvidenceSubject& lift)
{
    evidence.progress.unit = EvidenceProgress::Unit::Criteria;
    if (const Rehearsal* rehearsal = lift.facts.rehearsal) {
        for (const Criterion& criterion : rehearsal->criteria) {
            Check check = plainCheck(CheckKind::Criterion, criterion.verdict == Verdict::Met, lift.facts.rehearsalDate,
                                     static_cast<int>(criterion.verdict));
            check.key = criterion.key;
            evidence.checks.push_back(check);
            evidence.progress.done += check.isMet ? 1 : 0;
        }
        evidence.progress.needed = static_cast<int>(rehearsal->criteria.size());
        evidence.checks.push_back(
            plainCheck(CheckKind::PainFree, rehearsal->pain == 0, lift.facts.rehearsalDate, rehearsal->pain));
        evidence.checks.back().count = lift.facts.painFreeInARow;
    }
    evidence.target = EvidenceTarget{};
    evidence.checks.push_back(plainCheck(CheckKind::Target, false));
}

void describeControl(Evidence& evidence, const EvidenceSubject& lift)
{
    const Rehearsal none;
    const Rehearsal* rehearsal = lift.facts.rehearsal;
    const Pauses& pauses = rehearsal ? rehearsal->pauses : none.pauses;
    evidence.progress = {EvidenceProgress::Unit::Pauses, 0, 3};
    addPause(evidence, lift, CheckKind::PauseTop, pauses.topMs);
    addPause(evidence, lift, CheckKind::PauseMiddle, pauses.middleMs);
    addPause(evidence, lift, CheckKind::PauseBottom, pauses.bottomMs);
    const base::Reps needed = lift.policy.controlReps;
    if (rehearsal) {
        const auto date = lift.facts.rehearsalDate;
        evidence.checks.push_back(
            plainCheck(CheckKind::ControlReps, rehearsal->reps >= needed, date, rehearsal->reps.value(), needed.value()));
        for (const Criterion& criterion : rehearsal->criteria) {
            if (criterion.verdict != Verdict::Met) {
                evidence.checks.push_back(
                    plainCheck(CheckKind::Criterion, false, date, static_cast<int>(criterion.verdict)));
                evidence.checks.back().key = criterion.key;
            }
        }
        addBodyChecks(evidence, lift.facts, date);
    }
    evidence.target = EvidenceTarget{};
    evidence.target->repsLow = evidence.target->repsHigh = evidence.target->repsLeast = needed;
    evidence.checks.push_back(plainCheck(CheckKind::Target, false, {}, -1, needed.value()));
}

}  // namespace chalk::progression
