#pragma once

#include "core/checkin/progress_report.h"

namespace chalk::test {

/// Twelve weeks of three lifts that rise, two sessions a week.
[[nodiscard]] checkin::ProgressReport ferroReport();

/// Twelve lifts with long names, in lb, that crowd together, and five sessions a week.
[[nodiscard]] checkin::ProgressReport crowdedReport();

}  // namespace chalk::test
