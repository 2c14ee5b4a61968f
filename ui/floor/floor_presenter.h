#pragma once

#include "core/checkin/progress_report.h"
#include "core/lifts/catalogue.h"
#include "core/planning/group_session.h"
#include "core/sessions/card_content.h"
#include "core/store/card_reader.h"
#include "core/store/conflict.h"
#include "core/store/client_reader.h"
#include "core/store/history_reader.h"
#include "core/store/pending_write.h"
#include "ui/decisions/swap_offers.h"
#include "ui/floor/floor_case.h"
#include "ui/floor/maximum_test_desk.h"

#include <functional>
#include <set>

namespace chalk::ui::common {
class WriteDesk;
}

namespace chalk::ui::floor {

/// Reads a day's run and writes what is recorded. Owns nothing that it is handed.
class FloorPresenter {
public:
    FloorPresenter(store::Database& database, const lifts::Catalogue& catalogue, const screens::ScreenCatalogue& screens, std::function<QString()> atUtc);

    /// Records, reports, states and bookings go through `writes` from here on, which outlives this; before that straight to the studio.
    void writeThrough(common::WriteDesk& writes) { m_writes = &writes; }
    /// Whether the person is asked where somebody else was faster: a conflict that comes back is then settled in favour of the others.
    [[nodiscard]] bool asksAboutConflicts() const { return m_writes != nullptr; }

    /// The slots of a day, by time.
    [[nodiscard]] store::Result<std::vector<RunSlot>> run(base::Date day);
    /// The clients of a slot with their lifts. Who called off is left out. The sessions of `begun` are not over yet, whatever their day.
    [[nodiscard]] store::Result<std::vector<FloorClient>> clients(const RunSlot& slot, base::Date today, const std::set<base::SessionId>& begun = {});
    /// One client in a session: the lifts that are planned for it and those that were recorded in it. Of a recorded session that
    /// lies before `today` nothing is planned any more.
    [[nodiscard]] store::Result<FloorClient> client(const sessions::Session& session, const QString& coach, base::Date today);
    /// The client's session of `day`, else the next one, else one that nobody booked, at `minute`: for the client's card.
    [[nodiscard]] store::Result<FloorClient> forCard(base::ClientId client, base::Date day, int minute);
    /// The day of a client's session; nothing where there is no such session.
    [[nodiscard]] std::optional<base::Date> dayOf(base::ClientId client, base::SessionId session);
    /// The next day with sessions, three weeks ahead at most.
    [[nodiscard]] std::optional<base::Date> nextBusyDay(base::Date day);

    /// The card of a session, as it is printed before it.
    [[nodiscard]] sessions::CardContent cardOf(const FloorClient& client) const;

    /// The cards of the open sessions in the week of `day`: everybody's, or one client's.
    [[nodiscard]] store::Result<store::CardsRead> weekCards(base::Date day, base::ClientId client);

    /// What the studio has for a group to share.
    [[nodiscard]] store::Result<planning::FloorStations> stations();

    /// What a client's progress report says, up to `to`.
    [[nodiscard]] store::Result<checkin::ProgressReport> reportOf(base::ClientId client, base::Date to);

    /// Saves one lift of a session, or corrects what was saved for it. A remark is added to the session's note, behind the lift's name, in the same act.
    [[nodiscard]] store::Result<store::ActOutcome> save(const FloorClient& client, const FloorLift& lift, const progression::EventBody& body,
                                                        const QString& remark = {});
    /// Adds a remark on a lift to the session's note.
    [[nodiscard]] store::Result<store::ActOutcome> addRemark(const FloorClient& client, const FloorLift& lift, const QString& remark);
    /// Says something once of a session, in the place of what was said before, as it was `seen`.
    [[nodiscard]] store::Result<store::ActOutcome> saveReport(base::SessionId session, const sessions::SessionReport& report,
                                                              const std::optional<sessions::SessionReport>& seen, const QString& who);
    /// Keeps the lifts of a session as they stand on the client: their order, and which are left out and why. Where somebody else planned them
    /// otherwise meanwhile, the person decides; a Conflict then says that theirs stay.
    [[nodiscard]] store::Result<void> keepLifts(FloorClient& client);
    /// What could take the place of a lift's exercise.
    [[nodiscard]] store::Result<std::vector<decisions::SwapOffer>> swapOffers(const FloorClient& client, const FloorLift& lift);
    /// Swaps a lift's exercise on the day of the session, before it is recorded there. Refused where the lift cannot take it.
    [[nodiscard]] store::Result<store::ActOutcome> swap(const FloorClient& client, const FloorLift& lift, const progression::Swap& swap);
    /// Where the guided test of a maximum reads and writes.
    [[nodiscard]] MaximumTestDesk maximumTests() { return {m_database, m_atUtc}; }
    /// Sets what became of a session.
    [[nodiscard]] store::Result<store::ActOutcome> setState(const sessions::Session& session, sessions::SessionState state);
    /// Who can be booked on a day, by name, and the coaches; the client's own coach first is for the caller.
    [[nodiscard]] store::Result<BookingChoices> bookingChoices(base::Date day);
    [[nodiscard]] store::Result<store::ActOutcome> book(const sessions::Session& session);
    /// Takes a booking away in which nothing was recorded.
    [[nodiscard]] store::Result<store::ActOutcome> withdraw(const sessions::Session& session);
    /// Takes back what was recorded for a lift.
    [[nodiscard]] store::Result<store::ActOutcome> takeBack(const FloorLift& lift);
    /// Sessions whose cards were printed: those that are planned count as printed then. Nothing where none was.
    [[nodiscard]] store::Result<std::optional<store::ActOutcome>> markPrinted(const std::vector<sessions::Session>& sessions);

private:
    [[nodiscard]] static sessions::SessionReport withRemark(sessions::SessionReport report, const FloorLift& lift, const QString& remark);
    [[nodiscard]] QString nameOf(base::ClientId client);
    /// Asks the person about conflicts where there is somebody to ask.
    template <class Write>
    [[nodiscard]] auto settled(store::Seen seen, Write write);
    [[nodiscard]] store::Result<store::ActOutcome> write(const store::PendingWrite& write, const QString& words);
    [[nodiscard]] std::optional<FloorLift> floorLift(const progression::LiftMachine& present, base::LiftId id, const sessions::Session& session);

    store::Database& m_database;
    const lifts::Catalogue& m_catalogue;
    const screens::ScreenCatalogue& m_screens;
    std::function<QString()> m_atUtc;
    common::WriteDesk* m_writes = nullptr;
};

/// What is different later once a record is taken back.
struct TakenBack {
    progression::Prescription present;    ///< due now, with the record
    progression::Prescription without;    ///< due now, without it
    int laterDecisions = 0;               ///< of later sessions that come out otherwise
};
/// Judged on copies of the lift; nothing where nothing is saved, or what came later cannot stand without it.
[[nodiscard]] std::optional<TakenBack> takenBackOf(const FloorLift& lift, base::Date day);

/// What follows from a record, judged on a copy of the lift.
struct Preview {
    progression::Prescription next;  ///< right after it, on the day of the session
    progression::RuleList rules;     ///< that fired
    /// What is due after all that was recorded later as well; nothing where nothing was.
    std::optional<progression::Prescription> present = {};
};
/// Nothing where the record cannot be judged.
[[nodiscard]] std::optional<Preview> previewOf(const FloorLift& lift, const progression::EventBody& body, base::Date day);

}  // namespace chalk::ui::floor
