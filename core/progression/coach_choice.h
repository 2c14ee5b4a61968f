#pragma once

#include "core/progression/lift_machine.h"

#include <optional>
#include <string>

namespace chalk::progression {

/// The numbers of a prescription that a coach can choose, stage by stage. What a stage has no use for is nothing.
struct CoachNumbers {
    Stage stage = Stage::Pattern;
    std::optional<base::Load> load;
    std::optional<base::Reps> reps;  ///< as prescribed: the target of Rep build, the held reps of Set build and Rest cut
    std::optional<base::Sets> sets;
    std::optional<base::Seconds> rest;

    bool operator==(const CoachNumbers&) const = default;
};

/// The numbers of a prescription that stands. Nothing to choose where it is on hold.
[[nodiscard]] CoachNumbers numbersOf(const Prescription& next);

/// The numbers that a stage would begin with if the coach chose it with nothing else said.
[[nodiscard]] CoachNumbers numbersAt(const LiftMachine& machine, Stage stage, base::Date day);

/// The event that makes these numbers the next prescription.
[[nodiscard]] CoachSet coachSetOf(const CoachNumbers& numbers, std::string reason);

/// The event that keeps the prescription as it is for the next exposure. Misses and flags are cleared by it, and a lighter week is ended:
/// `next` is then the usual prescription, see LiftMachine::withoutLighterWeek.
[[nodiscard]] CoachSet keepingSetOf(const LiftMachine& machine, const Prescription& next, std::string reason);

}  // namespace chalk::progression
