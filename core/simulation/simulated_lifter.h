#pragma once

#include "core/progression/lift_machine.h"
#include "core/simulation/chance.h"

namespace chalk::simulation {

/// How somebody takes to one lift. Strength is a one-repetition maximum as an effective load in the lift's unit.
struct Talent {
    double strength = 60;      ///< on the first day
    double gain = 0.45;        ///< the share that would be added in the very long run
    int learning = 40;         ///< per cent, that a rehearsal meets every point
    int shaky = 4;             ///< per cent of exposures
    int sore = 2;              ///< per cent of exposures with slight pain
    int forgetful = 4;         ///< per cent of exposures whose reps in reserve nobody noted
    int hurried = 3;           ///< per cent of exposures that are short of a set
    int proud = 4;             ///< per cent of exposures that leave less in reserve than asked for
};

/// One person doing one lift: answers prescriptions as an imperfect person would. Repetitions to failure follow Epley's equation,
/// strength grows ever slower, a day's form varies by about 4 per cent, and reps in reserve are misjudged by about one.
class SimulatedLifter {
public:
    SimulatedLifter(Talent talent, std::uint64_t seed) : m_talent(talent), m_chance(seed) {}

    /// What is done on a day, `weeks` after the first; `machine` has judged all before. Nothing for a lift on hold.
    [[nodiscard]] std::optional<progression::EventBody> answer(const progression::LiftMachine& machine, base::Date day, double weeks);
    /// A rehearsal of a movement that is known.
    [[nodiscard]] static progression::EventBody screen();
    /// A light set at the lightest load there is.
    [[nodiscard]] static progression::EventBody tryLightly(const progression::LiftMachine& machine);

private:
    [[nodiscard]] progression::EventBody rehearse(const progression::Prescription& due);
    [[nodiscard]] double strengthToday(double weeks);
    /// A lift in the test week of its plan.
    [[nodiscard]] progression::EventBody testMaximum(const progression::LiftMachine& machine, double weeks);
    [[nodiscard]] progression::EventBody work(const progression::LiftMachine& machine, const progression::Prescription& due, double weeks);

    Talent m_talent;
    Chance m_chance;
    int m_rehearsals = 0;
};

}  // namespace chalk::simulation
