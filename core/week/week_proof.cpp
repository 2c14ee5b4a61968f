#include "core/week/week_proof.h"

#include <algorithm>
#include <cmath>

namespace chalk::week {

namespace {

constexpr std::int64_t kMostSteps = 100'000;
/// Binary digits of the number of plans: with more, a bound this plain never comes to an end.
constexpr double kMostDigits = 70;

}  // namespace

WeekProof::WeekProof(const PackedWeek& week, WeekState& state, const std::vector<int>& free)
    : m_week(week), m_state(state), m_order(free), m_saving(free.size() + 1), m_gain(free.size() + 1)
{
    std::sort(m_order.begin(), m_order.end(), [&week](int one, int other) {
        return std::pair(week.session(one).candidates.size(), one) < std::pair(week.session(other).candidates.size(), other);
    });
    for (std::size_t depth = free.size(); depth-- > 0;) {
        const PackedSession& session = week.session(m_order[depth]);
        m_saving[depth] = m_saving[depth + 1] + std::max(0, session.leftOverCost - week.candidate(session, 0).cost);
        m_gain[depth] = m_gain[depth + 1] + session.mostGain;
    }
}

bool WeekProof::isFarTooLarge() const
{
    double digits = 0;
    for (const int session : m_order) {
        digits += std::log2(1.0 + m_week.session(session).candidates.size());
    }
    return digits > kMostDigits;
}

ProofOutcome WeekProof::run(long total)
{
    m_steps = 0;
    m_outcome = {true, std::nullopt, total};
    if (isFarTooLarge()) {
        m_outcome.isComplete = false;
        return m_outcome;
    }
    explore(0);
    return m_outcome;
}

long WeekProof::boundAt(std::size_t depth) const
{
    return m_state.total() - m_saving[depth] - std::min(m_gain[depth], m_state.dayCosts());
}

void WeekProof::explore(std::size_t depth)
{
    if (++m_steps > kMostSteps) {
        m_outcome.isComplete = false;
        return;
    }
    if (boundAt(depth) >= m_outcome.total) {
        return;
    }
    if (depth == m_order.size()) {
        m_outcome.cheaper = m_state.places();
        m_outcome.total = m_state.total();
        return;
    }
    const int session = m_order[depth];
    const PackedSession& packed = m_week.session(session);
    const unsigned closed = m_state.closedDays(session);
    for (std::uint32_t i = packed.days.begin; i < packed.days.end && m_outcome.isComplete; ++i) {
        if ((closed >> static_cast<unsigned>(m_week.days[i].day) & 1U) == 0) {
            tryDay(depth, session, m_week.days[i]);
        }
    }
    explore(depth + 1);
}

void WeekProof::tryDay(std::size_t depth, int session, const CandidateDay& day)
{
    const PackedSession& packed = m_week.session(session);
    for (DaySlots starts = m_state.roomAtCoach(packed, day); starts != 0 && m_outcome.isComplete; starts &= starts - 1) {
        const Place place{day.coachDay, static_cast<std::int16_t>(firstOf(starts))};
        if (m_state.isRecovered(packed, m_week.minuteOf(place)) && m_state.hasStations(packed, place)) {
            m_state.put(session, place);
            explore(depth + 1);
            m_state.take(session);
        }
    }
}

}  // namespace chalk::week
