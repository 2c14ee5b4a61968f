#include "core/direction/maximum_test.h"

#include <algorithm>

namespace chalk::direction {

namespace {

constexpr int kLeastDays = 90;
constexpr std::int64_t kTenThousand = 10'000;
/// Up and down in ten-thousandths: the middle of the printed ranges.
constexpr std::int64_t kUpUpper = 750;
constexpr std::int64_t kUpLower = 1500;
constexpr std::int64_t kDownUpper = 375;
constexpr std::int64_t kDownLower = 750;

base::Load scaled(base::Load load, std::int64_t tenThousandths)
{
    return base::Load::fromCenti(static_cast<std::int32_t>(load.centi() * tenThousandths / kTenThousand));
}

std::int64_t upOf(lifts::Region region)
{
    return region == lifts::Region::Upper ? kUpUpper : kUpLower;
}

/// The load of the warm-up: three steps up from it lead to the expected single.
base::Load warmUpFor(base::Load expected, lifts::Region region)
{
    base::Load load = expected;
    for (int step = 0; step < 3; ++step) {
        load = base::Load::fromCenti(static_cast<std::int32_t>(load.centi() * kTenThousand / (kTenThousand + upOf(region))));
    }
    return load;
}

TestSet setOf(TestStep step, base::Load load)
{
    using base::Reps;
    using base::Seconds;
    switch (step) {
    case TestStep::WarmUp: return {step, load, Reps(5), Reps(10), Seconds(0), Seconds(0)};
    case TestStep::Ramp: return {step, load, Reps(3), Reps(5), Seconds(60), Seconds(60)};
    case TestStep::NearMaximum: return {step, load, Reps(2), Reps(3), Seconds(120), Seconds(120)};
    case TestStep::Attempt:
    case TestStep::Over: break;
    }
    return {TestStep::Attempt, load, Reps(1), Reps(1), Seconds(120), Seconds(240)};
}

TestStep after(TestStep step)
{
    return step < TestStep::Attempt ? static_cast<TestStep>(static_cast<int>(step) + 1) : TestStep::Attempt;
}

}  // namespace

MaximumTest::MaximumTest(lifts::Region region, lifts::LoadTable loads, base::Load expected) : m_region(region), m_loads(std::move(loads))
{
    setNext(TestStep::WarmUp, m_loads.atMost(warmUpFor(expected, region)));
}

void MaximumTest::record(const TestResult& result)
{
    if (!m_next) {
        return;
    }
    const TestStep step = m_next->step;
    m_results.push_back(result);
    if (result.pain >= kStopPain) {
        finish(TestEnd::Pain);
    } else if (step == TestStep::Attempt) {
        ++m_attempts;
        if (result.isMade) {
            m_best = std::max(m_best.value_or(result.load), result.load);
        } else {
            m_missed = std::min(m_missed.value_or(result.load), result.load);
        }
        if (m_attempts == kMostAttempts) {
            finish(TestEnd::TooMany);
        } else if (result.isMade) {
            goUp(TestStep::Attempt, result.load);
        } else {
            goDown(result.load);
        }
    } else if (result.isMade) {
        goUp(after(step), result.load);
    } else {
        finish(TestEnd::Stopped);
    }
}

void MaximumTest::stop()
{
    if (m_next) {
        finish(TestEnd::Stopped);
    }
}

void MaximumTest::finish(TestEnd end)
{
    m_end = end;
    m_next.reset();
}

void MaximumTest::goUp(TestStep step, base::Load from)
{
    const auto above = m_loads.nextAbove(from);
    if (!above) {
        finish(TestEnd::EquipmentEnds);
        return;
    }
    const base::Load to = std::max(*above, m_loads.atMost(scaled(from, kTenThousand + upOf(m_region))));
    if (step == TestStep::Attempt && m_missed && to >= *m_missed) {
        const auto between = m_loads.nextBelow(*m_missed);
        if (!between || *between <= from) {
            finish(TestEnd::Found);
        } else {
            setNext(step, *between);
        }
        return;
    }
    setNext(step, to);
}

void MaximumTest::goDown(base::Load from)
{
    const std::int64_t down = m_region == lifts::Region::Upper ? kDownUpper : kDownLower;
    const auto below = m_loads.nextBelow(from);
    if (!below) {
        finish(TestEnd::EquipmentEnds);
        return;
    }
    const base::Load to = std::min(*below, m_loads.atMost(scaled(from, kTenThousand - down)));
    if (m_best && to <= *m_best) {
        finish(TestEnd::Found);
        return;
    }
    setNext(TestStep::Attempt, to);
}

void MaximumTest::setNext(TestStep step, base::Load load)
{
    m_next = setOf(step, load);
}

std::optional<NoTest> reasonAgainstTest(const TestCase& lift)
{
    if (!lift.isCleared) {
        return NoTest::NotCleared;
    }
    if (lift.isOnHold) {
        return NoTest::OnHold;
    }
    if (!lift.isLoaded) {
        return NoTest::Unloaded;
    }
    if (lift.hasCaution) {
        return NoTest::Caution;
    }
    if (lift.pattern == lifts::Pattern::SingleLeg || lift.pattern == lifts::Pattern::CarryBrace || lift.measure != lifts::Measure::Reps ||
        lift.pieces > 1 || lift.bodyShare.value() > 0) {
        return NoTest::NotThisLift;
    }
    return lift.daysSinceFirstLoad < kLeastDays ? std::optional(NoTest::TooEarly) : std::nullopt;
}

}  // namespace chalk::direction
