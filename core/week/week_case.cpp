#include "core/week/week_case.h"

#include "core/sessions/session_lifts.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace chalk::week {

namespace {

using sessions::Session;
using sessions::SessionKind;
using sessions::SessionState;

constexpr int kFirstUsualMinute = 9 * 60;
constexpr int kLastUsualMinute = 20 * 60;
constexpr int kGrid = 15;

std::vector<DaySpan> spansOf(const clients::WeekHours& hours)
{
    std::vector<DaySpan> spans;
    for (const clients::DayHours& stretch : hours.stretches()) {
        spans.push_back({stretch.weekday, stretch.beginMinute, stretch.endMinute});
    }
    return spans;
}

/// What is left of the spans without one.
std::vector<DaySpan> without(const std::vector<DaySpan>& spans, const DaySpan& hole)
{
    std::vector<DaySpan> rest;
    for (const DaySpan& span : spans) {
        if (span.day != hole.day || hole.to <= span.from || hole.from >= span.to) {
            rest.push_back(span);
            continue;
        }
        if (span.from < hole.from) {
            rest.push_back({span.day, span.from, hole.from});
        }
        if (hole.to < span.to) {
            rest.push_back({span.day, hole.to, span.to});
        }
    }
    return rest;
}

/// The days of the week that a closure covers.
std::vector<DaySpan> spansOf(const Closure& closure, base::Date monday)
{
    std::vector<DaySpan> spans;
    for (int day = 0; day < kWeekDays; ++day) {
        if (closure.first <= monday + day && monday + day <= closure.last) {
            spans.push_back({day, closure.fromMinute, closure.toMinute});
        }
    }
    return spans;
}

/// Whether a session counts for the number of a week.
bool isCounted(SessionState state)
{
    return sessions::takesTime(state) || state == SessionState::Missed || state == SessionState::CancelledLate;
}

class CaseMaker {
public:
    explicit CaseMaker(const WeekFacts& facts) : m_facts(facts) {}

    WeekCase make()
    {
        m_case.problem.name = base::toString(m_facts.monday.isoWeek());
        m_case.problem.grid = kGrid;
        m_case.problem.weights = m_facts.studio.weights;
        addOpen();
        addStations();
        for (const CoachOfWeek& coach : m_facts.coaches) {
            addCoach(coach);
        }
        for (std::size_t i = 0; i < m_facts.clients.size(); ++i) {
            addClient(i);
        }
        return std::move(m_case);
    }

private:
    [[nodiscard]] int minuteOf(const Session& session) const { return (session.date - m_facts.monday) * kDayMinutes + session.startMinute; }

    void addOpen()
    {
        std::vector<DaySpan>& open = m_case.problem.open;
        open = spansOf(m_facts.studio.open);
        for (const Closure& closure : m_facts.closures) {
            if (closure.coach.isNone() && !closure.station) {
                for (const DaySpan& hole : spansOf(closure, m_facts.monday)) {
                    open = without(open, hole);
                }
            }
        }
        for (int day = 0; day < kWeekDays; ++day) {
            const int past = std::clamp(m_facts.nowMinute - day * kDayMinutes, 0, kDayMinutes);
            open = past == 0 ? open : without(open, {day, 0, past});
        }
    }

    void addStations()
    {
        for (const auto& [station, units] : m_facts.studio.stations) {
            m_stations[station] = m_case.problem.stations.size();
            m_case.problem.stations.push_back({std::string(lifts::keyOf(station)), units, {}});
        }
        for (const Closure& closure : m_facts.closures) {
            const auto station = closure.station ? m_stations.find(*closure.station) : m_stations.end();
            if (station != m_stations.end()) {
                for (const DaySpan& span : spansOf(closure, m_facts.monday)) {
                    m_case.problem.stations[station->second].closures.push_back({span, closure.units});
                }
            }
        }
    }

    void addCoach(const CoachOfWeek& coach)
    {
        CoachWeek& week = m_case.problem.coaches.emplace_back();
        week.id = coach.coach.name;
        week.capacity = coach.work.capacity;
        week.softMaxMinutes = coach.work.softMaxMinutes;
        week.windows = spansOf(coach.work.hours.value_or(m_facts.studio.open));
        for (const Closure& closure : m_facts.closures) {
            if (closure.coach == coach.coach.id && !closure.coach.isNone()) {
                for (const DaySpan& span : spansOf(closure, m_facts.monday)) {
                    week.absences.push_back(span);
                }
            }
        }
    }

    [[nodiscard]] std::optional<std::size_t> indexOf(base::CoachId coach) const
    {
        const auto at = std::find_if(m_facts.coaches.begin(), m_facts.coaches.end(), [coach](const CoachOfWeek& one) { return one.coach.id == coach; });
        return at == m_facts.coaches.end() ? std::nullopt : std::optional(static_cast<std::size_t>(at - m_facts.coaches.begin()));
    }

