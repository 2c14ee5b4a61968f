#pragma once

#include "core/plateau/cleaning.h"
#include "tests/support/table_file.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace chalk::test {

/// Client and lift.
using LiftName = std::pair<std::string, std::string>;

/// 2026-01-05, a Monday: the first day of the logs below.
[[nodiscard]] base::Date firstLoggedDay();

/// An exposure that went as planned: 3 sets of 8 at 40 with 2 in reserve and 120 s of rest, in the load stage, `day` days after the first.
[[nodiscard]] plateau::LoggedExposure plainExposure(int day = 0);

/// Exposures twice a week, Monday and Thursday, all of them plain.
[[nodiscard]] std::vector<plateau::LoggedExposure> plainLog(int count);

/// Every set with so many reps.
void setReps(plateau::LoggedExposure& exposure, std::vector<int> reps);

/// A load or target in whole units.
[[nodiscard]] base::Load loadOf(int units);

/// The exposure in a row of tests/data/plateau/exposures.csv.
[[nodiscard]] plateau::LoggedExposure exposureIn(const TableRow& row);

/// The logs of tests/data/plateau, by client and lift.
[[nodiscard]] std::map<LiftName, std::vector<plateau::LoggedExposure>> simulatedLogs();

/// The name of the lift that a row is about.
[[nodiscard]] LiftName liftIn(const TableRow& row);

}  // namespace chalk::test
