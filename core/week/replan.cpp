#include "core/week/replan.h"

#include "core/week/left_over.h"
#include "core/week/slot_table.h"
#include "core/week/week_checker.h"
#include "core/week/week_search.h"

#include <algorithm>
#include <compare>
#include <cstdlib>
#include <set>

namespace chalk::week {

namespace {

using SessionSet = std::set<std::size_t>;

// Of the week in which only places and moves count: any number of moves costs less than a session left over.
constexpr int kCalmUnplaced = 4000;
constexpr int kCalmMove = 20;
constexpr std::int64_t kFewIterations = 3000;
constexpr std::size_t kCompetitorsOfOne = 12;

/// Lowest is best.
struct ReplanValue {
    long leftOver = 0;  ///< Σ priority
    int moves = 0;      ///< of sessions that had a slot

    auto operator<=>(const ReplanValue&) const = default;
};

/// The week without the client's hours before a minute.
WeekProblem fromThen(WeekProblem problem, int fromMinute)
{
    for (ClientWeek& client : problem.clients) {
        for (DaySpan& span : client.available) {
            span.from = std::max(span.from, fromMinute - span.day * kDayMinutes);
        }
        std::erase_if(client.available, [](const DaySpan& span) { return span.from >= span.to; });
    }
    return problem;
}

class Replanning {
public:
    Replanning(const WeekProblem& problem, const WeekPlan& present, const ReplanOptions& options)
        : m_problem(fromThen(problem, options.fromMinute)), m_present(present), m_options(options), m_start(present.size())
    {
        stayPut();
        readPresent();
    }

    WeekPlan found()
    {
        SessionSet free = m_waiting;
        free.insert(m_disputed.begin(), m_disputed.end());
        if (free.empty()) {
            return m_start;
        }
        const bool isSmall = movable().size() <= kSmallWeek;
        WeekPlan best = searched(m_calm, m_start, free, kFewIterations);
        if (valueOf(best).leftOver > 0 || (isSmall && !m_disputed.empty())) {
            const SessionSet competing = withCompetitors(free, best);
            best = better(best, searched(m_calm, best, competing, m_options.iterations));
            best = fewerMoves(best, competing);
        }
        if (m_disputed.empty() && valueOf(best).leftOver == valueOf(m_start).leftOver) {
            best = m_start;
        }
        return polished(best);
    }

private:
    [[nodiscard]] bool isFixed(std::size_t session) const { return m_isFixed[session]; }

    [[nodiscard]] SessionSet movable() const
    {
        SessionSet sessions;
        for (std::size_t session = 0; session < m_isFixed.size(); ++session) {
            if (!isFixed(session)) {
                sessions.insert(session);
            }
        }
        return sessions;
    }

    /// Locked sessions on their standing slots, and past ones.
    void stayPut()
    {
        for (std::size_t session = 0; session < m_present.size(); ++session) {
            const SessionWish& wish = m_problem.sessions[session];
            const bool isPast = m_present[session] && m_present[session]->start < m_options.fromMinute;
            m_isFixed.push_back(wish.isLocked || isPast);
            m_start[session] = wish.isLocked ? wish.standing : isPast ? m_present[session] : std::nullopt;
        }
    }

    /// Which slots of the present plan can still be had, and who is at odds with whom over them.
    void readPresent()
    {
        m_calm = m_problem;
        m_calm.weights = {kCalmUnplaced, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0};
        for (ClientWeek& client : m_calm.clients) {
            client.preferred.clear();
            for (AcceptedCoach& accepted : client.coaches) {
                accepted.cost = kCalmMove;
            }
        }
        const SlotTable staying(m_problem, m_start);
        SlotTable table = staying;
        WeekPlan sound = m_start;
        for (std::size_t session = 0; session < m_present.size(); ++session) {
            if (isFixed(session)) {
                continue;
            }
            const std::optional<Slot>& slot = m_present[session];
            const bool isSound = slot && isAccepted(session, *slot) && staying.fits(session, *slot);
            sound[session] = isSound ? slot : std::nullopt;
            m_calm.sessions[session].standing = sound[session];
            if (isSound && table.fits(session, *slot)) {
                table.place(session, *slot);
            } else {
                m_waiting.insert(session);
            }
        }
        m_start = table.plan();
        for (const PlanFault& fault : faultsOf(m_problem, sound)) {
            std::copy_if(fault.sessions.begin(), fault.sessions.end(), std::inserter(m_disputed, m_disputed.end()),
                         [this](std::size_t session) { return !isFixed(session); });
        }
    }

    [[nodiscard]] bool isAccepted(std::size_t session, const Slot& slot) const
    {
        const std::vector<AcceptedCoach>& coaches = m_problem.clients[m_problem.sessions[session].client].coaches;
        return slot.start % m_problem.grid == 0 && std::any_of(coaches.begin(), coaches.end(), [&](const auto& one) { return one.coach == slot.coach; });
    }

    [[nodiscard]] ReplanValue valueOf(const WeekPlan& plan) const
    {
        ReplanValue value;
        for (std::size_t session = 0; session < plan.size(); ++session) {
            value.leftOver += plan[session] ? 0 : m_problem.clients[m_problem.sessions[session].client].priority;
            value.moves += m_present[session] && plan[session] != m_present[session] ? 1 : 0;
        }
        return value;
    }

    [[nodiscard]] WeekPlan better(const WeekPlan& one, const WeekPlan& other) const { return valueOf(other) < valueOf(one) ? other : one; }

