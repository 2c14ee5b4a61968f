#pragma once

#include "core/base/date.h"
#include "core/base/load.h"
#include "core/checkin/direction_standing.h"
#include "core/clients/client.h"
#include "core/lifts/pattern.h"
#include "core/progression/rule.h"
#include "core/progression/stage.h"
#include "core/sessions/session.h"

#include <optional>
#include <string>
#include <vector>

namespace chalk::checkin {

/// A load as it is written for its lift.
struct LiftLoad {
    base::Load load;
    base::MassUnit unit = base::MassUnit::Kilogram;
    int pieces = 1;              ///< 2 where a pair is held, and the load is that of one
    bool isAddedToBody = false;

    bool operator==(const LiftLoad&) const = default;
};

/// How a lift came to be on hold.
struct HoldFacts {
    int pain = 0;            ///< of the last record that was painful enough for a hold, 0 to 10
    int painfulRecords = 1;  ///< records in a row with pain, up to and with that one
    base::Date on;           ///< the day of that record

    bool operator==(const HoldFacts&) const = default;
};

/// What is known of one lift on a day. The last two are looked up only where they are needed, and may be missing even then.
struct LiftFacts {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    progression::Stage stage = progression::Stage::Pattern;
    bool isOnHold = false;
    progression::Flags flags;
    std::optional<base::Date> stageSince;  ///< the first day in this stage of this cycle
    std::optional<base::Date> lastWork;    ///< the last exposure with a working set
    std::optional<base::Date> firstWork;   ///< the first exposure in a loaded stage
    std::optional<HoldFacts> hold;         ///< of a lift on hold
    std::optional<LiftLoad> load;          ///< of the next exposure of a stalled lift
};

/// What is known of one client on a day.
struct ClientFacts {
    clients::Clearance clearance;
    std::vector<LiftFacts> lifts;
    std::vector<sessions::SessionState> lastSessions;  ///< past ones, oldest first
    std::optional<base::Date> lastCame;                ///< the last session that was recorded
    bool isBooked = false;                             ///< there is a session on the day or later
    base::Date startedOn;
    std::optional<base::Date> awayUntil;               ///< first day back
    DirectionStanding direction;
};

}  // namespace chalk::checkin
