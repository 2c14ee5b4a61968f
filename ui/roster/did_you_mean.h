#pragma once

#include "ui/roster/roster_row.h"

#include <QString>

#include <vector>

namespace chalk::ui::roster {

/// How many letters must be put in, left out, changed or swapped with their neighbour to make one word of the other (optimal string
/// alignment: no letter is touched twice).
[[nodiscard]] int editDistance(const QString& a, const QString& b);

/// The client that was most likely meant by what was typed: every typed word is near one of the name's, by a third of its letters at
/// most. Nothing where nobody is near.
[[nodiscard]] const RosterRow* didYouMean(const QString& typed, const std::vector<RosterRow>& rows);

}  // namespace chalk::ui::roster
