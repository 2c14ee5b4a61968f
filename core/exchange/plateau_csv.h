#pragma once

#include "core/exchange/csv_reading.h"
#include "core/plateau/evidence.h"
#include "core/plateau/logged_exposure.h"

#include <compare>
#include <map>
#include <string>
#include <vector>

namespace chalk::exchange {

/// One lift of one client, by their names in a file.
struct LiftOfClient {
    std::string client;
    std::string lift;

    auto operator<=>(const LiftOfClient&) const = default;
};

/// The log of each lift, by date; rows of one day in the order of their file.
using LiftLogs = std::map<LiftOfClient, std::vector<plateau::LoggedExposure>>;

/// A day on which a lift is judged.
struct LiftCheck {
    LiftOfClient lift;
    plateau::CheckDay day;
};

/// A check and what came of it.
struct JudgedCheck {
    LiftCheck check;
    plateau::Judgement judgement;
    plateau::PlateauEvidence evidence;
};

/// Reads exposures in any order, a row for each lift and session. The columns, in any order, others are passed over:
/// `client`, `lift`; `date`; `variant`; `stage` (`base`, `load`, `rep`, `set` or `rest`, or the key of a loaded stage); `target_load` (above 0 to
/// 100,000, in one unit throughout a lift), `target_sets` (1 to 99), `target_reps` (1 to 999), `target_rest` (seconds, to a day); what came of it:
/// `load` (0 to 100,000), `sets`, `reps` (of the first set), `reps_each` (of every set: `10|10|8`), `rir` (reps in reserve of the first set) and
/// `rest`, both of which may be empty; and `control`, `pain` and `deload`, 1 or 0. `sets` and `reps` must be those of `reps_each`. What cannot be
/// but may have been typed, such as 99 reps or 58 in reserve, is no fault.
[[nodiscard]] CsvResult<LiftLogs> readExposuresCsv(const QByteArray& text);

/// Reads the days on which lifts are judged: `client`, `lift`, `check_date`, and `planned_28d` and `attended_28d`, the sessions of the 28 days up to it
/// (0 to 999).
[[nodiscard]] CsvResult<std::vector<LiftCheck>> readCheckinsCsv(const QByteArray& text);

/// Judges each check by the log of its lift, in the order of the checks. A lift without a log has no exposures.
[[nodiscard]] std::vector<JudgedCheck> judgeAll(const LiftLogs& logs, const std::vector<LiftCheck>& checks);

/// CSV (RFC 4180), UTF-8: `client,lift,check_date,verdict`, a line for each check in their order.
[[nodiscard]] QByteArray verdictsCsvOf(const std::vector<JudgedCheck>& judged);

/// The same and everything on the way to it: `n,slope,se,swr,zA,misses,base,zB,days_since_lever_best,days_since_index_best,Z,p_low,p_stop,reason,watch,strength`.
/// Reals have ten digits. What was not worked out is empty, but Z is `nan`; a lever that never was at a best was so 999 days ago.
[[nodiscard]] QByteArray traceCsvOf(const std::vector<JudgedCheck>& judged);

}  // namespace chalk::exchange
