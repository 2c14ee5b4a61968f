#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/clients/client.h"
#include "core/lifts/exercise.h"
#include "core/progression/evidence.h"
#include "core/progression/lift_machine.h"
#include "core/screens/pattern_screen.h"
#include "core/sessions/session.h"
#include "core/sessions/session_report.h"

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace chalk::ui::board {

/// One entry of a lift's log as it is judged now, with the versions that it replaced.
struct LogEntry {
    base::EventId id;
    base::Date date;
    progression::EventBody body;
    progression::RuleList rules;
    progression::Prescription after;
    lifts::Measure measure = lifts::Measure::Reps;  ///< what its sets are counted in
    base::SessionId session = {};                   ///< none where it was done outside of one
    std::vector<progression::Event> earlier = {};   ///< what corrections replaced, oldest first
};

/// One lift of a client with all that its column and the inspector show, on one day.
struct LiftCase {
    explicit LiftCase(progression::LiftMachine lift) : machine(std::move(lift)) {}

    base::LiftId id;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    lifts::Exercise exercise;
    base::Date startedOn;
    progression::LiftMachine machine;
    progression::RuleList decided;  ///< the rules of the last decision that changed anything
    std::vector<LogEntry> log;      ///< oldest first
    progression::Prescription next;
    progression::Evidence evidence;
    base::Date day;  ///< that both are for
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
    std::map<base::SessionId, sessions::SessionReport> reports;  ///< of the sessions of which something was said
    std::vector<LiftCase> lifts;              ///< in the order of the patterns
    std::optional<screens::MovementScreen> screen{};  ///< the latest one
    base::Date today;

    [[nodiscard]] bool isBlocked() const { return clients::isBlocked(clearance, today); }
};

/// The entry that decided what comes next: where the day itself decides, the last one with work in it. None where nothing did.
[[nodiscard]] const LogEntry* decidingEntryOf(const LiftCase& lift);

/// Works out what a lift shows on `day` from its machine and its judged log.
void settle(LiftCase& lift, base::Date day);

/// When a lift last came to each stage, by stage number - 1; nothing where it never stood there.
[[nodiscard]] std::array<std::optional<base::Date>, progression::kStages.size()> reachedOn(const LiftCase& lift);

}  // namespace chalk::ui::board
