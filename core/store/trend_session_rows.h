#pragma once

#include "core/base/id.h"
#include "core/checkin/check_in.h"
#include "core/checkin/week_load.h"
#include "core/sessions/session.h"
#include "core/store/database.h"

#include <map>
#include <vector>

namespace chalk::store {

/// The sessions of a client as far as trends need them.
struct TrendSessions {
    std::vector<sessions::Session> sessions;      ///< id, client, date, kind and state; by date
    std::vector<checkin::SessionEffort> efforts;  ///< of those that took place; movement screens carry no load and are left out
};

/// Those of some days, withdrawn ones left out, by client; of one client where there is one. Failures go to the database.
[[nodiscard]] std::map<base::ClientId, TrendSessions> readTrendSessions(Database& database, const checkin::DayRange& days, base::ClientId client = {});

}  // namespace chalk::store
