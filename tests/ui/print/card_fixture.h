#pragma once

#include "core/sessions/card_content.h"

namespace chalk::test {

/// The five lifts of a Tuesday morning: reps, sets, rest, first load and load move.
[[nodiscard]] sessions::CardContent ferroCard();

/// A loaded lift to be changed.
[[nodiscard]] sessions::CardLift workLift(std::string name, progression::Stage stage, double load, int sets, int low, int high);

/// Everything too long at once: names, three cautions, eight lifts in lb, six sets, pairs, carries, rehearsals and a hold.
[[nodiscard]] sessions::CardContent crowdedCard();

}  // namespace chalk::test
