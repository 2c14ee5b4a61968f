#pragma once

#include "core/progression/lift_machine.h"

#include <optional>

namespace chalk::progression {

/// The record that meets what the lift's stage asks next, to the letter: aimed-at reps with just the reserve kept, no pain,
/// all steady. Nothing where the policy leaves no such record. The lift is not on hold.
[[nodiscard]] std::optional<EventBody> recordToTheLetter(const LiftMachine& machine);

/// The next stage and its first prescription. The two differ in stage where a layoff is looked at again on arrival.
struct Arrival {
    Stage stage = Stage::Pattern;
    Prescription first;
};

/// Where the lift arrives if every record from `day` on, or from the end of a lighter week, meets what is usually asked to the letter.
/// Nothing where no number of records gets there.
[[nodiscard]] std::optional<Arrival> arrivalOf(LiftMachine machine, base::Date day);

}  // namespace chalk::progression
