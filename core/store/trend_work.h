#pragma once

#include "core/analysis/dated_work.h"
#include "core/checkin/lift_trend.h"
#include "core/lifts/catalogue.h"
#include "core/store/database.h"

#include <map>
#include <vector>

namespace chalk::store {

/// What the log of one client says to trends.
struct ClientLog {
    std::vector<checkin::TrendedLift> lifts;  ///< by pattern
    std::vector<analysis::DatedWork> work;   ///< load volume, body mass left out
};

/// From the first entry to `day`, judged anew; an exercise that the catalogue does not know is named by its key. Failures go to the database.
[[nodiscard]] ClientLog readClientLog(Database& database, const lifts::Catalogue& catalogue, base::ClientId client, base::Date day);

/// The load volume of everybody on some days, by client: what counts now, body mass left out. Failures go to the database.
[[nodiscard]] std::map<base::ClientId, std::vector<analysis::DatedWork>> readAllWork(Database& database, const checkin::DayRange& days);

}  // namespace chalk::store
