#include "core/store/roster_facts.h"

#include <algorithm>

namespace chalk::store {

namespace {

/// A shorter gap is no layoff.
constexpr int kShortestLayoffDays = 14;

/// The last sessions that were over by `day`, the latest first, as many as the roster has.
std::vector<const sessions::Session*> lastSessionsOf(std::span<const NamedSession> sessions, base::Date day)
{
    std::vector<const sessions::Session*> past;
    for (const NamedSession& one : sessions) {
        if (one.session.date <= day && !sessions::isOpen(one.session.state) && one.session.state != sessions::SessionState::Withdrawn) {
            past.push_back(&one.session);
        }
    }
    std::stable_sort(past.begin(), past.end(), [](const sessions::Session* a, const sessions::Session* b) {
        return std::pair(a->date, a->startMinute) > std::pair(b->date, b->startMinute);
    });
    past.resize(std::min(past.size(), static_cast<std::size_t>(kRosterSessions)));
    return past;
}

}  // namespace

checkin::ClientFacts factsOf(const RosterEntry& entry)
{
    checkin::ClientFacts facts;
    facts.clearance = entry.clearance;
    for (const LiftStand& lift : entry.lifts) {
        facts.lifts.push_back({lift.pattern, lift.exerciseKey, lift.stage, lift.isOnHold, lift.flags, lift.stageSince, lift.lastWork, lift.firstWork, {}, {}});
    }
    facts.lastSessions = entry.lastSessions;
    facts.lastCame = entry.lastSession;
    facts.isBooked = entry.next.has_value();
    facts.startedOn = entry.client.startedOn;
    facts.awayUntil = entry.client.awayUntil;
    facts.direction = entry.direction;
    return facts;
}

checkin::ClientFacts factsOf(const ClientFile& file, std::span<const NamedSession> sessions, base::Date day)
{
    checkin::ClientFacts facts;
    facts.clearance = file.clearance;
    for (const ClientLift& one : file.lifts) {
        const progression::LiftState& state = one.lift.machine.state();
        facts.lifts.push_back({one.lift.pattern, one.lift.machine.kit().exerciseKey, state.stage, state.isOnHold, state.flags, one.lift.stageSince,
                               state.lastWork, one.lift.firstWork, {}, {}});
    }
    for (const sessions::Session* session : lastSessionsOf(sessions, day)) {
        if (!facts.lastCame && session->state == sessions::SessionState::Recorded) {
            facts.lastCame = session->date;
        }
        facts.lastSessions.push_back(session->state);
    }
    std::reverse(facts.lastSessions.begin(), facts.lastSessions.end());
    facts.isBooked = file.next.session.has_value();
    facts.startedOn = file.client.startedOn;
    facts.awayUntil = file.client.awayUntil;
    facts.direction = file.direction;
    return facts;
}

bool mayHaveLayoff(const checkin::LiftFacts& lift, base::Date day)
{
    return progression::isLoaded(lift.stage) && !lift.isOnHold && lift.lastWork && day - *lift.lastWork >= kShortestLayoffDays;
}

void applyLayoff(checkin::LiftFacts& facts, const progression::Prescription& next)
{
    if (next.stage != facts.stage) {
        facts.stage = next.stage;
        facts.stageSince.reset();
    }
    facts.flags = next.flags;
}

}  // namespace chalk::store
