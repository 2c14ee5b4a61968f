#pragma once

#include "core/direction/maximum_test.h"

namespace chalk::direction {

/// How a set of a test of three to five repetitions went.
struct RepsResult {
    base::Load load;
    base::Reps reps;   ///< made in control
    int pain = 0;      ///< 0 to 10

    bool operator==(const RepsResult&) const = default;
};

/// The loads that a test of three to five repetitions goes through, each available: see shares below.
struct RepsTestLoads {
    base::Load warmUp;
    base::Load ramp;
    base::Load set;
};

/// Shares of the expected single. The set's is the printed one for five repetitions (Haff and Triplett 2016, table 17.7: 87 per cent); the two before it
/// are common practice.
inline constexpr base::Milli kRepsTestWarmUp{500};
inline constexpr base::Milli kRepsTestRamp{750};
inline constexpr base::Milli kRepsTestSet{870};

/// A test of three to five repetitions in place of a single, guided from step to step: a warm-up of 5 to 10 easy repetitions, 1 minute, 3 to 5 with more,
/// 2 minutes, then a set of as many repetitions as are made in control, five at most. Where five were made, 2 to 4 minutes and a set that is about 5
/// per cent heavier, three sets at most. Repetitions and rests as in MaximumTest; the number of sets and their step are common practice.
class RepsTest {
public:
    static constexpr int kMostSets = 3;

    /// Keeps a copy of the loads on hand.
    RepsTest(lifts::LoadTable loads, const RepsTestLoads& steps);

    /// Nothing once it is over. The set itself is an Attempt of up to five repetitions.
    [[nodiscard]] std::optional<TestSet> next() const { return m_next; }
    [[nodiscard]] std::optional<TestEnd> end() const { return m_end; }
    /// The heaviest set with three repetitions or more; where there is none the heaviest with one or two.
    [[nodiscard]] std::optional<RepsResult> best() const { return m_best; }
    [[nodiscard]] int sets() const { return m_sets; }

    /// Takes in how the set that `next` asked for went; another load than asked for is what was lifted. Nothing where it is over.
    void record(const RepsResult& result);
    void stop();

private:
    void takeBest(const RepsResult& result);
    void goOn(const RepsResult& result);
    void finish(TestEnd end);

    lifts::LoadTable m_loads;
    RepsTestLoads m_steps;
    std::optional<TestSet> m_next;
    std::optional<TestEnd> m_end;
    std::optional<RepsResult> m_best;
    int m_sets = 0;
};

}  // namespace chalk::direction
