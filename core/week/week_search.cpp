#include "core/week/week_search.h"

#include "core/week/fixed_sessions.h"
#include "core/week/plan_cost.h"
#include "core/week/week_proof.h"

#include <algorithm>
#include <cmath>

namespace chalk::week {

namespace {

constexpr double kHottest = 300;
constexpr double kColdest = 2;
constexpr std::int64_t kLeastCycle = 5000;

/// How a cycle is run.
struct CycleHabits {
    std::int64_t iterationsASession;
    std::int64_t growthPercent;  ///< from one such cycle to the next
    int chainPerMille;           ///< how often those who suffer by a change are helped
    WishHabits wishes;
};

/// Where nearly everybody has a place: many short cycles, and chains of moves that no single step would dare.
constexpr CycleHabits kRoomy{150, 110, 500, {24, 500}};
/// Where many are left over: long cycles and any wish. Nearly every step leaves somebody out there, and chains cost more than they find.
constexpr CycleHabits kCrowded{500, 150, 0, {8, 0}};
constexpr std::size_t kCrowdedShare = 25;  // one of so many is left over

constexpr int kMostChain = 4;
constexpr int kHelpPlacedPerMille = 400;
constexpr std::int64_t kProofAfter = 100;

/// What is left when every session that may move has its cheapest place: the coaches' gaps can shrink, and nothing else.
long leastTotal(const PackedWeek& week, const WeekState& fixed, const std::vector<int>& free)
{
    long total = fixed.total();
    long gain = 0;
    for (const int session : free) {
        const PackedSession& packed = week.session(session);
        total += std::min(0, week.candidate(packed, 0).cost - packed.leftOverCost);
        gain += packed.mostGain;
    }
    return total - std::min(gain, fixed.dayCosts());
}

}  // namespace

WeekSearch::WeekSearch(const WeekProblem& problem, const FillOptions& options)
    : m_contradictions(lockedAgainstRules(problem)), m_fixedPlan(fixedPlanOf(problem, options)), m_week(weekAroundFixed(problem, options)),
      m_state(m_week), m_trial(m_state, m_week), m_draw(options.seed), m_refill(m_week, m_state, m_trial, m_draw), m_free(m_trial.leftOver()),
      m_ruin(m_week, m_state, m_trial, m_draw, m_free), m_bound(leastTotal(m_week, m_state, m_free))
{
    if (options.present != nullptr) {
        startFrom(*options.present);
    }
    m_refill.placeHardestFirst();
    m_trial.keep();
    m_isProofTried = !options.canProve;
    keepAsBest();
    beginCycle();
    writeBestPlan();
}

void WeekSearch::startFrom(const WeekPlan& present)
{
    for (const int session : m_free) {
        if (const auto& slot = present[static_cast<std::size_t>(session)]) {
            const Place place = m_week.placeOf(*slot);
            if (m_week.minuteOf(place) == slot->start && m_state.fits(session, place)) {
                m_trial.put(session, place);
            }
        }
    }
}

bool WeekSearch::advance(std::int64_t iterations)
{
    m_isProved = m_isProved || isAtBound();
    for (std::int64_t i = 0; i < iterations && !m_isProved; ++i) {
        if (m_inCycle == m_cycle) {
            goBackToBest();
            beginCycle();
        }
        iterate(temperatureNow());
        ++m_inCycle;
        ++m_iterations;
        if (!m_isProofTried && m_iterations >= kProofAfter) {
            prove();
        }
    }
    writeBestPlan();
    return !m_isProved;
}

void WeekSearch::beginCycle()
{
    constexpr std::int64_t kWhole = 100;
    const bool isCrowded = m_trial.leftOver().size() * kCrowdedShare > m_free.size();
    const CycleHabits& habits = isCrowded ? kCrowded : kRoomy;
    std::int64_t& growth = isCrowded ? m_crowdedGrowth : m_roomyGrowth;
    m_chainPerMille = habits.chainPerMille;
    m_ruin.setHabits(habits.wishes);
    m_cycle = std::max(kLeastCycle, habits.iterationsASession * static_cast<std::int64_t>(m_free.size())) * growth / kWhole;
    growth = growth * habits.growthPercent / kWhole;
    m_inCycle = 0;
}

double WeekSearch::temperatureNow() const
{
    return kHottest * std::pow(kColdest / kHottest, static_cast<double>(m_inCycle) / static_cast<double>(m_cycle));
}

void WeekSearch::iterate(double temperature)
{
    const long before = m_state.total();
    m_ruin.run();
    m_refill.placeAnew(m_ruin.out(), m_ruin.touchedDays());
    if (m_chainPerMille > 0 && m_draw.happens(m_chainPerMille)) {
        helpTheWorstOff();
    }
    if (static_cast<double>(m_state.total() - before) > -temperature * std::log(m_draw.unit())) {
        m_trial.undo();
        return;
    }
    m_trial.keep();
    if (m_state.total() < m_bestTotal) {
        keepAsBest();
    }
}

void WeekSearch::helpTheWorstOff()
{
    for (int step = 0; step < kMostChain; ++step) {
        const auto session = m_trial.worstOff();
        const bool isPlaced = session && m_state.at(*session).isSomewhere();
        if (!session || (isPlaced && !m_draw.happens(kHelpPlacedPerMille))) {
            return;
        }
        m_ruin.pushIn(*session);
        m_refill.placeAnew(m_ruin.out(), m_ruin.touchedDays());
    }
}

void WeekSearch::goBackToBest()
{
    for (const int session : m_free) {
        if (m_state.at(session).isSomewhere()) {
            m_trial.take(session);
        }
    }
    for (const int session : m_free) {
        if (const Place place = m_best[static_cast<std::size_t>(session)]; place.isSomewhere()) {
            m_trial.put(session, place);
        }
    }
    m_trial.keep();
}

bool WeekSearch::isAtBound() const
{
    return m_bestTotal <= m_bound;
}

void WeekSearch::prove()
{
    m_isProofTried = true;
    WeekState state(m_week);
    WeekProof proof(m_week, state, m_free);
    const ProofOutcome outcome = proof.run(m_bestTotal);
    if (outcome.cheaper) {
        m_best = *outcome.cheaper;
        m_bestTotal = outcome.total;
    }
    m_isProved = outcome.isComplete || isAtBound();
}

void WeekSearch::keepAsBest()
{
    m_bestTotal = m_state.total();
    m_best = m_state.places();
    m_isProved = isAtBound();
}

void WeekSearch::writeBestPlan()
{
    m_bestPlan = m_fixedPlan;
    for (const int session : m_free) {
        const auto at = static_cast<std::size_t>(session);
        m_bestPlan[at] = m_week.slotOf(m_best[at]);
    }
}

Objective WeekSearch::objective() const
{
    return objectiveOf(*m_week.problem, m_bestPlan);
}

}  // namespace chalk::week
