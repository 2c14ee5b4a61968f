#include "tests/support/every_plan.h"

#include <algorithm>
#include <cstdlib>
#include <limits>

namespace chalk::test {

namespace {

bool isInside(const std::vector<week::DaySpan>& spans, int day, int minute)
{
    return std::any_of(spans.begin(), spans.end(), [&](const auto& span) { return span.day == day && span.from <= minute && minute < span.to; });
}

bool haveOneInCommon(const std::vector<std::string>& one, const std::vector<std::string>& other)
{
    return std::any_of(one.begin(), one.end(), [&other](const auto& name) { return std::count(other.begin(), other.end(), name) > 0; });
}

}  // namespace

EveryPlan::EveryPlan(const week::WeekProblem& problem) : m_problem(problem), m_taken(problem.sessions.size())
{
    for (std::size_t coach = 0; coach < m_cells.size(); ++coach) {
        for (int day = 0; day < kDays; ++day) {
            for (int slot = 0; slot < kSlots; ++slot) {
                m_cells[coach][static_cast<std::size_t>(day)][static_cast<std::size_t>(slot)].workMinutes = workMinutes(coach, day, slot);
            }
        }
    }
    for (int day = 0; day < kDays; ++day) {
        for (int slot = 0; slot < kSlots; ++slot) {
            const int from = kFirst + slot * problem.grid;
            int units = problem.stations[0].units;
            for (const auto& closure : problem.stations[0].closures) {
                const bool overlaps = closure.span.day == day && closure.span.from < from + problem.grid && from < closure.span.to;
                units = overlaps ? std::min(units, closure.units) : units;
            }
            m_rackRoom[static_cast<std::size_t>(day)][static_cast<std::size_t>(slot)] = 100 * units;
        }
    }
    for (std::size_t session = 0; session < problem.sessions.size(); ++session) {
        m_ways.push_back(waysOf(session));
    }
}

long EveryPlan::cheapest()
{
    m_cheapest = std::numeric_limits<long>::max();
    m_count = 0;
    tryFrom(0, 0);
    return m_cheapest;
}

int EveryPlan::workMinutes(std::size_t coach, int day, int slot) const
{
    const auto& hours = m_problem.coaches[coach];
    int minutes = 0;
    for (int minute = kFirst + slot * m_problem.grid; minute < kFirst + (slot + 1) * m_problem.grid; ++minute) {
        minutes += isInside(hours.windows, day, minute) && isInside(m_problem.open, day, minute) && !isInside(hours.breaks, day, minute) &&
                           !isInside(hours.absences, day, minute)
                       ? 1
                       : 0;
    }
    return minutes;
}

int EveryPlan::slotsOf(std::size_t session) const
{
    return (m_problem.sessions[session].minutes + m_problem.grid - 1) / m_problem.grid;
}

std::vector<EveryPlan::Way> EveryPlan::waysOf(std::size_t session) const
{
    std::vector<Way> ways;
    for (const auto& accepted : m_problem.clients[m_problem.sessions[session].client].coaches) {
        for (int day = 0; day < kDays; ++day) {
            for (int slot = 0; slot + slotsOf(session) <= kSlots; ++slot) {
                Way way{accepted.coach, day, slot, 0};
                if (isOpenTo(session, way)) {
                    way.cost = costOf(session, way);
                    ways.push_back(way);
                }
            }
        }
    }
    return ways;
}

bool EveryPlan::isOpenTo(std::size_t session, const Way& way) const
{
    const auto& wish = m_problem.sessions[session];
    const auto& client = m_problem.clients[wish.client];
    for (int i = 0; i < slotsOf(session); ++i) {
        if (m_cells[way.coach][static_cast<std::size_t>(way.day)][static_cast<std::size_t>(way.slot + i)].workMinutes < m_problem.grid) {
            return false;
        }
    }
    const int from = kFirst + way.slot * m_problem.grid;
    const int start = way.day * 1440 + from;
    for (const auto& past : client.lastWeek) {
        const int days = way.day + (-past.start + 1439) / 1440;
        const bool isSoon = client.recovery.kind == week::RecoveryKind::RestDay ? days < 2 : start - past.start < 60 * client.recovery.hours;
        if (isSoon && haveOneInCommon(past.patterns, wish.patterns)) {
            return false;
        }
    }
    return std::any_of(client.available.begin(), client.available.end(),
                       [&](const auto& span) { return span.day == way.day && span.from <= from && from + wish.minutes <= span.to; });
}

int EveryPlan::costOf(std::size_t session, const Way& way) const
{
    const auto& wish = m_problem.sessions[session];
    const auto& client = m_problem.clients[wish.client];
    const auto& weights = m_problem.weights;
    const int from = kFirst + way.slot * m_problem.grid;
    int cost = 0;
    if (wish.standing) {
        const int off = std::abs(way.day * 1440 + from - wish.standing->start);
        if (off == 0 && way.coach == wish.standing->coach) {
            return 0;
        }
        if (wish.standing->start / 1440 != way.day) {
            cost += weights.dayMove;
        } else if (off > 0) {
            cost += std::min(weights.timeMoveCap, weights.timeMoveBase + weights.timeMovePer15 * (off / 15));
        }
        cost += way.coach != wish.standing->coach ? weights.coachMove : 0;
    }
    int away = client.preferred.empty() ? 0 : weights.prefCap;
    for (const auto& span : client.preferred) {
        if (span.day == way.day) {
            away = std::min(away, weights.prefPer15 * ((std::max({0, span.from - from, from - span.to}) + 14) / 15));
        }
    }
    for (const auto& accepted : client.coaches) {
        cost += accepted.coach == way.coach ? accepted.cost : 0;
    }
    return cost + away;
}

bool EveryPlan::isApart(std::size_t session, std::size_t other, const Way& way) const
{
    const auto& wish = m_problem.sessions[session];
    const auto& wishOfOther = m_problem.sessions[other];
    if (!m_taken[other] || wish.client != wishOfOther.client) {
        return true;
    }
    const int days = std::abs(m_taken[other]->day - way.day);
    const int minutes = std::abs((m_taken[other]->day - way.day) * 1440 + (m_taken[other]->slot - way.slot) * m_problem.grid);
    const auto& recovery = m_problem.clients[wish.client].recovery;
    const bool isSoon = recovery.kind == week::RecoveryKind::RestDay ? days < 2 : minutes < 60 * recovery.hours;
    return days > 0 && !(isSoon && haveOneInCommon(wish.patterns, wishOfOther.patterns));
}

bool EveryPlan::fits(std::size_t session, const Way& way) const
{
    const auto& wish = m_problem.sessions[session];
    const int group = m_problem.clients[wish.client].maxGroup;
    for (int i = 0; i < slotsOf(session); ++i) {
        const auto day = static_cast<std::size_t>(way.day);
        const auto slot = static_cast<std::size_t>(way.slot + i);
        const Cell& cell = m_cells[way.coach][day][slot];
        int most = std::min(group, m_problem.coaches[way.coach].capacity);
        for (int other = 3; other > 0; --other) {
            most = cell.ofGroup[static_cast<std::size_t>(other)] > 0 ? std::min(most, other) : most;
        }
        if (cell.sessions + 1 > most) {
            return false;
        }
        for (const auto& need : wish.needs) {
            const bool isUsed = need.from < (i + 1) * m_problem.grid && i * m_problem.grid < need.to;
            if (isUsed && need.share > m_rackRoom[day][slot]) {
                return false;
            }
        }
    }
    for (std::size_t other = 0; other < session; ++other) {
        if (!isApart(session, other, way)) {
            return false;
        }
    }
    return true;
}

void EveryPlan::count(std::size_t session, const Way& way, int change)
{
    const auto& wish = m_problem.sessions[session];
    for (int i = 0; i < slotsOf(session); ++i) {
        const auto day = static_cast<std::size_t>(way.day);
        const auto slot = static_cast<std::size_t>(way.slot + i);
        Cell& cell = m_cells[way.coach][day][slot];
        cell.sessions += change;
        cell.ofGroup[static_cast<std::size_t>(m_problem.clients[wish.client].maxGroup)] += change;
        for (const auto& need : wish.needs) {
            const bool isUsed = need.from < (i + 1) * m_problem.grid && i * m_problem.grid < need.to;
            m_rackRoom[day][slot] -= isUsed ? change * need.share : 0;
        }
    }
}

void EveryPlan::tryFrom(std::size_t session, long cost)
{
    if (session == m_taken.size()) {
        ++m_count;
        m_cheapest = std::min(m_cheapest, cost + dayCosts() + successiveCosts());
        return;
    }
    for (const Way& way : m_ways[session]) {
        if (fits(session, way)) {
            m_taken[session] = way;
            count(session, way, 1);
            tryFrom(session + 1, cost + way.cost);
            count(session, way, -1);
            m_taken[session].reset();
        }
    }
    tryFrom(session + 1, cost + static_cast<long>(m_problem.weights.unplaced) * m_problem.clients[m_problem.sessions[session].client].priority);
}

long EveryPlan::dayCosts() const
{
    long cost = 0;
    for (std::size_t coach = 0; coach < m_cells.size(); ++coach) {
        for (const auto& cells : m_cells[coach]) {
            int busy = 0;
            int idle = 0;
            int idleSinceBusy = 0;
            for (const Cell& cell : cells) {
                if (cell.sessions > 0) {
                    idle += busy > 0 ? idleSinceBusy : 0;
                    idleSinceBusy = 0;
                    ++busy;
                } else {
                    idleSinceBusy += cell.workMinutes;
                }
            }
            const int most = m_problem.coaches[coach].softMaxMinutes / m_problem.grid * m_problem.grid;
            cost += m_problem.weights.gapPer15 * idle / 15 + m_problem.weights.overPer15 * std::max(0, busy * m_problem.grid - most) / 15;
        }
    }
    return cost;
}

long EveryPlan::successiveCosts() const
{
    long cost = 0;
    for (std::size_t one = 0; one < m_taken.size(); ++one) {
        for (std::size_t other = 0; other < m_taken.size(); ++other) {
            const bool isSameClient = m_problem.sessions[one].client == m_problem.sessions[other].client;
            cost += isSameClient && m_taken[one] && m_taken[other] && m_taken[one]->day + 1 == m_taken[other]->day ? m_problem.weights.consecutive : 0;
        }
    }
    return cost;
}

}  // namespace chalk::test
