#pragma once

#include "core/direction/reps_test.h"
#include "core/direction/tested_maximum.h"
#include "core/lifts/exercise.h"
#include "core/progression/lift_machine.h"

#include <optional>
#include <variant>
#include <vector>

namespace chalk::ui::floor {

/// A lift that is to be tested, as it stands on the day.
struct TestedLift {
    base::ClientId client;
    std::string clientName;
    base::LiftId lift;
    lifts::Exercise exercise;
    progression::LiftMachine machine;
    base::Load single;                          ///< that the test starts from: effective, in the lift's unit, above 0
    std::optional<chalk::direction::NoTest> reason{};  ///< why it is not tested by a single; nothing where it may be
    bool isPlanTest = false;                    ///< a plan of weeks asks for it
    base::Date day{};
    base::SessionId session{};                  ///< none: outside of any
};

/// What is tested.
enum class TestKind : std::uint8_t {
    Single,  ///< the heaviest single
    Reps     ///< three to five repetitions
};

/// Whether anything can be tested: not without clearance, on hold or in an unloaded stage, whatever the repetitions are.
[[nodiscard]] bool canTestReps(const std::optional<chalk::direction::NoTest>& reason);

/// A set as it was done.
struct DoneTestSet {
    base::Load load;
    int reps = 0;        ///< made in control; of an attempt 1, or 0 where it was missed
    int pain = 0;        ///< 0 to 10

    bool operator==(const DoneTestSet&) const = default;
};

/// A test that is being made: what comes next, what was done, and what is to be kept of it. No widget.
class MaximumTestRun {
public:
    MaximumTestRun(const TestedLift& lift, TestKind kind);

    [[nodiscard]] TestKind kind() const { return m_kind; }
    [[nodiscard]] std::optional<chalk::direction::TestSet> next() const;
    [[nodiscard]] std::optional<chalk::direction::TestEnd> end() const;
    /// Attempts or sets that may still be made, the present one included.
    [[nodiscard]] int attemptsLeft() const;
    /// The best so far: the load and its repetitions.
    [[nodiscard]] std::optional<chalk::direction::RepsResult> best() const;
    [[nodiscard]] const std::vector<DoneTestSet>& done() const { return m_done; }

    /// Takes in the set that next() asked for. Nothing where it is over.
    void record(const DoneTestSet& set);
    void stop();

    /// What it found; nothing where nothing was made.
    [[nodiscard]] std::optional<chalk::direction::TestedMaximum> found(const std::string& note) const;
    /// The sets as the log of the lift keeps them; nothing where none was done. In a test that a plan asks for, attempts are working sets to failure; else all
    /// are warm-up sets, so that the lift's stage is not judged by them.
    [[nodiscard]] std::optional<progression::Exposure> exposure() const;

private:
    TestedLift m_lift;
    TestKind m_kind;
    std::variant<chalk::direction::MaximumTest, chalk::direction::RepsTest> m_test;
    std::vector<DoneTestSet> m_done;
    std::vector<bool> m_isAttempt;  ///< by set done
};

}  // namespace chalk::ui::floor
