#pragma once

#include "core/sessions/session.h"
#include "core/store/act.h"
#include "core/store/session_code.h"
#include "core/week/studio_week.h"

#include <QString>

#include <functional>
#include <map>
#include <optional>
#include <vector>

namespace chalk::store {

class ActWork;

/// A booking that goes elsewhere.
struct MovedBooking {
    base::SessionId session;
    week::BookingPlace place;
    /// Where it was seen before; where it lies elsewhere by now, that is a Conflict.
    std::optional<week::BookingPlace> seen = {};

    bool operator==(const MovedBooking&) const = default;
};

/// A booking as it was seen.
struct SeenBooking {
    week::BookingPlace place;
    sessions::SessionState state = sessions::SessionState::Planned;

    bool operator==(const SeenBooking&) const = default;
};

/// What a plan of a week changes, all at once.
struct BookingChanges {
    std::vector<sessions::Session> booked;
    std::vector<MovedBooking> moved;
    std::vector<base::SessionId> withdrawn;
    /// Of those that are taken away: how they were seen. Where one lies elsewhere by now or became something, that is a Conflict.
    std::map<base::SessionId, SeenBooking> seenWithdrawn = {};

    [[nodiscard]] bool isEmpty() const { return booked.empty() && moved.empty() && withdrawn.empty(); }
    bool operator==(const BookingChanges&) const = default;
};

/// Books sessions and takes bookings away. Each call is one act, which undo takes back.
class SessionWriter {
public:
    /// `atUtc` answers the present moment, ISO 8601: it is asked at every act.
    SessionWriter(Database& database, std::function<QString()> atUtc, SessionCodes newCode = randomSessionCode);

    /// Books a session as planned; its id, state and code are given here. Refused where client or coach are not there, its values are out of
    /// range, or the client has a session at that time. Who waits for clearance may be booked: what may be done then is said elsewhere.
    [[nodiscard]] Result<ActOutcome> book(const sessions::Session& session);
    /// Sets the lifts that a session is planned with, in their order, and which of them are left out, with the reason. Refused where one is not the
    /// client's, or is named twice. It is a plan and no record: the log knows nothing of it. Where it is another one than was `seen`, that is a Conflict.
    [[nodiscard]] Result<void> setLifts(base::SessionId session, const std::vector<sessions::SessionLift>& lifts,
                                        const std::optional<std::vector<sessions::SessionLift>>& seen = {});
    /// Moves a booking, or locks and unlocks it. Refused as book() is, and where it is over.
    [[nodiscard]] Result<ActOutcome> move(base::SessionId session, const week::BookingPlace& place, const std::optional<week::BookingPlace>& seen = {});
    /// Books, moves and takes away in one act. Refused, and nothing is done, where one of them is; bookings that change places do not stand in
    /// each other's way.
    [[nodiscard]] Result<ActOutcome> apply(const BookingChanges& changes);
    /// Takes a booking away. Refused where something was recorded in it, or where it is out of the week already.
    [[nodiscard]] Result<ActOutcome> withdraw(base::SessionId session, const std::optional<SeenBooking>& seen = {});

private:
    void insert(ActWork& work, const sessions::Session& session);
    void moveTo(ActWork& work, const MovedBooking& moved);
    void withdrawIn(ActWork& work, base::SessionId session, const std::optional<SeenBooking>& seen);
    void compareLifts(base::SessionId session, const std::vector<sessions::SessionLift>& lifts, const std::vector<sessions::SessionLift>& seen);
    /// The first of the sessions that lies upon another one of its client is refused.
    void refuseOverlaps(ActWork& work, const std::vector<base::SessionId>& sessions);

    Database& m_database;
    std::function<QString()> m_atUtc;
    SessionCodes m_newCode;
};

}  // namespace chalk::store
