#pragma once

#include "core/sessions/session_report.h"
#include "core/store/lift_edit.h"
#include "core/store/progress.h"
#include "core/week/studio_week.h"

#include <optional>

namespace chalk::store {

struct SeenBooking;

/// One act on its way: its transaction, its row, and what it does. What is not finished never happened.
class ActWork {
public:
    explicit ActWork(Database& database) : m_database(database), m_transaction(database), m_edit(database, m_outcome) {}

    /// Writes the act's row; comes before anything that it does.
    void begin(ActKind kind, const QString& atUtc, base::CoachId coach, base::ClientId client, base::ActId undoes = {});
    /// Nothing of the act will happen; the first reason counts.
    void refuse(const QString& reason);
    [[nodiscard]] bool isRefused() const { return m_database.failure().has_value(); }
    [[nodiscard]] Result<ActOutcome> finish();
    /// What it did so far; its act is there once it has begun.
    [[nodiscard]] const ActOutcome& outcome() const { return m_outcome; }

    /// The client of a lift or a session; none where there is no such.
    [[nodiscard]] base::ClientId clientOf(base::LiftId lift);
    [[nodiscard]] base::ClientId clientOf(base::SessionId session);
    /// Changes the logs of lifts.
    [[nodiscard]] LiftEdit& edit() { return m_edit; }
    /// Sets the state of a session and notes the former one. Where `expected` is there, it has to be in that state.
    void changeSession(base::SessionId session, sessions::SessionState state, std::optional<sessions::SessionState> expected = {});
    /// Sets the report of a session and notes the former one. Where `expected` is there, it has to be as that.
    void changeReport(base::SessionId session, const sessions::SessionReport& report, const std::optional<sessions::SessionReport>& expected = {});
    /// Moves, locks or unlocks a booking and notes where it lay. Where `expected` is there, it has to lie there.
    void changeBooking(base::SessionId session, const week::BookingPlace& place, const std::optional<week::BookingPlace>& expected = {});
    /// Refused as a conflict where the report of a session is not the one that was seen.
    void compareReport(base::SessionId session, const sessions::SessionReport& report, const std::optional<sessions::SessionReport>& seen);
    /// Refused as a conflict where a session is in another state than was seen.
    void compareState(base::SessionId session, sessions::SessionState state, sessions::SessionState seen);
    /// Refused as a conflict where a booking lies elsewhere than was seen.
    void comparePlace(base::SessionId session, const week::BookingPlace& place, const week::BookingPlace& seen);
    /// Refused as a conflict where a booking that is to be taken away lies elsewhere than was seen, or became something meanwhile.
    void compareBooking(base::SessionId session, const SeenBooking& seen);
    /// Where a booking lies; nothing, and a refusal, where there is none.
    [[nodiscard]] std::optional<week::BookingPlace> placeOf(base::SessionId session);
    /// Puts entries, sessions, bookings, reports, decisions, plans and tests back to what they were before an act. `progress` hears of entries and sessions;
    /// where it answers false, nothing happens.
    void takeBack(base::ActId act, const Progress& progress = {});

private:
    /// For who may not see what else an act can hold.
    void takeBackBookingAct(base::ActId act);
    void takeBackEntries(base::ActId act, const Progress& progress);
    void takeEntryBack(const LogEntry& entry);
    void takeBackSessions(base::ActId act, const Progress& progress);
    /// Tells how far it is; where nobody wants to go on, nothing of the act will happen.
    void tell(const Progress& progress, std::size_t done, std::size_t of);
    void takeBackReports(base::ActId act);
    void takeBackBookings(base::ActId act);
    [[nodiscard]] base::ClientId clientIn(const QString& table, std::int64_t id);

    Database& m_database;
    Transaction m_transaction;
    ActOutcome m_outcome;
    LiftEdit m_edit;
};

}  // namespace chalk::store
