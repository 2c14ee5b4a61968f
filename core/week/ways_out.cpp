#include "core/week/ways_out.h"

#include "core/week/cheapest_slot.h"
#include "core/week/slot_cost.h"
#include "core/week/slot_table.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace chalk::week {

namespace {

constexpr std::array<int, 2> kShorterMinutes{45, 30};

/// Rounded down or up, so that a station is not needed for less than its part.
void shorten(SessionWish& wish, int minutes)
{
    for (StationNeed& need : wish.needs) {
        need.from = need.from * minutes / wish.minutes;
        need.to = (need.to * minutes + wish.minutes - 1) / wish.minutes;
    }
    wish.minutes = minutes;
}

void addUnit(Station& station)
{
    ++station.units;
    for (StationClosure& closure : station.closures) {
        ++closure.units;
    }
}

/// Minutes of a session that lie outside of a span of its day.
int minutesOutside(const DaySpan& span, int minute, int minutes)
{
    return std::max(0, span.from - minute) + std::max(0, minute + minutes - span.to);
}

class WaySearch {
public:
    WaySearch(const WeekProblem& problem, const WeekPlan& plan, std::size_t session, const WayPrices& prices)
        : m_problem(problem), m_session(session), m_wish(problem.sessions[session]), m_client(problem.clients[m_wish.client]), m_prices(prices), m_table(problem, plan)
    {
        m_table.remove(session);
    }

    std::vector<WayOut> found()
    {
        tryNow();
        tryWiderHours();
        tryOtherCoaches();
        tryShorter();
        tryMoreUnits();
        tryLargerGroups();
        if (m_best.empty()) {
            tryMoving();
        }
        offer({.kind = WayKind::OneFewer, .cost = static_cast<long>(m_problem.weights.unplaced) * m_client.priority});
        std::vector<WayOut> ways;
        for (const auto& [kind, way] : m_best) {
            ways.push_back(way);
        }
        std::stable_sort(ways.begin(), ways.end(), [](const WayOut& a, const WayOut& b) { return a.cost < b.cost; });
        ways.resize(std::min(ways.size(), kMostWaysOut));
        return ways;
    }

private:
    void offer(const WayOut& way)
    {
        const auto [where, isNew] = m_best.try_emplace(way.kind, way);
        if (!isNew && way.cost < where->second.cost) {
            where->second = way;
        }
    }

    /// Offers the way with the cheapest slot of the relaxed problem, if there is one.
    std::optional<PricedSlot> tryRelaxed(const WeekProblem& relaxed, WayOut way, const SlotPrice& priceOf)
    {
        const SlotTable table(relaxed, m_table.plan());
        const std::optional<PricedSlot> best = cheapestSlot(relaxed, table, m_session, priceOf);
        if (best) {
            way.slot = best->slot;
            way.cost = best->cost;
            offer(way);
        }
        return best;
    }

    static SlotPrice always(int price)
    {
        return [price](const Slot&) { return std::optional(price); };
    }

    void tryNow()
    {
        if (const auto best = cheapestSlot(m_problem, m_table, m_session, always(0))) {
            offer({.kind = WayKind::FitsNow, .slot = best->slot, .cost = best->cost});
        }
    }

    void tryWiderHours()
    {
        for (std::size_t span = 0; span < m_client.available.size(); ++span) {
            const DaySpan& now = m_client.available[span];
            WeekProblem relaxed = m_problem;
            relaxed.clients[m_wish.client].available = {
                {now.day, std::max(0, now.from - kWiderMinutes), std::min(kDayMinutes, now.to + kWiderMinutes)}};
            const auto outside = [&](const Slot& slot) { return minutesOutside(now, slot.start - now.day * kDayMinutes, m_wish.minutes); };
            const SlotTable table(relaxed, m_table.plan());
            const auto best = cheapestSlot(relaxed, table, m_session,
                                           [&](const Slot& slot) { return std::optional(m_prices.hoursPer15 * ((outside(slot) + 14) / 15)); });
            if (best && outside(best->slot) > 0) {
                const int minute = best->slot.start - now.day * kDayMinutes;
                offer({.kind = WayKind::WiderHours, .slot = best->slot, .cost = best->cost, .span = span,
                       .hours = {now.day, std::min(now.from, minute), std::max(now.to, minute + m_wish.minutes)}, .minutes = outside(best->slot)});
            }
        }
    }

    void tryOtherCoaches()
    {
        for (std::size_t coach = 0; coach < m_problem.coaches.size(); ++coach) {
            if (std::any_of(m_client.coaches.begin(), m_client.coaches.end(), [&](const auto& one) { return one.coach == coach; })) {
                continue;
            }
            const WayOut way{.kind = WayKind::OtherCoach, .coach = coach};
            WeekProblem relaxed = relaxedBy(way);
            tryRelaxed(relaxed, way, [&](const Slot& slot) { return slot.coach == coach ? std::optional(m_prices.coach) : std::nullopt; });
        }
    }

    void tryShorter()
    {
        for (const int minutes : kShorterMinutes) {
            if (minutes < m_wish.minutes) {
                const WayOut way{.kind = WayKind::ShorterSession, .minutes = minutes};
                tryRelaxed(relaxedBy(way), way, always(m_prices.shorterPer15 * ((m_wish.minutes - minutes + 14) / 15)));
            }
        }
    }

