#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/clients/client.h"
#include "core/lifts/exercise.h"
#include "core/progression/evidence.h"
#include "core/progression/lift_machine.h"
#include "core/sessions/session.h"

#include <optional>
#include <string>
#include <vector>

namespace chalk::ui::board {

/// One entry of a lift's log as it is judged now, with the versions that it replaced.
struct LogEntry {
    base::EventId id;
    base::Date date;
    progression::EventBody body;
    progression::RuleList rules;
    progression::Prescription after;
    std::optional<base::SessionId> session = {};
    std::vector<progression::EventBody> earlier = {};  ///< what corrections replaced, oldest first
};

/// One lift of a client with all that its column and the inspector show, on one day.
struct LiftCase {
    base::LiftId id;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    lifts::Exercise exercise;
    std::string equipmentName;  ///< of the studio's equipment: `Olympic bar`; empty for none
    base::Date startedOn;
    progression::LiftMachine machine;
    std::vector<LogEntry> log;  ///< oldest first
    progression::Prescription next;
    progression::Evidence evidence;

    /// The rules of the last decision; none before the first.
    [[nodiscard]] progression::RuleList lastRules() const
    {
        return log.empty() ? progression::RuleList() : log.back().rules;
    }
};

/// Everything that the client page shows, on one day.
struct ClientCase {
    clients::Client client;
    std::string coachName;
    std::vector<clients::Caution> cautions;
    clients::Clearance clearance;
    std::optional<sessions::Session> nextSession;
    int nextSessionTaken = 0;                 ///< places taken in the slot of the next session, this client's included
    std::vector<sessions::Session> sessions;  ///< all of them, oldest first
    std::vector<LiftCase> lifts;              ///< in the order of the patterns
    base::Date today;

    [[nodiscard]] bool isBlocked() const { return clients::isBlocked(clearance, today); }
};

/// Judges the log of a lift anew and works out what it shows on `day`. `events` are in the order in which they were entered;
/// ids and earlier versions are kept with their event. Fails where the setup or an event makes no sense.
[[nodiscard]] tl::expected<void, progression::ReplayFault> judge(LiftCase& lift, base::Date day);

/// When a lift last came to each stage, by stage number - 1; nothing where it never stood there.
[[nodiscard]] std::array<std::optional<base::Date>, progression::kStages.size()> reachedOn(const LiftCase& lift);

}  // namespace chalk::ui::board