    /// From `start`, with everything that is not free where it is there.
    [[nodiscard]] WeekPlan searched(const WeekProblem& problem, const WeekPlan& start, const SessionSet& free, std::int64_t iterations) const
    {
        FillOptions fill;
        fill.seed = m_options.seed;
        fill.present = &start;
        for (std::size_t session = 0; session < start.size(); ++session) {
            fill.fixed.push_back(isFixed(session) || !free.contains(session));
        }
        WeekSearch search(problem, fill);
        search.advance(iterations);
        return search.best();
    }

    /// Who could make room for those that are left over, and for those who make room.
    [[nodiscard]] SessionSet withCompetitors(const SessionSet& free, const WeekPlan& plan) const
    {
        SessionSet competing = movable();
        if (competing.size() <= kSmallWeek) {
            return competing;
        }
        competing = free;
        const SlotTable table(m_problem, plan);
        SessionSet ring;
        for (const std::size_t session : free) {
            if (!plan[session]) {
                ring.insert(session);
            }
        }
        while (!ring.empty() && competing.size() < free.size() + kMostCompetitors) {
            SessionSet next;
            for (const std::size_t session : ring) {
                for (const std::size_t other : competitorsOf(session, table)) {
                    if (competing.size() < free.size() + kMostCompetitors && competing.insert(other).second) {
                        next.insert(other);
                    }
                }
            }
            ring = next;
        }
        return competing;
    }

    /// Those in the way of a session at the times that are nearest to where it was or wants to be.
    [[nodiscard]] std::vector<std::size_t> competitorsOf(std::size_t session, const SlotTable& table) const
    {
        std::vector<std::pair<int, BlockedSlot>> blocks;
        for (const Slot& slot : table.candidatesOf(session)) {
            const auto blocked = table.blockOf(session, slot);
            if (blocked && !blocked->sessions.empty()) {
                const int away = m_present[session] ? std::abs(m_present[session]->start - slot.start) : minutesFromWanted(m_problem, session, slot);
                blocks.emplace_back(away, *blocked);
            }
        }
        std::stable_sort(blocks.begin(), blocks.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
        std::vector<std::size_t> found;
        for (const auto& [away, blocked] : blocks) {
            for (const std::size_t other : blocked.sessions) {
                if (!isFixed(other) && found.size() < kCompetitorsOfOne && std::find(found.begin(), found.end(), other) == found.end()) {
                    found.push_back(other);
                }
            }
        }
        return found;
    }

    /// Tries for each session that moved whether it can stay after all.
    [[nodiscard]] WeekPlan fewerMoves(WeekPlan plan, const SessionSet& free) const
    {
        for (const std::size_t session : free) {
            if (m_start[session] && plan[session] != m_start[session]) {
                WeekPlan stays = plan;
                stays[session] = m_start[session];
                for (const std::size_t other : free) {
                    stays[other] = other == session || m_start[other] == plan[other] ? m_start[other] : std::nullopt;
                }
                SessionSet others = free;
                others.erase(session);
                plan = better(plan, searched(m_calm, stays, others, kFewIterations));
            }
        }
        return plan;
    }

    /// The same sessions in their places, the others where they cost least.
    [[nodiscard]] WeekPlan polished(const WeekPlan& plan) const
    {
        SessionSet free;
        for (std::size_t session = 0; session < plan.size(); ++session) {
            if (!isFixed(session) && (plan[session] != m_present[session] || !plan[session])) {
                free.insert(session);
            }
        }
        if (free.empty()) {
            return plan;
        }
        // They begin where they were, as far as that is possible, and what leaving it costs counts once more.
        WeekPlan near = plan;
        for (const std::size_t session : free) {
            near[session] = nearestKnown(session);
        }
        const WeekPlan cheaper = searched(m_problem, near, free, kFewIterations);
        return valueOf(plan) < valueOf(cheaper) ? plan : cheaper;
    }

    /// The present slot; with one of the client's coaches where its own is not of the week any more.
    [[nodiscard]] std::optional<Slot> nearestKnown(std::size_t session) const
    {
        const std::vector<AcceptedCoach>& coaches = m_problem.clients[m_problem.sessions[session].client].coaches;
        std::optional<Slot> slot = m_present[session];
        if (slot && slot->coach >= m_problem.coaches.size()) {
            slot = coaches.empty() ? std::nullopt : std::optional(Slot{coaches.front().coach, slot->start});
        }
        return slot;
    }

    const WeekProblem m_problem;
    const WeekPlan& m_present;
    const ReplanOptions& m_options;
    std::vector<bool> m_isFixed;
    WeekPlan m_start;       ///< of the present plan what keeps the rules
    WeekProblem m_calm;     ///< wants nothing but places, and the present plan
    SessionSet m_waiting;   ///< not in the start, and not fixed
    SessionSet m_disputed;  ///< had a slot that others had too
};

}  // namespace

std::vector<SessionMove> movesBetween(const WeekPlan& present, const WeekPlan& plan)
{
    std::vector<SessionMove> moves;
    for (std::size_t session = 0; session < plan.size(); ++session) {
        const std::optional<Slot> from = session < present.size() ? present[session] : std::nullopt;
        if (from != plan[session]) {
            moves.push_back({session, from, plan[session]});
        }
    }
    return moves;
}

Replan replanned(const WeekProblem& problem, const WeekPlan& present, const ReplanOptions& options)
{
    WeekPlan known = present;
    known.resize(problem.sessions.size());
    const WeekPlan plan = Replanning(problem, known, options).found();
    return {plan, movesBetween(known, plan)};
}

}  // namespace chalk::week
