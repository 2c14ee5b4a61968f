#pragma once

#include "ui/common/act_history.h"
#include "ui/common/clock.h"
#include "ui/floor/entry_reading.h"

#include <map>
#include <set>

namespace chalk::ui::floor {

/// What came of saving.
enum class SaveState : std::uint8_t {
    Saved,
    Skipped,
    Waits,   ///< the server does not answer: it is kept, and sent when it does
    Asked,   ///< there is a doubt: saving once more keeps the entry
    Refused  ///< nothing was written, and message() says why
};

/// What is on the floor page: the day and its run, the client and the lift that are being recorded, and what is typed and not
/// saved yet. No widget; the page shows it.
class FloorDesk {
public:
    /// All outlive the desk.
    FloorDesk(FloorPresenter& presenter, const common::Clock& clock, common::ActHistory& acts);

    /// Reads the day's run and chooses the slot where work is open, or the one chosen before.
    void read();
    /// Goes to another day; what is typed is kept.
    void goToDay(base::Date day);
    [[nodiscard]] base::Date day() const { return m_day; }
    [[nodiscard]] bool isToday() const { return m_day == m_clock.today(); }
    /// The words of the store where the day or the slot could not be read; empty where it could.
    [[nodiscard]] const QString& failure() const { return m_failure; }

    [[nodiscard]] const std::vector<RunSlot>& run() const { return m_run; }
    [[nodiscard]] int slotIndex() const { return m_slot; }
    [[nodiscard]] const std::vector<FloorClient>& clients() const { return m_clients; }
    [[nodiscard]] int clientIndex() const { return m_clientIndex; }
    [[nodiscard]] int liftIndex() const { return m_liftIndex; }
    /// Null where there is none.
    [[nodiscard]] const FloorClient* client() const;
    [[nodiscard]] const FloorLift* lift() const;

    /// Indices out of range choose nothing. A slot begins at its first client, a client at the first lift that is open.
    void chooseSlot(int index);
    void chooseClient(int index);
    void chooseLift(int index);
    /// Chooses the client, or the session, of this day. False where it is not there.
    bool choose(base::ClientId client, base::SessionId session);
    /// Whether a lift of the slot is still to be recorded.
    [[nodiscard]] bool isSlotOpen() const;
    /// To the next or previous lift, client or slot. False at the end.
    bool moveLift(int by);
    bool moveClient(int by);
    bool moveSlot(int by);

    /// Changes what is typed for the lift.
    void type(const QString& line);
    void judge(const RehearsalDraft& rehearsal);
    /// What is typed now; for a lift as it is.
    [[nodiscard]] EntryReading reading() const;
    /// What the page says below the entry: a refusal, a doubt, what a correction changed, or the reading's own message.
    [[nodiscard]] common::BannerMessage message() const;

    /// Saves what is typed for the lift and goes to the next one that is open; a correction stays.
    SaveState save();
    /// Says something once of a session of the day. What is wrong is a message.
    SaveState saveReport(base::SessionId session, const sessions::SessionReport& report);
    /// Leaves the lift out of this session, with a reason (the key of a SkipReason, own words or empty), and goes to the next one; or takes it in again. What is saved stays.
    void skip(const std::string& why = {});
    /// Whether another exercise can take the place of the lift's. Where it is recorded already, or later
    /// records build on it, none can, and message() says so.
    bool checkSwap();
    /// Swaps the lift's exercise for the one called `name`: what is typed for it is forgotten, and a lift that was left out is taken in
    /// again. Answers why it was refused; empty where it was done.
    QString swap(const progression::Swap& swap, const QString& name);
    /// Whether a maximum of the lift can be tested now. Where it is recorded already, or later records build on it, it cannot, and message() says so.
    bool checkTest();
    /// The lift as it is tested. Outside of a plan's test week the test belongs to no session, whose work stays to be recorded.
    /// Nothing where the studio could not be read, and message() says so.
    [[nodiscard]] std::optional<TestedLift> testedLift();
    /// Keeps a test of it. Answers why it was refused; empty where it was kept.
    QString keepTest(const TestedLift& lift, const MaximumTestRun& run, const QString& note);
    /// Moves the lift among those of the session, for today.
    void shiftLift(int by);
    /// Takes back what is saved for the lift. The first call asks, and message() says what it changes; the second does it.
    SaveState takeBack();
    /// Sets what became of a session of the run; withdrawing takes the booking away. False where it was refused, and runRefusal() says why.
    bool setState(const sessions::Session& session, sessions::SessionState state);
    /// Books a session of this day and chooses it.
    bool book(const sessions::Session& session);
    /// Says why something about the run could not be done.
    void refuseRun(const QString& why) { m_runRefusal = why; }
    [[nodiscard]] const QString& runRefusal() const { return m_runRefusal; }
    /// Takes another lift of the client into the session and chooses it.
    void addLift(base::LiftId lift);
    /// Chooses the client's lift of that pattern, and takes it into the session where it is not planned. False where there is none.
    bool choosePattern(lifts::Pattern pattern);

private:
    using DraftKey = std::pair<base::SessionId, base::LiftId>;
    struct Draft {
        QString line;
        RehearsalDraft rehearsal;
    };

    [[nodiscard]] QString nameIn(const sessions::Session& session) const;
    [[nodiscard]] FloorClient* editedClient();
    [[nodiscard]] FloorLift* editedLift();
    [[nodiscard]] DraftKey keyOf(const FloorLift& lift) const { return {client()->session.id, lift.id}; }
    void readSlot();
    void takeDrafts(FloorClient& client);
    /// Keeps the lifts of the session as they stand now. False where the studio refused it.
    bool keepLifts();
    /// Reads again where somebody else's version was kept.
    void readTheirs(const store::StoreError& error);
    void keepDraft();
    void forgetMessages();
    /// To the next lift that is still to be recorded, from here round; stays where there is none.
    void moveToOpenLift();
    SaveState write(const progression::EventBody& body, const QString& remark);
    /// False where the remark could not be written, and message() says why.
    bool writeRemark(const QString& remark);
    SaveState refuse(const QString& why);
    /// Shows what was said of a session while it waits to be sent.
    void keepReport(base::SessionId session, const sessions::SessionReport& report);
    /// Whether what is typed for the lift was entered already and waits to be sent.
    [[nodiscard]] bool isWaiting(const EntryReading& read) const;
    void forgetWaiting();

    FloorPresenter& m_presenter;
    const common::Clock& m_clock;
    common::ActHistory& m_acts;
    base::Date m_day;
    std::vector<RunSlot> m_run;
    std::vector<FloorClient> m_clients;
    std::map<DraftKey, Draft> m_drafts;
    std::map<DraftKey, progression::EventBody> m_waiting;  ///< entered while the server did not answer, and kept to be sent
    std::map<base::SessionId, sessions::SessionReport> m_reports;  ///< of what was said the same way: what the studio had said before
    std::set<base::SessionId> m_begun;  ///< recorded here: their other lifts stay to be recorded, on earlier days too
    int m_slot = -1;
    int m_clientIndex = -1;
    int m_liftIndex = -1;
    bool m_isDoubtAsked = false;
    bool m_isTakeBackAsked = false;
    bool m_isReportKept = false;  ///< what was said of a session last waits to be sent
    QString m_runRefusal;  ///< why the last change of a session was not made
    QString m_failure;
    QString m_refusal;  ///< why the last save wrote nothing
    QString m_changed;  ///< what the last correction changed
};

}  // namespace chalk::ui::floor
