#include "ui/floor/maximum_test_run.h"

#include "core/progression/load_steps.h"

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using chalk::direction::MaximumTest;
using chalk::direction::NoTest;
using chalk::direction::RepsTest;
using chalk::direction::TestStep;

std::variant<MaximumTest, RepsTest> testOf(const TestedLift& lift, TestKind kind)
{
    const progression::LiftMachine& machine = lift.machine;
    const progression::LoadSteps steps(machine.setup(), machine.kit(), machine.loads());
    switch (kind) {
    case TestKind::Single:
        return MaximumTest(machine.setup().region, machine.loads(), steps.atShare(lift.single, base::Milli(1000)));
    case TestKind::Reps:
        break;
    }
    return RepsTest(machine.loads(), {steps.atShare(lift.single, chalk::direction::kRepsTestWarmUp), steps.atShare(lift.single, chalk::direction::kRepsTestRamp),
                                      steps.atShare(lift.single, chalk::direction::kRepsTestSet)});
}

}  // namespace

bool canTestReps(const std::optional<NoTest>& reason)
{
    if (!reason) {
        return true;
    }
    switch (*reason) {
    case NoTest::NotCleared:
    case NoTest::OnHold:
    case NoTest::Unloaded:
        return false;
    case NoTest::Caution:
    case NoTest::NotThisLift:
    case NoTest::TooEarly:
        return true;
    }
    return false;
}

MaximumTestRun::MaximumTestRun(const TestedLift& lift, TestKind kind) : m_lift(lift), m_kind(kind), m_test(testOf(lift, kind)) {}

std::optional<chalk::direction::TestSet> MaximumTestRun::next() const
{
    return std::visit([](const auto& test) { return test.next(); }, m_test);
}

std::optional<chalk::direction::TestEnd> MaximumTestRun::end() const
{
    return std::visit([](const auto& test) { return test.end(); }, m_test);
}

int MaximumTestRun::attemptsLeft() const
{
    const auto* single = std::get_if<MaximumTest>(&m_test);
    return single != nullptr ? MaximumTest::kMostAttempts - single->attempts() : RepsTest::kMostSets - std::get<RepsTest>(m_test).sets();
}

std::optional<chalk::direction::RepsResult> MaximumTestRun::best() const
{
    if (const auto* reps = std::get_if<RepsTest>(&m_test)) {
        return reps->best();
    }
    const auto best = std::get<MaximumTest>(m_test).best();
    return best ? std::optional(chalk::direction::RepsResult{*best, base::Reps(1), 0}) : std::nullopt;
}

void MaximumTestRun::record(const DoneTestSet& set)
{
    const auto asked = next();
    if (!asked) {
        return;
    }
    m_done.push_back(set);
    m_isAttempt.push_back(asked->step == TestStep::Attempt);
    if (auto* reps = std::get_if<RepsTest>(&m_test)) {
        reps->record({set.load, base::Reps(set.reps), set.pain});
    } else {
        std::get<MaximumTest>(m_test).record({set.load, set.reps >= asked->repsLeast.value(), set.pain});
    }
}

void MaximumTestRun::stop()
{
    std::visit([](auto& test) { test.stop(); }, m_test);
}

std::optional<chalk::direction::TestedMaximum> MaximumTestRun::found(const std::string& note) const
{
    const auto made = best();
    if (!made) {
        return std::nullopt;
    }
    return chalk::direction::TestedMaximum{{}, m_lift.client, m_lift.lift, m_lift.day, made->load, made->reps, end().value_or(chalk::direction::TestEnd::Stopped), note};
}

std::optional<progression::Exposure> MaximumTestRun::exposure() const
{
    if (m_done.empty()) {
        return std::nullopt;
    }
    progression::Exposure exposure;
    for (std::size_t i = 0; i < m_done.size(); ++i) {
        const bool isWork = m_lift.isPlanTest && m_isAttempt[i];
        progression::SetRecord record;
        record.load = m_done[i].load;
        record.amount = m_done[i].reps;
        record.rir = isWork ? std::int16_t{0} : progression::SetRecord::kNotRecorded;
        record.isWarmup = !isWork;
        exposure.sets.push_back(record);
        exposure.pain = std::max(exposure.pain, m_done[i].pain);
    }
    return exposure;
}

}  // namespace chalk::ui::floor
