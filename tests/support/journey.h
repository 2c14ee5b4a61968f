#pragma once

#include "core/progression/evidence.h"

#include "tests/support/lift_on_test.h"

#include <cstdint>
#include <deque>
#include <vector>

namespace chalk::test {

/// A lift with its judged log, trained by hand or by the whims of a list of numbers.
class Journey {
public:
    /// The setup is sound, or the test ends.
    explicit Journey(progression::LiftSetup setup, progression::Stage start = progression::Stage::Pattern);

    /// Lets some days pass and records an event that suits what the lift is to do; both are drawn from `whim`.
    void live(std::uint32_t whim);
    /// Records an event on the present day.
    void record(progression::EventBody body);
    void work(int sets, double load, int reps, int rir);
    void pass(int days) { m_day = m_day + days; }

    [[nodiscard]] const progression::LiftMachine& machine() const { return m_machine; }
    [[nodiscard]] const progression::LiftState& state() const { return m_machine.state(); }
    [[nodiscard]] base::Date day() const { return m_day; }
    /// Points into this journey.
    [[nodiscard]] std::vector<progression::JudgedEvent> history() const;
    /// The last of the history; there is one.
    [[nodiscard]] progression::JudgedEvent last() const;
    [[nodiscard]] progression::Evidence evidence() const { return evidenceFor(m_machine, history(), m_day); }

private:
    struct Entry {
        base::Date date;
        progression::EventBody body;
        progression::RuleList rules;
        progression::Stage stageAfter;
    };

    progression::LiftMachine m_machine;
    base::Date m_day = base::Date::fromDays(20'000);
    std::deque<Entry> m_entries;
};

/// Kettlebells of 8 to 24 kg in steps of 4.
[[nodiscard]] progression::Kit kettlebellKit();

}  // namespace chalk::test
