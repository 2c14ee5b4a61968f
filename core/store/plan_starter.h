#pragma once

#include "core/sessions/session.h"
#include "core/store/client_inserts.h"
#include "core/store/session_code.h"

#include <string>
#include <vector>

namespace chalk::store {

/// One session of a plan: when, and the patterns of the lifts in their order.
struct PlannedVisit {
    base::Date date;
    int startMinute = 0;
    int minutes = 60;
    std::vector<lifts::Pattern> patterns;
};

/// A plan that begins: its lifts, and the sessions of its first weeks.
struct PlanToStart {
    base::CoachId coach;
    std::string place;   ///< `Floor`
    std::vector<NewLift> lifts;
    std::vector<PlannedVisit> visits;
};

/// Begins plans, and takes one back as long as nothing was done in it. Each call is one transaction.
class PlanStarter {
public:
    /// `newCode` answers an opaque text that no session has yet; it is asked again where one is taken.
    PlanStarter(Database& database, SessionCodes newCode);

    /// Begins the lifts, books the sessions with their lifts, and closes the open plan. Refused where a lift of a pattern runs already, a setup
    /// cannot be, the client has a session at that time, or loaded work is blocked and a lift would carry a load on `today`.
    [[nodiscard]] Result<void> start(base::ClientId client, const PlanToStart& plan, base::Date today);
    /// Begins one more lift of a client who trains already, and adds it at the end of the sessions booked from `today` on. Refused as start() is.
    [[nodiscard]] Result<void> beginLift(base::ClientId client, const NewLift& lift, base::Date today);
    /// Takes away lifts without any entry and their sessions that are still planned. Refused where anything was recorded or printed.
    [[nodiscard]] Result<void> takeBack(base::ClientId client);
    /// Whether nothing was recorded or printed since the client's lifts began.
    [[nodiscard]] Result<bool> canTakeBack(base::ClientId client);

private:
    void refuse(const QString& reason);
    void refuseLoadOfBlocked(base::ClientId client, const std::vector<NewLift>& lifts, base::Date today);
    void book(base::ClientId client, const PlanToStart& plan, const PlannedVisit& visit, const std::vector<std::pair<lifts::Pattern, base::LiftId>>& lifts);
    [[nodiscard]] bool isUntouched(base::ClientId client);

    Database& m_database;
    SessionCodes m_newCode;
};

}  // namespace chalk::store
