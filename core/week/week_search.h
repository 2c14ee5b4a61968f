#pragma once

#include "core/week/draw.h"
#include "core/week/refill.h"
#include "core/week/ruin.h"
#include "core/week/week_trial.h"

#include <cstdint>

namespace chalk::week {

/// Fills a week by ruin and recreate: some sessions are taken out, put back where they cost least, and the outcome is kept where it is better, or
/// not much worse: the less so, the later (simulated annealing, in cycles that begin again from the best plan and grow longer). A small week is
/// then searched through to the end, so that its plan is proved the best. Runs in slices, so that a caller shows the best so far and stops when
/// it likes. The same problem, options and number of iterations give the same plan.
class WeekSearch {
public:
    /// `problem` outlives the search; it must be sound as readWeekProblem leaves it. Has a first plan at once, made greedily.
    WeekSearch(const WeekProblem& problem, const FillOptions& options);
    WeekSearch(const WeekSearch&) = delete;
    WeekSearch& operator=(const WeekSearch&) = delete;

    /// Goes on for at most so many iterations, some microseconds each. False where there is nothing left to find: the plan is proved the best.
    bool advance(std::int64_t iterations);

    /// The cheapest plan so far; locked and fixed sessions stay in it where they were, whatever rules they break there.
    [[nodiscard]] const WeekPlan& best() const { return m_bestPlan; }
    /// What the best plan costs, from scratch; what leaving `present` costs is not in it.
    [[nodiscard]] Objective objective() const;
    [[nodiscard]] std::int64_t iterations() const { return m_iterations; }
    /// No plan is cheaper, what leaving `present` costs included.
    [[nodiscard]] bool isProved() const { return m_isProved; }
    /// Locked sessions that break a rule where they are, be it with another locked one; ascending.
    [[nodiscard]] const std::vector<std::size_t>& contradictions() const { return m_contradictions; }

private:
    void startFrom(const WeekPlan& present);
    void goBackToBest();
    void beginCycle();
    void iterate(double temperature);
    /// A chain: who is worst off by the changes is put into a place that it wants, and who is there looks for another.
    void helpTheWorstOff();
    [[nodiscard]] double temperatureNow() const;
    /// Whether the best plan costs what every plan must.
    [[nodiscard]] bool isAtBound() const;
    void prove();
    void keepAsBest();
    void writeBestPlan();

    std::vector<std::size_t> m_contradictions;
    WeekPlan m_fixedPlan;        ///< where locked and fixed sessions are, to the minute
    PackedWeek m_week;
    WeekState m_state;
    WeekTrial m_trial;
    Draw m_draw;
    Refill m_refill;
    std::vector<int> m_free;     ///< sessions that are not fixed and can go somewhere
    Ruin m_ruin;
    long m_bound = 0;            ///< what every plan costs at least
    std::vector<Place> m_best;
    long m_bestTotal = 0;
    WeekPlan m_bestPlan;
    std::int64_t m_iterations = 0;
    std::int64_t m_cycle = 0;    ///< iterations of the cycle
    std::int64_t m_inCycle = 0;  ///< of these, done
    std::int64_t m_roomyGrowth = 100;    ///< per cent of the first cycle of the kind
    std::int64_t m_crowdedGrowth = 100;
    int m_chainPerMille = 0;
    bool m_isProofTried = false;
    bool m_isProved = false;
};

}  // namespace chalk::week
