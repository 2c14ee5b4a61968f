#pragma once

#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/lifts/equipment.h"
#include "core/lifts/pattern.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace chalk::direction {

/// Which part of a test of a maximum comes next.
enum class TestStep : std::uint8_t {
    WarmUp,      ///< easy, 5 to 10 repetitions
    Ramp,        ///< 3 to 5 repetitions
    NearMaximum, ///< 2 to 3 repetitions
    Attempt,     ///< one repetition
    Over
};

/// Why a test is over.
enum class TestEnd : std::uint8_t {
    Found,         ///< the heaviest attempt that was made stands
    Pain,          ///< pain at any time ends it
    TooMany,       ///< five attempts were made
    EquipmentEnds, ///< nothing heavier, or nothing lighter, is to be had
    Stopped        ///< the coach or the client stopped it
};

/// What is to be done now. Repetitions are one for an attempt; the rest is the one before it.
struct TestSet {
    TestStep step = TestStep::WarmUp;
    base::Load load;
    base::Reps repsLeast;
    base::Reps repsMost;
    base::Seconds restLeast;  ///< before it; 0 before the warm-up
    base::Seconds restMost;

    bool operator==(const TestSet&) const = default;
};

/// How a set of a test went.
struct TestResult {
    base::Load load;
    bool isMade = true;   ///< all repetitions, in control
    int pain = 0;         ///< 0 to 10

    bool operator==(const TestResult&) const = default;
};

/// A test of a maximum, guided from step to step. Source: Haff and Triplett (eds.), Essentials of Strength Training and Conditioning, 4th ed. 2016,
/// figure 17.1: a warm-up of 5 to 10 easy repetitions, 1 minute; 5 to 10 per cent more (upper body) or 10 to 20 (lower) for 3 to 5, 2 minutes; the same
/// more for 2 to 3, 2 to 4 minutes; the same more for an attempt; after a success 2 to 4 minutes and the same more; after a miss 2 to 4 minutes and 2.5
/// to 5 (upper) or 5 to 10 (lower) per cent less; found within 3 to 5 attempts. Here the middle of each range is taken, 7.5 and 15 per cent up, 3.75 and
/// 7.5 down, and the nearest available load at least one step away. An attempt that lies at or above a missed load is not made: the test is over.
class MaximumTest {
public:
    static constexpr int kMostAttempts = 5;
    static constexpr int kStopPain = 1;  ///< any pain ends a test

    /// `expected` is the estimate that the test starts from, above 0. Keeps a copy of the loads.
    MaximumTest(lifts::Region region, lifts::LoadTable loads, base::Load expected);

    /// Nothing once it is over.
    [[nodiscard]] std::optional<TestSet> next() const { return m_next; }
    [[nodiscard]] std::optional<TestEnd> end() const { return m_end; }
    /// The heaviest attempt that was made; nothing before one was.
    [[nodiscard]] std::optional<base::Load> best() const { return m_best; }
    [[nodiscard]] int attempts() const { return m_attempts; }
    [[nodiscard]] const std::vector<TestResult>& results() const { return m_results; }

    /// Takes in how the set that `next` asked for went; another load than asked for is what was lifted. Nothing where it is over.
    void record(const TestResult& result);
    void stop();

private:
    void finish(TestEnd end);
    void goUp(TestStep step, base::Load from);
    void goDown(base::Load from);
    void setNext(TestStep step, base::Load load);

    lifts::Region m_region;
    lifts::LoadTable m_loads;
    std::optional<TestSet> m_next;
    std::optional<TestEnd> m_end;
    std::optional<base::Load> m_best;
    std::optional<base::Load> m_missed;  ///< the lightest attempt that was missed
    std::vector<TestResult> m_results;
    int m_attempts = 0;
};

/// Why a lift is not tested by a single.
enum class NoTest : std::uint8_t {
    NotCleared,      ///< loaded work waits for clearance, or is limited
    Caution,         ///< a caution of the client's speaks against heavy single efforts
    OnHold,
    Unloaded,        ///< not in a loaded stage
    NotThisLift,     ///< a carry, a hold, a single-leg lift, a pair of weights or body mass: a test of three to five repetitions instead
    TooEarly         ///< less than 90 days since the first loaded work (progression: Direction)
};

/// What is known of a lift and its client before a test.
struct TestCase {
    bool isCleared = true;
    bool hasCaution = false;   ///< one that care is taken with or that rules the lift out, or blood pressure, pregnancy or bone density
    bool isOnHold = false;
    bool isLoaded = true;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    lifts::Measure measure = lifts::Measure::Reps;
    int pieces = 1;
    base::Milli bodyShare;
    int daysSinceFirstLoad = 0;
};

/// Nothing where a single may be tested; else the first reason against it.
[[nodiscard]] std::optional<NoTest> reasonAgainstTest(const TestCase& lift);

}  // namespace chalk::direction
