#include "core/week/contradictions.h"

#include "core/week/slot_table.h"

#include <algorithm>
#include <set>
#include <utility>

namespace chalk::week {

namespace {

class ContradictionSearch {
public:
    explicit ContradictionSearch(const WeekProblem& problem) : m_problem(problem), m_empty(problem, {}), m_longestWork(longestWorkOf(problem)) {}

    std::vector<Contradiction> found()
    {
        findLocked();
        for (std::size_t client = 0; client < m_problem.clients.size(); ++client) {
            findOfClient(client);
        }
        std::stable_sort(m_found.begin(), m_found.end(), [](const Contradiction& a, const Contradiction& b) { return a.kind < b.kind; });
        return std::move(m_found);
    }

private:
    void add(ContradictionKind kind, std::size_t client, std::optional<std::size_t> session, int needed = 0, int there = 0)
    {
        m_found.push_back({kind, client, session, std::nullopt, std::nullopt, needed, there});
    }

    void findLocked()
    {
        WeekPlan locked(m_problem.sessions.size());
        for (std::size_t session = 0; session < locked.size(); ++session) {
            const SessionWish& wish = m_problem.sessions[session];
            if (wish.isLocked && wish.standing) {
                locked[session] = wish.standing;
            } else if (wish.isLocked) {
                add(ContradictionKind::LockedWithoutSlot, wish.client, session);
            }
        }
        for (const PlanFault& fault : faultsOf(m_problem, locked)) {
            if (fault.rule == PlanRule::LockedLeftOver) {
                continue;
            }
            Contradiction contradiction{ContradictionKind::LockedAgainstRule, std::nullopt, std::nullopt, fault.station, fault, fault.needed, fault.there};
            if (fault.sessions.size() == 1) {
                contradiction.session = fault.sessions.front();
            }
            const auto clientOf = [this](std::size_t session) { return m_problem.sessions[session].client; };
            const std::size_t first = clientOf(fault.sessions.front());
            if (std::all_of(fault.sessions.begin(), fault.sessions.end(), [&](std::size_t one) { return clientOf(one) == first; })) {
                contradiction.client = first;
            }
            m_found.push_back(contradiction);
        }
    }

    void findOfClient(std::size_t index)
    {
        std::vector<std::size_t> sessions;
        for (std::size_t session = 0; session < m_problem.sessions.size(); ++session) {
            if (m_problem.sessions[session].client == index) {
                sessions.push_back(session);
            }
        }
        if (sessions.empty()) {
            return;
        }
        const ClientWeek& client = m_problem.clients[index];
        if (client.available.empty() || client.coaches.empty()) {
            add(client.available.empty() ? ContradictionKind::NoHours : ContradictionKind::NoAcceptedCoach, index, std::nullopt);
            return;
        }
        std::set<int> starts;
        for (const std::size_t session : sessions) {
            findOfSession(session);
            for (const Slot& slot : commonSlots(session)) {
                starts.insert(slot.start);
            }
        }
        const int most = mostSessions(client, sessions, starts);
        if (!starts.empty() && most < static_cast<int>(sessions.size())) {
            add(ContradictionKind::TooFewDays, index, std::nullopt, static_cast<int>(sessions.size()), most);
        }
    }

    void findOfSession(std::size_t session)
    {
        const SessionWish& wish = m_problem.sessions[session];
        const ClientWeek& client = m_problem.clients[wish.client];
        int longest = 0;
        for (const DaySpan& span : client.available) {
            longest = std::max(longest, span.to - span.from);
        }
        int longestWork = 0;
        for (const AcceptedCoach& accepted : client.coaches) {
            longestWork = std::max(longestWork, m_longestWork[accepted.coach]);
        }
        if (wish.minutes > longest) {
            add(ContradictionKind::LongerThanHours, wish.client, session, wish.minutes, longest);
        } else if (wish.minutes > longestWork) {
            add(ContradictionKind::LongerThanWindows, wish.client, session, wish.minutes, longestWork);
        } else if (commonSlots(session).empty()) {
            add(ContradictionKind::NoCommonHours, wish.client, session);
        }
        findShortStations(session, wish);
    }

    void findShortStations(std::size_t session, const SessionWish& wish)
    {
        for (std::size_t station = 0; station < m_problem.stations.size(); ++station) {
            int needed = 0;
            for (const StationNeed& need : wish.needs) {
                needed = need.station == station ? std::max(needed, need.share) : needed;
            }
            const int there = m_problem.stations[station].units * 100;
            if (needed > there) {
                add(ContradictionKind::StationNeverEnough, wish.client, session, needed, there);
                m_found.back().station = station;
            }
        }
    }

    /// Minutes of the longest stretch on the grid, of one day, in which each coach works and the studio is open.
    static std::vector<int> longestWorkOf(const WeekProblem& problem)
    {
        WeekProblem hours = problem;
        ClientWeek anybody;
        for (int day = 0; day < kWeekDays; ++day) {
            anybody.available.push_back({day, 0, kDayMinutes});
        }
        SessionWish cell;
        cell.minutes = hours.grid;
        hours.clients = {anybody};
        hours.sessions = {cell};
        const SlotTable table(hours, {});
        std::vector<int> longest(hours.coaches.size(), 0);
        for (std::size_t coach = 0; coach < longest.size(); ++coach) {
            int length = 0;
            for (int start = 0; start < kWeekDays * kDayMinutes; start += hours.grid) {
                length = start % kDayMinutes == 0 ? 0 : length;
                length = table.hoursBlockOf(0, {coach, start}) ? 0 : length + hours.grid;
                longest[coach] = std::max(longest[coach], length);
            }
        }
        return longest;
    }

    /// Where studio, coach and client are there; last week's sessions are not asked.
    [[nodiscard]] std::vector<Slot> commonSlots(std::size_t session) const
    {
        std::vector<Slot> slots = m_empty.candidatesOf(session);
        std::erase_if(slots, [&](const Slot& slot) {
            const auto blocked = m_empty.hoursBlockOf(session, slot);
            return blocked && blocked->block != SlotBlock::LastWeek;
        });
        return slots;
    }

    /// At least as many as can be placed: one a day, and with the recovery between where all of them share patterns with each other.
    [[nodiscard]] int mostSessions(const ClientWeek& client, const std::vector<std::size_t>& sessions, const std::set<int>& starts) const
    {
        bool isAllShared = true;
        for (const std::size_t one : sessions) {
            for (const std::size_t other : sessions) {
                isAllShared = isAllShared && isPatternAmong(m_problem.sessions[one].patterns, m_problem.sessions[other].patterns);
            }
        }
        const std::vector<std::string> shared = isAllShared ? std::vector<std::string>{"any"} : std::vector<std::string>{};
        int count = 0;
        int last = 0;
        for (const int start : starts) {
            if (count == 0 || isRecovered(client.recovery, shared, start, shared, last)) {
                ++count;
                last = start;
            }
        }
        return count;
    }

    static bool isPatternAmong(const std::vector<std::string>& patterns, const std::vector<std::string>& others)
    {
        return std::find_first_of(patterns.begin(), patterns.end(), others.begin(), others.end()) != patterns.end();
    }

    const WeekProblem& m_problem;
    SlotTable m_empty;
    std::vector<int> m_longestWork;  ///< minutes, by coach
    std::vector<Contradiction> m_found;
};

}  // namespace

std::vector<Contradiction> contradictionsOf(const WeekProblem& problem)
{
    return ContradictionSearch(problem).found();
}

}  // namespace chalk::week
