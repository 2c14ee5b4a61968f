#pragma once

#include "core/progression/lift_machine.h"

#include <vector>

namespace chalk::test {

/// A lift in base load that is trained as its prescriptions say, Mondays and Thursdays.
class LiftStory {
public:
    /// `start` is a Monday.
    explicit LiftStory(base::Date start, progression::LiftSetup setup = loadedSetup());

    /// A barbell lift in kg that begins in base load with 40 kg.
    [[nodiscard]] static progression::LiftSetup loadedSetup();

    /// So many exposures with all sets of `reps` above the least that is asked for, and so many in reserve.
    LiftStory& train(int exposures, int repsAbove, int reserve);
    LiftStory& take(const progression::EventBody& body);
    /// Nothing is done for so many weeks.
    LiftStory& rest(int weeks);
    LiftStory& painful(int pain);

    [[nodiscard]] const progression::LiftMachine& fresh() const { return m_fresh; }
    [[nodiscard]] const progression::LiftMachine& machine() const { return m_machine; }
    [[nodiscard]] const std::vector<progression::Event>& events() const { return m_events; }
    /// Of the last event.
    [[nodiscard]] base::Date lastDay() const { return m_events.back().date; }

private:
    [[nodiscard]] progression::Exposure asAsked(int repsAbove, int reserve) const;
    void passTime();

    progression::LiftMachine m_fresh;
    progression::LiftMachine m_machine;
    std::vector<progression::Event> m_events;
    base::Date m_day;
};

}  // namespace chalk::test
