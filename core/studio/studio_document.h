#pragma once

#include "core/checkin/check_in.h"
#include "core/clients/client.h"
#include "core/clients/resting_reading.h"
#include "core/direction/client_plan.h"
#include "core/direction/tested_maximum.h"
#include "core/lifts/equipment.h"
#include "core/planning/plan_template.h"
#include "core/progression/event.h"
#include "core/progression/lift_state.h"
#include "core/sessions/session.h"
#include "core/sessions/session_report.h"
#include "core/studio/client_form.h"
#include "core/week/studio_week.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace chalk::studio {

/// One thing of the studio's that lifts are loaded with: `Olympic bar`, `Dumbbells`, `Cable stack`.
struct StudioEquipment {
    std::string key;   ///< unique in the studio
    std::string name;
    lifts::EquipmentKind kind = lifts::EquipmentKind::Barbell;
    base::MassUnit unit = base::MassUnit::Kilogram;
    lifts::Equipment equipment;

    bool operator==(const StudioEquipment&) const = default;
};

/// One entry of a lift's log, with the session that it was done in.
struct DocumentEvent {
    progression::Event event;                  ///< as it counts now
    std::optional<std::string> sessionCode;    ///< of a session of the same client; nothing outside of one
    std::vector<progression::Event> former{};  ///< the versions that were corrected, oldest first; `event` replaced the last of them
    bool isTakenBack = false;                  ///< the whole entry counts no longer

    bool operator==(const DocumentEvent&) const = default;
};

struct DocumentLift {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;   ///< of the catalogue, at the start; a swap changes it
    std::string equipmentKey;  ///< of the studio's equipment at the start
    progression::LiftSetup setup;
    base::Date startedOn;
    std::vector<DocumentEvent> events;  ///< in the order in which they were entered

    bool operator==(const DocumentLift&) const = default;
};

/// What was decided at a check-in. The event of the choice, if it had one, is in the lift's log.
struct DocumentDecision {
    base::Date day;
    std::optional<lifts::Pattern> lift;  ///< of the client's lifts
    checkin::FindingKind about = checkin::FindingKind::OnCourse;
    checkin::ChoiceKind choice = checkin::ChoiceKind::Hold;
    std::string note;
    base::Date nextReview;               ///< after `day`

    bool operator==(const DocumentDecision&) const = default;
};

/// What a test of a maximum found.
struct DocumentTest {
    lifts::Pattern lift = lifts::Pattern::Squat;  ///< of the client's lifts
    base::Date day;
    base::Load load;       ///< as it is written on the lift
    base::Reps reps{1};
    direction::TestEnd end = direction::TestEnd::Found;
    std::string note;

    bool operator==(const DocumentTest&) const = default;
};

struct DocumentClient {
    clients::Client client;  ///< ids are those of the document, counted from 1
    std::vector<clients::Caution> cautions;
    clients::Clearance clearance;
    std::vector<DocumentLift> lifts;  ///< one of a pattern at most
    std::vector<sessions::Session> sessions;
    std::map<std::string, std::map<lifts::Pattern, std::string>> leftOut{};  ///< by the code of a session: planned lifts that are left out of it, and why
    std::map<std::string, std::vector<lifts::Pattern>> plannedLifts{};  ///< by the code of a session: what it was planned with, in order
    std::vector<DocumentForm> forms{};      ///< in the order in which they were begun
    std::vector<DocumentLetter> letters{};  ///< in the order in which they came in
    std::map<std::string, sessions::SessionReport> reports{};  ///< by the code of a session: what was said of it; none is empty
    week::ClientPlanning planning{};
    std::map<base::Date, int> quotas{};     ///< by Monday: sessions wanted in that week, 0 to 7, where that is not the usual number
    std::vector<DocumentDecision> decisions{};  ///< by day, as they were made
    std::vector<direction::ClientPlan> plans{};  ///< as they stand, in the order in which they were begun, without ids; lifts are numbers of `lifts`, from 1
    std::vector<DocumentTest> tests{};           ///< in the order in which they were made

    bool operator==(const DocumentClient&) const = default;
};

/// What is kept of a session of a client who was erased: for the accounts.
struct ErasedSession {
    int client = 1;  ///< the number that stands for the person, from 1
    base::CoachId coach;
    base::Date date;
    int startMinute = 0;
    int minutes = 60;
    sessions::SessionKind kind = sessions::SessionKind::Training;
    sessions::SessionState state = sessions::SessionState::Recorded;

    bool operator==(const ErasedSession&) const = default;
};

/// A whole studio as plain values: what files in the open format say and what the store takes in or gives out.
struct StudioDocument {
    std::string name;
    std::vector<clients::Coach> coaches;
    std::vector<StudioEquipment> equipment;
    std::vector<DocumentClient> clients;
    base::Date today{};  ///< the last day that anything is known of: what was done lies on it or before
    std::vector<planning::PlanTemplate> templates{};  ///< the studio's own, each with a name of its own
    clients::RestingLimits restingLimits{};
    week::StudioWeek week{};
    std::map<base::CoachId, week::CoachWork> coachWork{};  ///< of those who do not work as by default
    std::set<base::CoachId> deskOnly{};  ///< those of `coaches` who coach nobody: nobody is booked with them
    std::vector<week::Closure> closures{};
    std::vector<base::Date> erasedOn{};          ///< when clients were erased; the first one is erased client 1
    std::vector<ErasedSession> erasedSessions{};

    bool operator==(const StudioDocument&) const = default;
};

/// The events of a lift that count, in the order in which they are judged: by date, those of one day as entered, without what was
/// taken back.
[[nodiscard]] std::vector<progression::Event> countingEvents(const DocumentLift& lift);

/// Moves every date of the document by the same whole number of weeks, so that its `today` falls in the ISO week of `day`
/// (birth dates stay), and then sets `today` to `day`.
void slideTo(StudioDocument& document, base::Date day);

/// Puts the document back to an earlier moment: what was done after it is undone, and its sessions are planned again. Sessions of the
/// hour after the moment have their cards printed. `today` becomes `day`. `minute` counts from midnight.
void rewindTo(StudioDocument& document, base::Date day, int minute);

}  // namespace chalk::studio