    void tryMoreUnits()
    {
        std::set<std::size_t> stations;
        for (const StationNeed& need : m_wish.needs) {
            stations.insert(need.station);
        }
        for (const std::size_t station : stations) {
            const WayOut way{.kind = WayKind::MoreUnits, .station = station};
            tryRelaxed(relaxedBy(way), way, always(m_prices.unit));
        }
    }

    /// The client's own group, that of each other client who keeps this one out somewhere, and each coach's capacity.
    void tryLargerGroups()
    {
        std::set<std::size_t> clients{m_wish.client};
        for (const Slot& slot : openSlots()) {
            const BlockedSlot blocked = m_table.blockOf(m_session, slot).value_or(BlockedSlot{});
            for (const std::size_t other : blocked.sessions) {
                const std::size_t client = m_problem.sessions[other].client;
                if (!blocked.station && m_problem.clients[client].maxGroup == blocked.there) {
                    clients.insert(client);
                }
            }
        }
        for (const std::size_t client : clients) {
            const WayOut way{.kind = WayKind::LargerGroup, .client = client};
            tryRelaxed(relaxedBy(way), way, always(m_prices.group));
        }
        for (const AcceptedCoach& accepted : m_client.coaches) {
            const WayOut way{.kind = WayKind::LargerCapacity, .coach = accepted.coach};
            tryRelaxed(relaxedBy(way), way, always(m_prices.group));
        }
    }

    /// The candidates that hours and last week allow.
    [[nodiscard]] std::vector<Slot> openSlots() const
    {
        std::vector<Slot> slots = m_table.candidatesOf(m_session);
        std::erase_if(slots, [&](const Slot& slot) {
            return (m_wish.isLocked && m_wish.standing != slot) || m_table.hoursBlockOf(m_session, slot).has_value();
        });
        return slots;
    }

    void tryMoving()
    {
        const long before = placedCost(m_problem, m_table.plan());
        for (const Slot& slot : openSlots()) {
            const auto blocked = m_table.blockOf(m_session, slot);
            for (const std::size_t other : blocked ? blocked->sessions : std::vector<std::size_t>{}) {
                if (!m_problem.sessions[other].isLocked) {
                    tryMovingFor(slot, other, before);
                }
            }
        }
    }

    void tryMovingFor(const Slot& slot, std::size_t other, long before)
    {
        const Slot present = m_table.plan()[other].value_or(Slot{});
        m_table.remove(other);
        if (m_table.fits(m_session, slot)) {
            m_table.place(m_session, slot);
            const long without = placedCost(m_problem, m_table.plan());
            if (const auto best = cheapestSlot(m_problem, m_table, other, always(0))) {
                offer({.kind = WayKind::MoveAnother, .slot = slot, .cost = without + best->cost - before + m_prices.move, .moved = other, .movedTo = best->slot});
            }
            m_table.remove(m_session);
        }
        m_table.place(other, present);
    }

    [[nodiscard]] WeekProblem relaxedBy(const WayOut& way) const { return takenWay(m_problem, m_table.plan(), m_session, way).problem; }

    const WeekProblem& m_problem;
    std::size_t m_session;
    const SessionWish& m_wish;
    const ClientWeek& m_client;
    const WayPrices& m_prices;
    SlotTable m_table;
    std::map<WayKind, WayOut> m_best;
};

/// Accepted as much as the one who is accepted least.
AcceptedCoach acceptedLast(const ClientWeek& client, std::size_t coach)
{
    int cost = 0;
    for (const AcceptedCoach& one : client.coaches) {
        cost = std::max(cost, one.cost);
    }
    return {coach, cost};
}

}  // namespace

std::vector<WayOut> waysOut(const WeekProblem& problem, const WeekPlan& plan, std::size_t session, const WayPrices& prices)
{
    return WaySearch(problem, plan, session, prices).found();
}

PlannedWeek takenWay(const WeekProblem& problem, const WeekPlan& plan, std::size_t session, const WayOut& way)
{
    PlannedWeek week{problem, plan};
    SessionWish& wish = week.problem.sessions[session];
    ClientWeek& client = week.problem.clients[wish.client];
    week.plan[session] = way.slot;
    switch (way.kind) {
    case WayKind::FitsNow: break;
    case WayKind::WiderHours: client.available[way.span] = way.hours; break;
    case WayKind::OtherCoach: client.coaches.push_back(acceptedLast(client, way.coach.value())); break;
    case WayKind::ShorterSession: shorten(wish, way.minutes); break;
    case WayKind::MoreUnits: addUnit(week.problem.stations[way.station.value()]); break;
    case WayKind::LargerGroup: ++week.problem.clients[way.client.value()].maxGroup; break;
    case WayKind::LargerCapacity: ++week.problem.coaches[way.coach.value()].capacity; break;
    case WayKind::MoveAnother: week.plan[way.moved.value()] = way.movedTo; break;
    case WayKind::OneFewer:
        week.problem.sessions.erase(week.problem.sessions.begin() + static_cast<std::ptrdiff_t>(session));
        week.plan.erase(week.plan.begin() + static_cast<std::ptrdiff_t>(session));
        break;
    }
    return week;
}

}  // namespace chalk::week
