#include "core/checkin/attention.h"

#include <algorithm>
#include <functional>
#include <iterator>

namespace chalk::checkin {

namespace {

using clients::ClearanceState;
using progression::Flag;
using sessions::SessionState;

/// How many of some sessions were come to; those cancelled in time are left aside.
struct Attended {
    int came = 0;
    int of = 0;
};

/// The last `most` sessions that count.
Attended attendedOf(const std::vector<SessionState>& states, int most)
{
    Attended attended;
    for (auto state = states.rbegin(); state != states.rend() && attended.of < most; ++state) {
        switch (*state) {
        case SessionState::Recorded:
            ++attended.came;
            ++attended.of;
            break;
        case SessionState::Missed:
        case SessionState::CancelledLate:
            ++attended.of;
            break;
        case SessionState::Planned:
        case SessionState::Printed:
        case SessionState::CancelledInTime:
        case SessionState::Withdrawn:
            break;
        }
    }
    return attended;
}

std::vector<const LiftFacts*> liftsWhere(const ClientFacts& facts, const std::function<bool(const LiftFacts&)>& isMeant)
{
    std::vector<const LiftFacts*> lifts;
    for (const LiftFacts& lift : facts.lifts) {
        if (isMeant(lift)) {
            lifts.push_back(&lift);
        }
    }
    return lifts;
}

int othersOf(const std::vector<const LiftFacts*>& lifts)
{
    return static_cast<int>(lifts.size()) - 1;
}

std::optional<AttentionReason> clearanceDue(const clients::Clearance& clearance, base::Date day, const AttentionThresholds& thresholds)
{
    using Cause = ClearanceDue::Cause;
    switch (clearance.state) {
    case ClearanceState::NotNeeded:
        return std::nullopt;
    case ClearanceState::Recommended:
        return ClearanceDue{clearance.askedOn ? Cause::Waiting : Cause::NotAsked, clearance.askedOn, clearance.reason, clearance.remindOn};
    case ClearanceState::StopAndSeek:
        return ClearanceDue{Cause::StopAndSeek, clearance.askedOn, clearance.reason, clearance.remindOn};
    case ClearanceState::Unanswered:
        return ClearanceDue{Cause::IntakeOpen, {}, {}};
    case ClearanceState::Granted:
        if (!clearance.validUntil || *clearance.validUntil - day > thresholds.clearanceEndsDays) {
            return std::nullopt;
        }
        return ClearanceDue{clients::isBlocked(clearance, day) ? Cause::RanOut : Cause::RunsOut, clearance.validUntil, clearance.reason};
    }
    return std::nullopt;
}

std::optional<AttentionReason> liftOnHold(const ClientFacts& facts)
{
    const auto held = liftsWhere(facts, [](const LiftFacts& lift) { return lift.isOnHold; });
    if (held.empty()) {
        return std::nullopt;
    }
    const auto painOf = [](const LiftFacts* lift) { return lift->hold ? lift->hold->pain : -1; };
    const LiftFacts* worst = *std::max_element(held.begin(), held.end(),
                                               [&painOf](const LiftFacts* a, const LiftFacts* b) { return painOf(a) < painOf(b); });
    return LiftOnHold{worst->pattern, worst->exerciseKey, worst->hold, othersOf(held)};
}

/// A lift whose stage is not known since when counts as the youngest.
bool isLongerInStage(const LiftFacts* a, const LiftFacts* b)
{
    return a->stageSince && (!b->stageSince || *a->stageSince < *b->stageSince);
}

std::vector<const LiftFacts*> stalledLifts(const ClientFacts& facts)
{
    return liftsWhere(facts, [](const LiftFacts& lift) { return lift.flags.has(Flag::Stalled) && !lift.isOnHold; });
}

std::optional<AttentionReason> liftStalled(const ClientFacts& facts)
{
    const auto stalled = stalledLifts(facts);
    if (stalled.empty()) {
        return std::nullopt;
    }
    const LiftFacts* longest = *std::min_element(stalled.begin(), stalled.end(), isLongerInStage);
    const Attended attended = attendedOf(facts.lastSessions, static_cast<int>(facts.lastSessions.size()));
    return LiftStalled{longest->pattern, longest->exerciseKey, longest->stage, longest->stageSince, longest->load,
                       othersOf(stalled), attended.came,       attended.of};
}

std::optional<AttentionReason> missed(const ClientFacts& facts, base::Date day, const AttentionThresholds& thresholds)
{
    const Attended attended = attendedOf(facts.lastSessions, thresholds.missedWindow);
    if (attended.of - attended.came >= thresholds.missedLimit) {
        return SessionsMissed{attended.came, attended.of};
    }
    if (!facts.isBooked && facts.lastCame && day - *facts.lastCame >= thresholds.unseenDays) {
        return NotSeen{*facts.lastCame, day - *facts.lastCame};
    }
    return std::nullopt;
}

/// Whether a lift has been learnt for long without ever having been loaded. One that came back to Control has been loaded.
bool isLearntForLong(const LiftFacts& lift, base::Date day, const AttentionThresholds& thresholds)
{
    return !progression::isLoaded(lift.stage) && !lift.firstWork && !lift.isOnHold && lift.stageSince &&
           day - *lift.stageSince >= thresholds.learningDays;
}

std::optional<AttentionReason> screenDue(const ClientFacts& facts, base::Date day, const AttentionThresholds& thresholds)
{
    const auto afterLayoff = liftsWhere(facts, [](const LiftFacts& lift) { return lift.flags.has(Flag::Rescreen); });
    const auto learning = liftsWhere(facts, [day, &thresholds](const LiftFacts& lift) {
        return !lift.flags.has(Flag::Rescreen) && isLearntForLong(lift, day, thresholds);
    });
    const int others = othersOf(afterLayoff) + othersOf(learning) + 1;
    if (!afterLayoff.empty()) {
        const LiftFacts* lift = afterLayoff.front();
        return ScreenDue{lift->pattern, lift->exerciseKey, lift->stage, true, lift->lastWork, others};
    }
    if (!learning.empty()) {
        const LiftFacts* lift = *std::min_element(learning.begin(), learning.end(), isLongerInStage);
        return ScreenDue{lift->pattern, lift->exerciseKey, lift->stage, false, lift->stageSince, others};
    }
    return std::nullopt;
}

std::optional<AttentionReason> directionDue(const ClientFacts& facts, base::Date day, const AttentionThresholds& thresholds)
{
    std::optional<base::Date> firstLoad;
    for (const LiftFacts& lift : facts.lifts) {
        if (lift.firstWork && (!firstLoad || *lift.firstWork < *firstLoad)) {
            firstLoad = lift.firstWork;
        }
    }
    if (!firstLoad || isDirectionSettled(facts.direction, day)) {
        return std::nullopt;
    }
    const auto planEnd = planToReview(facts.direction, day);
    const int days = day - *firstLoad;
    const int stalls = static_cast<int>(stalledLifts(facts).size());
    const bool isEarly = days >= thresholds.directionEarlyDays && stalls >= thresholds.directionStalls;
    const bool isDue = planEnd || days >= thresholds.directionDays || isEarly;
    return isDue ? std::optional<AttentionReason>(DirectionDue{*firstLoad, days, stalls, planEnd}) : std::nullopt;
}

struct LiftOfReason {
    std::optional<lifts::Pattern> operator()(const LiftOnHold& reason) const { return reason.pattern; }
    std::optional<lifts::Pattern> operator()(const LiftStalled& reason) const { return reason.pattern; }
    std::optional<lifts::Pattern> operator()(const ScreenDue& reason) const { return reason.pattern; }
    std::optional<lifts::Pattern> operator()(const ClearanceDue&) const { return std::nullopt; }
    std::optional<lifts::Pattern> operator()(const SessionsMissed&) const { return std::nullopt; }
    std::optional<lifts::Pattern> operator()(const NotSeen&) const { return std::nullopt; }
    std::optional<lifts::Pattern> operator()(const DirectionDue&) const { return std::nullopt; }
};

}  // namespace

std::vector<AttentionReason> attentionFor(const ClientFacts& facts, base::Date day, const AttentionThresholds& thresholds)
{
    std::vector<AttentionReason> reasons;
    const auto add = [&reasons](std::optional<AttentionReason> reason) {
        if (reason) {
            reasons.push_back(*std::move(reason));
        }
    };
    add(clearanceDue(facts.clearance, day, thresholds));
    add(liftOnHold(facts));
    if ((facts.awayUntil && day < *facts.awayUntil) || clients::isBlocked(facts.clearance, day)) {
        return reasons;
    }
    add(liftStalled(facts));
    add(missed(facts, day, thresholds));
    add(screenDue(facts, day, thresholds));
    add(directionDue(facts, day, thresholds));
    return reasons;
}

std::optional<lifts::Pattern> liftOf(const AttentionReason& reason)
{
    return std::visit(LiftOfReason{}, reason);
}

}  // namespace chalk::checkin
