#pragma once

#include "core/direction/scheme_ramp.h"

namespace chalk::direction {

/// An exposure of a physique plan: base 3 to 4 × 8 to 12 at 67 per cent of the single, build 3 to 4 × 8 to 10 at 72, peak 4 to 5 × 6 to 8 at 78.
/// Repetitions go up through the range at a load, and the load goes up when all sets reach its top. Shares, repetitions, sets and rests lie in
/// the published ranges for hypertrophy (see publishedRange).
[[nodiscard]] PlannedWork physiqueWork(LiftRole role, const Place& place);

}  // namespace chalk::direction
