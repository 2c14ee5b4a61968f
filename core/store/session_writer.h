#pragma once

#include "core/sessions/session.h"
#include "core/store/act.h"
#include "core/store/session_code.h"

#include <QString>

#include <functional>
#include <vector>

namespace chalk::store {

/// Books sessions and takes bookings away. Each call is one act, which undo takes back.
class SessionWriter {
public:
    /// `atUtc` answers the present moment, ISO 8601: it is asked at every act.
    SessionWriter(Database& database, std::function<QString()> atUtc, SessionCodes newCode = randomSessionCode);

    /// Books a session as planned; its id, state and code are given here. Refused where client or coach are not there, its values are out of
    /// range, or the client has a session at that time. Who waits for clearance may be booked: what may be done then is said elsewhere.
    [[nodiscard]] Result<ActOutcome> book(const sessions::Session& session);
    /// Sets the lifts that a session is planned with, in their order, and which of them are left out, with the reason. Refused where one is not the
    /// client's, or is named twice. It is a plan and no record: the log knows nothing of it.
    [[nodiscard]] Result<void> setLifts(base::SessionId session, const std::vector<sessions::SessionLift>& lifts);
    /// Takes a booking away. Refused where something was recorded in it.
    [[nodiscard]] Result<ActOutcome> withdraw(base::SessionId session);

private:
    Database& m_database;
    std::function<QString()> m_atUtc;
    SessionCodes m_newCode;
};

}  // namespace chalk::store