    void addClient(std::size_t index)
    {
        const ClientOfWeek& client = m_facts.clients[index];
        ClientWeek& week = m_case.problem.clients.emplace_back();
        week.id = client.client.name;
        week.priority = client.planning.priority;
        week.maxGroup = groupOf(client);
        week.recovery = client.planning.recovery;
        week.available = availableOf(client);
        week.preferred = startsIn(client.preferred, client.sessionMinutes);
        if (const auto own = indexOf(client.client.coach)) {
            week.coaches.push_back({*own, 0});
        }
        for (const CoachWish& wish : client.planning.otherCoaches) {
            if (const auto other = indexOf(wish.coach); other && wish.coach != client.client.coach) {
                week.coaches.push_back({*other, wish.cost});
            }
        }
        m_candidates.clear();
        for (const LiftOfWeek& lift : client.lifts) {
            m_candidates.push_back({lift.id, lift.pattern, lift.lastTrained});
        }
        addSessions(index);
    }

    [[nodiscard]] std::vector<DaySpan> availableOf(const ClientOfWeek& client) const
    {
        std::vector<DaySpan> spans = spansOf(client.free);
        for (int day = 0; day < kWeekDays && client.free.isEmpty(); ++day) {
            spans.push_back({day, kFirstUsualMinute, kLastUsualMinute});
        }
        const auto until = client.client.awayUntil;
        spans.erase(std::remove_if(spans.begin(), spans.end(), [&](const DaySpan& span) { return until && m_facts.monday + span.day < *until; }), spans.end());
        return spans;
    }

    /// Starts of sessions that lie wholly in the hours.
    static std::vector<DaySpan> startsIn(const clients::WeekHours& hours, int minutes)
    {
        std::vector<DaySpan> starts;
        for (const DaySpan& span : spansOf(hours)) {
            starts.push_back({span.day, span.from, std::max(span.from, span.to - minutes)});
        }
        return starts;
    }

    void addSessions(std::size_t index)
    {
        const ClientOfWeek& client = m_facts.clients[index];
        std::set<int> usedDays;
        int counted = 0;
        for (const BookedSession& booked : client.sessions) {
            const int start = minuteOf(booked.session);
            const bool isThisWeek = start >= 0 && start < kWeekDays * kDayMinutes;
            counted += isThisWeek && isCounted(booked.session.state) ? 1 : 0;
            if (isThisWeek) {
                usedDays.insert(start / kDayMinutes);
            }
            if (sessions::takesTime(booked.session.state)) {
                addBooked(index, booked, counted);
            }
        }
        addMissing(index, counted, usedDays);
    }

    void addBooked(std::size_t index, const BookedSession& booked, int number)
    {
        const Session& session = booked.session;
        const std::vector<base::LiftId> lifts = liftsOf(index, booked.lifts, number, session.date, session.kind);
        const int start = minuteOf(session);
        if (start < std::max(m_facts.nowMinute, 0)) {
            m_case.problem.clients[index].lastWeek.push_back({start, patternsOf(index, lifts)});
            return;
        }
        const auto coach = indexOf(session.coach);
        if (!coach || start >= kWeekDays * kDayMinutes) {
            return;
        }
        SessionWish wish = wishOf(index, lifts, session.minutes);
        wish.id = "S" + std::to_string(session.id.value());
        wish.standing = Slot{*coach, start};
        wish.isLocked = session.isLocked;
        m_case.problem.sessions.push_back(std::move(wish));
        m_case.origins.push_back({session.client, session.id, session.kind, number, booked.lifts});
        m_case.booked.emplace_back(Slot{*coach, start});
    }

    void addMissing(std::size_t index, int counted, const std::set<int>& usedDays)
    {
        const ClientOfWeek& client = m_facts.clients[index];
        const bool isNew = client.lifts.empty();
        const int missing = client.sessionsWanted() - counted;
        if (missing <= 0) {
            return;
        }
        if (client.isBlocked || isAwayAllWeek(client)) {
            m_case.notProposed.push_back({client.client.id, client.isBlocked ? NoProposalReason::AwaitsClearance : NoProposalReason::AwayAllWeek, missing});
            return;
        }
        const std::vector<Slot> standing = freeStanding(client, usedDays);
        for (int i = 0; i < missing; ++i) {
            const int number = counted + i + 1;
            const SessionKind kind = isNew ? SessionKind::MovementScreen : SessionKind::Training;
            const base::Date day = m_facts.monday + std::min(kWeekDays - 1, number);
            const std::vector<base::LiftId> lifts = liftsOf(index, {}, number, day, kind);
            SessionWish wish = wishOf(index, lifts, client.sessionMinutes);
            wish.id = "C" + std::to_string(client.client.id.value()) + "-" + std::to_string(number);
            if (static_cast<std::size_t>(i) < standing.size()) {
                wish.standing = standing[static_cast<std::size_t>(i)];
            }
            m_case.problem.sessions.push_back(std::move(wish));
            m_case.origins.push_back({client.client.id, {}, kind, number, {}});
            m_case.booked.emplace_back();
        }
    }

    [[nodiscard]] bool isAwayAllWeek(const ClientOfWeek& client) const
    {
        return client.client.awayUntil && *client.client.awayUntil >= m_facts.monday + kWeekDays;
    }

