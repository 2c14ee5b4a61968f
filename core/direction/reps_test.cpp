#include "core/direction/reps_test.h"

#include <algorithm>
#include <tuple>

namespace chalk::direction {

namespace {

constexpr base::Reps kLeastOfTest{3};
constexpr base::Reps kMostOfTest{5};
constexpr int kSetStepPercent = 5;

TestSet repsTestSet(TestStep step, base::Load load)
{
    using base::Reps;
    using base::Seconds;
    switch (step) {
    case TestStep::WarmUp: return {step, load, Reps(5), Reps(10), Seconds(0), Seconds(0)};
    case TestStep::Ramp: return {step, load, Reps(3), Reps(5), Seconds(60), Seconds(60)};
    case TestStep::NearMaximum:
    case TestStep::Attempt:
    case TestStep::Over: break;
    }
    return {TestStep::Attempt, load, kLeastOfTest, kMostOfTest, Seconds(120), Seconds(240)};
}

bool isEnough(base::Reps reps)
{
    return reps >= kLeastOfTest;
}

}  // namespace

RepsTest::RepsTest(lifts::LoadTable loads, const RepsTestLoads& steps)
    : m_loads(std::move(loads)), m_steps(steps), m_next(repsTestSet(TestStep::WarmUp, steps.warmUp))
{
}

void RepsTest::record(const RepsResult& result)
{
    if (!m_next) {
        return;
    }
    const TestStep step = m_next->step;
    if (step == TestStep::Attempt) {
        ++m_sets;
        takeBest(result);
    }
    if (result.pain >= MaximumTest::kStopPain) {
        finish(TestEnd::Pain);
        return;
    }
    switch (step) {
    case TestStep::WarmUp:
    case TestStep::Ramp:
        if (result.reps < m_next->repsLeast) {
            finish(TestEnd::Stopped);
        } else if (step == TestStep::WarmUp) {
            m_next = repsTestSet(TestStep::Ramp, std::max(result.load, m_steps.ramp));
        } else {
            m_next = repsTestSet(TestStep::Attempt, std::max(result.load, m_steps.set));
        }
        break;
    case TestStep::NearMaximum:
    case TestStep::Attempt:
    case TestStep::Over:
        goOn(result);
        break;
    }
}

void RepsTest::takeBest(const RepsResult& result)
{
    if (result.reps < base::Reps(1)) {
        return;
    }
    const auto rank = [](const RepsResult& one) { return std::tuple(isEnough(one.reps), one.load, one.reps); };
    if (!m_best || rank(result) > rank(*m_best)) {
        m_best = result;
    }
}

void RepsTest::goOn(const RepsResult& result)
{
    const auto above = m_loads.nextAbove(result.load);
    if (result.reps < kMostOfTest) {
        finish(m_best ? TestEnd::Found : TestEnd::Stopped);
    } else if (m_sets == kMostSets) {
        finish(TestEnd::TooMany);
    } else if (!above) {
        finish(TestEnd::EquipmentEnds);
    } else {
        const base::Load up = base::Load::fromCenti(result.load.centi() + result.load.centi() * kSetStepPercent / 100);
        m_next = repsTestSet(TestStep::Attempt, std::max(*above, m_loads.atMost(up)));
    }
}

void RepsTest::stop()
{
    if (m_next) {
        finish(TestEnd::Stopped);
    }
}

void RepsTest::finish(TestEnd end)
{
    m_end = end;
    m_next.reset();
}

}  // namespace chalk::direction
