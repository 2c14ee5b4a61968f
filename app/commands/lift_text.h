#pragma once

#include "core/lifts/catalogue.h"
#include "core/progression/lift_machine.h"
#include "ui/common/rule_words.h"

#include <QString>

namespace chalk::app {

// A lift in words for a terminal.

/// The exercise's name; its key where the catalogue does not know it.
[[nodiscard]] QString nameOfLift(const progression::LiftMachine& machine, const lifts::Catalogue& catalogue);
/// Points into `machine`.
[[nodiscard]] ui::common::RuleFacts factsOfLift(const progression::LiftMachine& machine);
/// Nothing loaded is prescribed to somebody whose clearance is missing.
[[nodiscard]] bool isWithheld(const progression::Prescription& next, bool isBlocked);
/// `3 × 8 at 77.5 kg, rest 2:30, stop with 2 left`, `rehearse without load`, `on hold`, `waiting for clearance`.
[[nodiscard]] QString dueTextOf(const progression::Prescription& next, const progression::LiftMachine& machine, bool isBlocked);

}  // namespace chalk::app
