#pragma once

#include "core/base/id.h"
#include "core/lifts/pattern.h"
#include "core/store/database.h"

#include <QJsonObject>
#include <QString>

#include <cstdint>
#include <optional>

namespace chalk::store {

/// What two people wrote at the same time.
enum class ConflictAbout : std::uint8_t {
    Entry,           ///< what was done of a lift in a session
    Report,          ///< what is said once of a session
    SessionState,
    Booking,         ///< where and when a session lies
    Client,          ///< name, birth date, goal and the like
    Profile,
    HealthIntake,
    BodyMeasures,
    MovementScreen,
    FieldTests,
    StartingPlan,
    Caution,
    Planning,        ///< what the week has to know of a client
    CoachWork,
    StudioWeek,
    RestingLimits,
    Plan,            ///< of weeks, after the beginner months
    Decision,        ///< at a check-in
    Choice,          ///< of a coach about a lift: it is added to what others wrote, and says what they wrote last
    SessionLifts,    ///< which lifts a session is planned with, and what is left out of it
    Template         ///< of a week, by its name
};

/// What whoever writes has seen of a thing that is written over, in the words of the open format. Nothing: whatever is there is written over.
using Seen = std::optional<QJsonObject>;

/// Somebody wrote what somebody else was about to write. Nothing of the second one is written; both versions are here for the second to decide.
struct Conflict {
    ConflictAbout about = ConflictAbout::Entry;
    base::ClientId client = {};     ///< none where it is the studio's
    base::SessionId session = {};   ///< none where it is about no session
    base::LiftId lift = {};         ///< none where it is about no lift
    std::optional<lifts::Pattern> pattern = {};  ///< of that lift
    base::EventId entry = {};       ///< of an Entry: the version that counts now; none where it was taken back
    QJsonObject seen = {};          ///< what the second one had seen
    QJsonObject yours = {};         ///< what the second one wants to write
    QJsonObject theirs = {};        ///< what is there now
    QString coach = {};             ///< who wrote that; empty where nobody said
    QString atUtc = {};             ///< when, ISO 8601; empty where it is not known

    bool operator==(const Conflict&) const = default;
};

/// One value that has what both changed: nothing where both changed the same field to something else. An entry is a whole of its own.
[[nodiscard]] std::optional<QJsonObject> bothOf(const Conflict& conflict);

// For work that has its transaction. Failures go to the database.

/// Refuses as a conflict where `theirs`, what is there now, is neither what was seen nor what is to be written anyway.
void refuseChanged(Database& database, Conflict conflict, const Seen& seen);
/// Refuses as a conflict whatever the versions are.
void refuseAsConflict(Database& database, Conflict conflict);
/// Fills in who wrote a row last and when: `table` has an act in every row, and `column` names the thing.
void nameLastAct(Database& database, Conflict& conflict, const QString& table, const QString& column, std::int64_t id);

}  // namespace chalk::store
