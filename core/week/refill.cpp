#include "core/week/refill.h"

#include <algorithm>
#include <tuple>

namespace chalk::week {

namespace {

constexpr unsigned kAllDays = (1U << static_cast<unsigned>(kWeekDays)) - 1U;
constexpr int kMostLeftOver = 16;
constexpr int kSkipPerMille = 20;

}  // namespace

void Refill::placeHardestFirst()
{
    std::vector<int> order = m_trial.leftOver();
    const auto hardness = [this](int session) {
        const PackedSession& packed = m_week.session(session);
        const bool hasStanding = m_week.problem->sessions[static_cast<std::size_t>(session)].standing.has_value();
        return std::tuple(-packed.leftOverCost, hasStanding ? 0 : 1, packed.candidates.size(), session);
    };
    std::sort(order.begin(), order.end(), [&](int one, int other) { return hardness(one) < hardness(other); });
    for (const int session : order) {
        if (const Place place = bestPlace({0, session, kAllDays}, 0); place.isSomewhere()) {
            m_trial.put(session, place);
        }
    }
}

void Refill::placeAnew(const std::vector<int>& out, unsigned touchedDays)
{
    m_waiting.clear();
    addLeftOver(touchedDays);
    for (const int session : out) {
        m_waiting.push_back({0, session, kAllDays});
    }
    rank();
    for (const Waiting& waiting : m_waiting) {
        if (const Place place = bestPlace(waiting, kSkipPerMille); place.isSomewhere()) {
            m_trial.put(waiting.session, place);
        }
    }
}

void Refill::addLeftOver(unsigned touchedDays)
{
    const std::vector<int>& leftOver = m_trial.leftOver();
    if (leftOver.empty()) {
        return;
    }
    const std::size_t first = static_cast<std::size_t>(m_draw.below(static_cast<int>(leftOver.size())));
    for (std::size_t i = 0; i < leftOver.size() && m_waiting.size() < kMostLeftOver; ++i) {
        const int session = leftOver[(first + i) % leftOver.size()];
        if (!m_trial.isChanged(session)) {
            m_waiting.push_back({0, session, touchedDays});
        }
    }
}

void Refill::rank()
{
    enum { kAny, kPriority, kFewPlaces, kLongest, kOrders };
    constexpr std::uint64_t kStep = std::uint64_t{1} << 32U;
    constexpr std::uint64_t kHigh = std::uint64_t{1} << 31U;
    const int order = m_draw.below(kOrders);
    for (Waiting& waiting : m_waiting) {
        const PackedSession& session = m_week.session(waiting.session);
        std::uint64_t key = 0;
        if (order == kPriority) {
            key = kHigh - static_cast<std::uint64_t>(session.leftOverCost);
        } else if (order == kFewPlaces) {
            key = static_cast<std::uint64_t>(session.candidates.size());
        } else if (order == kLongest) {
            key = kHigh - static_cast<std::uint64_t>(session.slots);
        }
        waiting.rank = key * kStep + m_draw.next();
    }
    std::sort(m_waiting.begin(), m_waiting.end(), [](const Waiting& one, const Waiting& other) { return one.rank < other.rank; });
}

Place Refill::bestPlace(const Waiting& waiting, int skipPerMille) const
{
    const PackedSession& session = m_week.session(waiting.session);
    const unsigned open = waiting.days & ~m_state.closedDays(waiting.session);
    Found best{{}, session.leftOverCost};
    for (std::uint32_t i = session.days.begin; i < session.days.end; ++i) {
        const CandidateDay& day = m_week.days[i];
        if (day.least - session.mostGain >= best.cost) {
            break;
        }
        if ((open >> static_cast<unsigned>(day.day) & 1U) != 0) {
            lookAtDay(session, day, skipPerMille, best);
        }
    }
    return best.place;
}

void Refill::lookAtDay(const PackedSession& session, const CandidateDay& day, int skipPerMille, Found& best) const
{
    DaySlots starts = m_state.roomAtCoach(session, day);
    if (starts == 0) {
        return;
    }
    const int successive = m_state.successiveDelta(session.client, day.day);
    for (; starts != 0; starts &= starts - 1) {
        const Place place{day.coachDay, static_cast<std::int16_t>(firstOf(starts))};
        const int own = m_week.costAt(day, place.slot) + successive;
        if (own - session.mostGain >= best.cost) {
            continue;
        }
        const int cost = own + m_state.coachDelta(session, place);
        if (cost < best.cost && m_state.isRecovered(session, m_week.minuteOf(place)) && m_state.hasStations(session, place) &&
            !(skipPerMille > 0 && m_draw.happens(skipPerMille))) {
            best = {place, cost};
        }
    }
}

}  // namespace chalk::week
