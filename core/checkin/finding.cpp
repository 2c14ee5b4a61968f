#include "core/checkin/finding.h"

#include "core/checkin/lift_evidence.h"
#include "core/plateau/detector.h"

#include <algorithm>
#include <tuple>

namespace chalk::checkin {

namespace {

template <class Reason>
bool holdsOne(std::span<const AttentionReason> reasons)
{
    return std::any_of(reasons.begin(), reasons.end(), [](const AttentionReason& reason) { return std::holds_alternative<Reason>(reason); });
}

const DirectionDue* directionAmong(std::span<const AttentionReason> reasons)
{
    for (const AttentionReason& reason : reasons) {
        if (const auto* due = std::get_if<DirectionDue>(&reason)) {
            return due;
        }
    }
    return nullptr;
}

/// The lift of a pattern; nothing where the reason is not among `reasons` or the lift not among `lifts`.
template <class Reason>
std::optional<base::LiftId> liftBehind(std::span<const AttentionReason> reasons, std::span<const JudgedLift> lifts)
{
    for (const AttentionReason& reason : reasons) {
        if (!std::holds_alternative<Reason>(reason)) {
            continue;
        }
        const auto pattern = liftOf(reason);
        const auto lift = std::find_if(lifts.begin(), lifts.end(), [pattern](const JudgedLift& one) { return one.pattern == pattern; });
        return lift == lifts.end() ? std::nullopt : std::optional(lift->lift);
    }
    return std::nullopt;
}

/// The stalled lift that is in most need; nothing where none is stalled.
const JudgedLift* worstStalled(std::span<const JudgedLift> lifts)
{
    const JudgedLift* worst = nullptr;
    for (const JudgedLift& lift : lifts) {
        if (lift.isStalled && (worst == nullptr || std::tie(worst->flatWeeks, worst->z) < std::tie(lift.flatWeeks, lift.z))) {
            worst = &lift;
        }
    }
    return worst;
}

int flatWeeksOf(const std::optional<DayRange>& flat)
{
    constexpr int kDaysInWeek = 7;
    return flat ? (flat->to - flat->from) / kDaysInWeek : 0;
}

bool isRegression(const plateau::Judgement& judgement)
{
    return judgement.verdict == plateau::PlateauVerdict::Regressing;
}

}  // namespace

JudgedLift judgedLiftOf(base::LiftId lift, const LiftFacts& facts, std::span<const plateau::LoggedExposure> log, const plateau::CheckDay& check)
{
    const auto clean = plateau::cleaned(log);
    const plateau::Judgement judgement = plateau::judge(clean, check);
    const bool isFlat = isStalled(judgement, facts.flags, facts.isOnHold);
    return {lift,    facts.pattern, facts.exerciseKey, isFlat, isRegression(judgement), isFlat ? flatWeeksOf(flatSinceBest(clean, check.date)) : 0,
            judgement.z.value_or(0)};
}

JudgedLift judgedLiftOf(const LiftEvidence& evidence)
{
    return {evidence.lift,
            evidence.pattern,
            evidence.exerciseKey,
            isStalled(evidence.judgement, evidence.flags, evidence.isOnHold),
            isRegression(evidence.judgement),
            flatWeeksOf(evidence.flat),
            evidence.judgement.z.value_or(0)};
}

Finding findingOf(std::span<const AttentionReason> reasons, std::span<const JudgedLift> lifts, bool mayTrain)
{
    if (holdsOne<LiftOnHold>(reasons)) {
        return {FindingKind::Pain, liftBehind<LiftOnHold>(reasons, lifts), 0};
    }
    if (holdsOne<ClearanceDue>(reasons)) {
        return {FindingKind::Clearance, std::nullopt, 0};
    }
    if (const JudgedLift* stalled = mayTrain ? worstStalled(lifts) : nullptr) {
        return {FindingKind::Plateau, stalled->lift, stalled->flatWeeks};
    }
    if (const DirectionDue* due = directionAmong(reasons)) {
        return {FindingKind::Direction, std::nullopt, 0, due->planEnd};
    }
    if (holdsOne<SessionsMissed>(reasons) || holdsOne<NotSeen>(reasons)) {
        return {FindingKind::Attendance, std::nullopt, 0};
    }
    if (holdsOne<ScreenDue>(reasons)) {
        return {FindingKind::Rescreen, liftBehind<ScreenDue>(reasons, lifts), 0};
    }
    return {};
}

bool isDue(const Finding& finding, std::optional<base::Date> nextReview, base::Date day)
{
    return finding.kind == FindingKind::Pain || finding.kind == FindingKind::Clearance || !nextReview || *nextReview <= day;
}

bool isBefore(const QueueEntry& a, const QueueEntry& b)
{
    return std::tuple(a.finding.kind, -a.finding.flatWeeks, std::tie(a.name), a.client) < std::tuple(b.finding.kind, -b.finding.flatWeeks, std::tie(b.name), b.client);
}

int reviewDaysAfter(FindingKind kind)
{
    constexpr int kWeek = 7;
    switch (kind) {
    case FindingKind::Pain:
    case FindingKind::Clearance:
    case FindingKind::Attendance:
        return kWeek;
    case FindingKind::Plateau:
    case FindingKind::Direction:
    case FindingKind::Rescreen:
        return 2 * kWeek;
    case FindingKind::OnCourse:
        return 4 * kWeek;
    }
    return kWeek;
}

}  // namespace chalk::checkin