    [[nodiscard]] std::vector<Slot> freeStanding(const ClientOfWeek& client, const std::set<int>& usedDays) const
    {
        std::vector<Slot> slots;
        for (const StandingSlot& slot : client.planning.standing) {
            const auto coach = indexOf(slot.coach);
            const int start = slot.weekday * kDayMinutes + slot.startMinute;
            if (coach && usedDays.count(slot.weekday) == 0 && start >= m_facts.nowMinute) {
                slots.push_back({*coach, start});
            }
        }
        return slots;
    }

    /// The lifts of a session: as planned for it, as the plan has its number, or those that waited longest; they count as trained then.
    std::vector<base::LiftId> liftsOf(std::size_t index, const std::vector<base::LiftId>& planned, int number, base::Date day, SessionKind kind)
    {
        const ClientOfWeek& client = m_facts.clients[index];
        std::vector<base::LiftId> lifts = planned;
        if (lifts.empty() && kind == SessionKind::Training) {
            lifts = client.contents.empty() ? sessions::chooseLifts(m_candidates) : liftsOfContent(client, number);
        }
        for (sessions::LiftCandidate& candidate : m_candidates) {
            if (std::find(lifts.begin(), lifts.end(), candidate.lift) != lifts.end()) {
                candidate.lastTrained = std::max(candidate.lastTrained.value_or(day), day);
            }
        }
        return lifts;
    }

    static std::vector<base::LiftId> liftsOfContent(const ClientOfWeek& client, int number)
    {
        const std::vector<lifts::Pattern>& content = client.contents[static_cast<std::size_t>(std::max(0, number - 1)) % client.contents.size()];
        std::vector<base::LiftId> lifts;
        for (const LiftOfWeek& lift : client.lifts) {
            if (std::find(content.begin(), content.end(), lift.pattern) != content.end()) {
                lifts.push_back(lift.id);
            }
        }
        return lifts;
    }

    [[nodiscard]] std::vector<LiftOfWeek> chosen(std::size_t index, const std::vector<base::LiftId>& ids) const
    {
        std::vector<LiftOfWeek> lifts;
        for (const LiftOfWeek& lift : m_facts.clients[index].lifts) {
            if (std::find(ids.begin(), ids.end(), lift.id) != ids.end()) {
                lifts.push_back(lift);
            }
        }
        return lifts;
    }

    [[nodiscard]] std::vector<std::string> patternsOf(std::size_t index, const std::vector<base::LiftId>& ids) const
    {
        std::vector<std::string> patterns;
        for (const LiftOfWeek& lift : chosen(index, ids)) {
            patterns.emplace_back(lifts::keyOf(lift.pattern));
        }
        return patterns;
    }

    /// Each lift takes its station for an equal part of the session.
    [[nodiscard]] SessionWish wishOf(std::size_t index, const std::vector<base::LiftId>& ids, int minutes) const
    {
        SessionWish wish;
        wish.client = index;
        wish.minutes = minutes;
        wish.patterns = patternsOf(index, ids);
        const std::vector<LiftOfWeek> lifts = chosen(index, ids);
        std::map<std::size_t, int> parts;
        for (const LiftOfWeek& lift : lifts) {
            if (const auto station = m_stations.find(lift.station); station != m_stations.end()) {
                ++parts[station->second];
            }
        }
        for (const auto& [station, count] : parts) {
            wish.needs.push_back({station, std::max(1, 100 * count / static_cast<int>(lifts.size())), 0, minutes});
        }
        return wish;
    }

    const WeekFacts& m_facts;
    WeekCase m_case;
    std::map<lifts::Station, std::size_t> m_stations;
    std::vector<sessions::LiftCandidate> m_candidates;  ///< of the present client
};

}  // namespace

WeekCase caseOf(const WeekFacts& facts)
{
    return CaseMaker(facts).make();
}

int groupOf(const ClientOfWeek& client)
{
    return client.planning.maxGroup.value_or(client.isInGroup ? kUsualGroup : 1);
}

BookingPlace placeOf(const WeekFacts& facts, const WeekCase& week, std::size_t session, const Slot& slot)
{
    const SessionWish& wish = week.problem.sessions[session];
    const ClientOfWeek& client = facts.clients[wish.client];
    const CoachOfWeek& coach = facts.coaches[slot.coach];
    BookingPlace place{coach.coach.id, facts.monday + slot.start / kDayMinutes, slot.start % kDayMinutes, wish.minutes, {}, 1, wish.isLocked};
    place.placeCapacity = std::min(coach.work.capacity, groupOf(client));
    for (const BookedSession& booked : client.sessions) {
        place.place = booked.session.place;  // where the client trained last
        if (booked.session.id == week.origins[session].booked && !booked.session.id.isNone()) {
            place.placeCapacity = booked.session.placeCapacity;
            break;
        }
    }
    return place;
}

std::string_view keyOf(NoProposalReason reason)
{
    switch (reason) {
    case NoProposalReason::AwaitsClearance: return "awaits_clearance";
    case NoProposalReason::AwayAllWeek: return "away_all_week";
    }
    return {};
}

}  // namespace chalk::week
