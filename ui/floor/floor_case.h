#pragma once

#include "core/clients/client.h"
#include "core/lifts/exercise.h"
#include "core/progression/lift_machine.h"
#include "core/sessions/entry_line.h"
#include "core/sessions/session.h"
#include "core/sessions/session_report.h"
#include "core/sessions/skip_reason.h"
#include "ui/floor/rehearsal_draft.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <string>
#include <vector>

namespace chalk::ui::floor {

/// One lift of a session that is being recorded.
struct FloorLift {
    base::LiftId id;
    lifts::Exercise exercise;
    progression::LiftMachine machine;  ///< as it stood before this session
    progression::Prescription due;
    std::optional<base::Date> lastTrained = {};  ///< before this session
    std::vector<progression::Event> later = {};  ///< what was recorded after this session
    QString line = {};                           ///< as typed and not saved yet
    RehearsalDraft rehearsal = {};               ///< as judged and not saved yet
    RehearsalPoints points = {};                 ///< that a rehearsal of it is judged by
    std::vector<base::EventId> entries = {};     ///< all that counts of the lift
    base::EventId saved = {};                    ///< the entry of this session; none before it is saved
    std::optional<progression::EventBody> savedBody = {};
    bool isSkipped = false;                      ///< left out of this session
    std::string skipWhy = {};                    ///< the key of a SkipReason, own words or empty

    [[nodiscard]] sessions::EntryPlan plan() const { return {due, machine.kit().measure, machine.setup().policy}; }
    [[nodiscard]] bool isDone() const { return !saved.isNone() || isSkipped; }
    /// Whether the session's record of it is a rehearsal, judged point by point, and no line of sets.
    [[nodiscard]] bool isRehearsed() const
    {
        return savedBody ? std::holds_alternative<progression::Rehearsal>(*savedBody) : due.kind == progression::PrescriptionKind::Rehearse;
    }
};

/// One client of the slot.
struct FloorClient {
    clients::Client client;
    QString coach;
    std::vector<clients::Caution> cautions;
    clients::Clearance clearance;
    bool isBlocked = false;  ///< by the clearance: nothing may be recorded
    sessions::Session session;
    std::vector<FloorLift> lifts;
    std::vector<FloorLift> others;  ///< lifts that are not planned for this session
    sessions::SessionReport report = {};  ///< what was said once of the session
    std::vector<sessions::SessionLift> planned = {};  ///< as the studio has them; none where nobody planned the session
    bool isHealthKept = false;            ///< with consent: only then are sleep, soreness and stress asked

    [[nodiscard]] QString firstName() const;
};

/// What a session that nobody planned can be booked with.
struct BookingChoices {
    std::vector<clients::Client> clients;  ///< by name
    std::vector<clients::Coach> coaches;
};

/// One slot of a day's run: the sessions of one coach at one time.
struct RunSlot {
    int startMinute = 0;
    QString coach;
    QString names;           ///< `Joaquin, Adaeze (missed), Callum`
    QStringList firstNames;  ///< by session
    std::vector<sessions::Session> sessions;

    [[nodiscard]] bool isRecorded() const;
    /// Whether anybody is still to come.
    [[nodiscard]] bool isOpen() const;
    /// Whether everybody called off.
    [[nodiscard]] bool isCalledOff() const;
    /// Whether all cards that are needed are on paper.
    [[nodiscard]] bool isPrinted() const;
};

}  // namespace chalk::ui::floor
