#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/database.h"
#include "core/store/pending_write.h"
#include "core/week/replan.h"
#include "ui/common/act_history.h"
#include "ui/common/clock.h"
#include "ui/print/roster_week_sheet.h"
#include "ui/week/left_over_items.h"
#include "ui/week/month_weeks.h"

#include <functional>
#include <map>

namespace chalk::ui::common {
class WriteDesk;
}

namespace chalk::ui::week {

using Wishes = std::vector<std::size_t>;  ///< sessions by index in the case

/// What the desk reads and writes. All of it outlives the desk.
struct WeekStudio {
    store::Database& database;
    const lifts::Catalogue& catalogue;
    const common::Clock& clock;
    common::ActHistory& acts;
    std::function<QString()> atUtc;
    common::WriteDesk* writes = nullptr;  ///< through which bookings are written; none: straight to the studio
};

/// What is on the week page: a week, and what is proposed for it and not saved. No widget; the page shows it. Every change that is saved is one
/// act, which undo takes back; where one is refused, refusal() says why.
class WeekDesk {
public:
    explicit WeekDesk(const WeekStudio& studio);

    /// Reads the week again; what is proposed stays proposed as far as it still can be.
    void read();
    /// Goes to the week of a day, without proposals.
    void goTo(base::Date day);
    [[nodiscard]] base::Date monday() const { return m_monday; }
    /// Why the week could not be read; empty where it could.
    [[nodiscard]] const QString& failure() const { return m_failure; }
    [[nodiscard]] const QString& refusal() const { return m_refusal; }

    [[nodiscard]] const chalk::week::WeekFacts& facts() const { return m_facts; }
    [[nodiscard]] const chalk::week::WeekCase& week() const { return m_case; }
    [[nodiscard]] const chalk::week::WeekPlan& plan() const { return m_plan; }
    [[nodiscard]] const WeekScene& scene() const { return m_scene; }
    /// Without what would help, until somebody has worked that out.
    [[nodiscard]] const std::vector<LeftOverItem>& items() const { return m_items; }
    void setItems(std::vector<LeftOverItem> items) { m_items = std::move(items); }
    [[nodiscard]] const MonthWeeks& strip() const { return m_strip; }
    /// The weeks that hold the month of a day.
    [[nodiscard]] MonthWeeks monthOf(base::Date day);
    /// Sessions that have a place, proposed or not, and all that the week should have.
    [[nodiscard]] int placed() const;
    [[nodiscard]] int wanted() const;
    [[nodiscard]] int leftOver() const { return wanted() - placed(); }
    [[nodiscard]] int proposed() const;

    /// The bookings that a proposal moves or takes out of the week, whose clients have to be told.
    [[nodiscard]] std::vector<chalk::week::SessionMove> changes() const;

    /// The week for the wall, or for one coach: what is saved.
    [[nodiscard]] print::RosterWeek onPaper(std::optional<std::size_t> coach = {}) const;
    /// What is saved, as it leaves the program.
    [[nodiscard]] std::vector<chalk::week::Booking> bookings() const;

    /// Why those sessions must not begin there; empty where they may.
    [[nodiscard]] QString reasonAgainst(const Wishes& wishes, const chalk::week::Slot& slot) const;
    /// Every quarter of an hour, with each coach, where one of them must not begin.
    [[nodiscard]] std::vector<chalk::week::Slot> closedFor(const Wishes& wishes) const;

    /// Moves sessions, or books those that are left over. Of what is proposed only the proposal changes. False where it must not be there.
    bool move(const Wishes& wishes, const chalk::week::Slot& slot);
    /// Locks the bookings of a block, or unlocks them where one is locked.
    bool toggleLock(const WeekBlock& block);
    /// Takes sessions out of the week: bookings are withdrawn, proposals dropped.
    bool takeAway(const std::vector<BlockMember>& members);
    bool setState(const BlockMember& member, sessions::SessionState state);
    bool book(const sessions::Session& session);
    /// The client comes once less in this week than wanted so far; or as often as usual again. No act: the one takes the other back.
    bool wantOneFewer(base::ClientId client);
    bool wantUsual(base::ClientId client);

    /// Proposes a plan of the case that is on the desk now; bookings stay where they are.
    void propose(const chalk::week::WeekPlan& plan);
    /// Proposes a plan that moves bookings and takes some out of the week.
    void proposeChange(const chalk::week::WeekPlan& plan);
    /// Proposes the times of last week to those who have no booking yet, as far as no rule is broken. How many there are now.
    int proposeLastWeek();
    /// Proposes a place for a session, and another one for the session that makes room.
    void rearrange(std::size_t wish, const chalk::week::Slot& slot, std::size_t other, const chalk::week::Slot& otherSlot);
    bool keepAll();
    bool keep(const Wishes& wishes);
    void dropProposals();

private:
    [[nodiscard]] WeekInput input() const { return {m_facts, m_case, m_plan}; }
    [[nodiscard]] chalk::week::WeekPlan planWithProposals() const;
    [[nodiscard]] bool isProposed(std::size_t wish) const { return m_plan[wish] != m_case.booked[wish]; }
    [[nodiscard]] MonthWeeks readWeeks(base::Date monday, int weeks);
    void show();
    void noteProposals();
    [[nodiscard]] store::BookingChanges changesOf(const Wishes& wishes) const;
    /// Adds a booking to those that are taken away, as it is on show.
    void addWithdrawn(store::BookingChanges& changes, base::ClientId client, base::SessionId booking) const;
    bool setSessions(base::ClientId client, std::optional<int> sessions);
    bool done(const store::Result<store::ActOutcome>& outcome, const QString& words);
    [[nodiscard]] store::Result<store::ActOutcome> write(const store::PendingWrite& write, const QString& words);

    WeekStudio m_studio;
    base::Date m_monday;
    chalk::week::WeekFacts m_facts;
    chalk::week::WeekCase m_case;
    chalk::week::WeekPlan m_plan;
    WeekScene m_scene;
    std::vector<LeftOverItem> m_items;
    MonthWeeks m_strip;
    std::map<base::SessionId, std::optional<chalk::week::Slot>> m_movedTo;  ///< proposed; nothing: out of the week
    std::map<base::ClientId, std::vector<chalk::week::Slot>> m_newSlots;  ///< proposed
    QString m_failure;
    QString m_refusal;
};

}  // namespace chalk::ui::week
