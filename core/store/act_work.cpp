#include "core/store/act_work.h"

#include "core/exchange/session_report_json.h"
#include "core/exchange/studio_week_json.h"
#include "core/store/conflict.h"
#include "core/store/decision_rows.h"
#include "core/store/entry_versions.h"
#include "core/store/people_changes.h"
#include "core/store/plan_rows.h"
#include "core/store/report_rows.h"
#include "core/store/session_writer.h"
#include "core/store/statement.h"

#include <QJsonDocument>

#include <algorithm>

namespace chalk::store {

namespace {

using sessions::SessionState;

struct SessionChange {
    base::SessionId session;
    std::optional<SessionState> before;
    std::optional<SessionState> after;
};

struct BookingChange {
    base::SessionId session;
    std::optional<week::BookingPlace> before;
    std::optional<week::BookingPlace> after;
};

QString textOfPlace(const week::BookingPlace& place)
{
    return QString::fromUtf8(QJsonDocument(exchange::toJson(place, exchange::CoachNames())).toJson(QJsonDocument::Compact));
}

std::optional<week::BookingPlace> placeIn(const QString& text)
{
    const auto place = exchange::readBookingPlace(QJsonDocument::fromJson(text.toUtf8()).object(), {}, exchange::CoachNames());
    return place ? std::optional(*place) : std::nullopt;
}

struct ReportChange {
    base::SessionId session;
    sessions::SessionReport before;
    sessions::SessionReport after;
};

/// What was done by an act, or by the one that it took back or brought back in the end.
std::string originalKindOf(Database& database, base::ActId act)
{
    Statement row(database, QStringLiteral("SELECT kind, undoes_act_id FROM act WHERE id = ?"));
    while (row.run(act) && row.next()) {
        if (row.isNull(1)) {
            return row.text(0);
        }
        act = base::ActId(row.integer(1));
    }
    return {};
}

}  // namespace

void ActWork::begin(ActKind kind, const QString& atUtc, base::CoachId coach, base::ClientId client, base::ActId undoes)
{
    Statement insert(m_database, QStringLiteral("INSERT INTO act (at_utc, coach_id, kind, client_id, undoes_act_id, token) VALUES (?, ?, ?, ?, ?, ?) RETURNING id"));
    m_outcome.act = base::ActId(insert.runForId(atUtc, coach.isNone() ? m_database.author() : coach, keyOf(kind), client, undoes, m_database.takeToken()));
    m_outcome.client = client;
}

void ActWork::refuse(const QString& reason)
{
    m_database.fail({StoreError::Kind::Refused, reason});
}

Result<ActOutcome> ActWork::finish()
{
    if (auto committed = m_transaction.commit(); !committed) {
        return tl::make_unexpected(committed.error());
    }
    return std::move(m_outcome);
}

base::ClientId ActWork::clientIn(const QString& table, std::int64_t id)
{
    Statement owner(m_database, QStringLiteral("SELECT client_id FROM %1 WHERE id = ?").arg(table));
    return base::ClientId(owner.run(id) && owner.next() ? owner.integer(0) : 0);
}

base::ClientId ActWork::clientOf(base::LiftId lift)
{
    return clientIn(QStringLiteral("lift"), lift.value());
}

base::ClientId ActWork::clientOf(base::SessionId session)
{
    return clientIn(QStringLiteral("session"), session.value());
}

void ActWork::changeSession(base::SessionId session, SessionState state, std::optional<SessionState> expected)
{
    Statement row(m_database, QStringLiteral("SELECT state FROM session WHERE id = ?"));
    const bool isThere = row.run(session) && row.next();
    const std::string before = isThere ? row.text(0) : std::string();
    if (!isThere) {
        refuse(QStringLiteral("There is no session %1").arg(session.value()));
    } else if (expected && before != sessions::keyOf(*expected)) {
        refuse(QStringLiteral("The session was changed since: take that change back first"));
    }
    Statement(m_database, QStringLiteral("INSERT INTO session_change (act_id, session_id, state_before, state_after) VALUES (?, ?, ?, ?)"))
        .run(m_outcome.act, session, before, sessions::keyOf(state));
    Statement(m_database, QStringLiteral("UPDATE session SET state = ? WHERE id = ?")).run(sessions::keyOf(state), session);
}

void ActWork::changeReport(base::SessionId session, const sessions::SessionReport& report, const std::optional<sessions::SessionReport>& expected)
{
    const sessions::SessionReport before = readReport(m_database, session);
    if (expected && before != *expected) {
        refuse(QStringLiteral("What was said of the session was changed since: take that change back first"));
    }
    Vault& vault = m_database.vault();
    const SealedRow row = vault.toWrite("report_change", m_outcome.act, session);
    Statement(m_database, QStringLiteral("INSERT INTO report_change (act_id, session_id, before, after) VALUES (?, ?, ?, ?)"))
        .run(m_outcome.act, session, vault.sealed(row, "before", textOfReport(before)), vault.sealed(row, "after", textOfReport(report)));
    putReport(m_database, session, report);
}

void ActWork::compareReport(base::SessionId session, const sessions::SessionReport& report, const std::optional<sessions::SessionReport>& seen)
{
    if (!seen || isRefused()) {
        return;
    }
    Conflict conflict{ConflictAbout::Report, clientOf(session), session};
    conflict.yours = exchange::toJson(report);
    conflict.theirs = exchange::toJson(readReport(m_database, session));
    nameLastAct(m_database, conflict, QStringLiteral("report_change"), QStringLiteral("session_id"), session.value());
    refuseChanged(m_database, std::move(conflict), exchange::toJson(*seen));
}

void ActWork::compareState(base::SessionId session, SessionState state, SessionState seen)
{
    const auto asJson = [](std::string_view key) { return QJsonObject{{QStringLiteral("state"), QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()))}}; };
    Statement row(m_database, QStringLiteral("SELECT state FROM session WHERE id = ?"));
    if (!row.run(session) || !row.next()) {
        return;
    }
    Conflict conflict{ConflictAbout::SessionState, clientOf(session), session};
    conflict.yours = asJson(sessions::keyOf(state));
    conflict.theirs = asJson(row.text(0));
    nameLastAct(m_database, conflict, QStringLiteral("session_change"), QStringLiteral("session_id"), session.value());
    refuseChanged(m_database, std::move(conflict), asJson(sessions::keyOf(seen)));
}

void ActWork::comparePlace(base::SessionId session, const week::BookingPlace& place, const week::BookingPlace& seen)
{
    const auto now = placeOf(session);
    if (!now) {
        return;
    }
    Conflict conflict{ConflictAbout::Booking, clientOf(session), session};
    conflict.yours = exchange::toJson(place, exchange::CoachNames());
    conflict.theirs = exchange::toJson(*now, exchange::CoachNames());
    nameLastAct(m_database, conflict, QStringLiteral("booking_change"), QStringLiteral("session_id"), session.value());
    refuseChanged(m_database, std::move(conflict), exchange::toJson(seen, exchange::CoachNames()));
}

void ActWork::compareBooking(base::SessionId session, const SeenBooking& seen)
{
    const auto now = placeOf(session);
    Statement row(m_database, QStringLiteral("SELECT state FROM session WHERE id = ?"));
    if (!now || !row.run(session) || !row.next()) {
        return;
    }
    const auto asJson = [](const week::BookingPlace& place, SessionState state) {
        QJsonObject object = exchange::toJson(place, exchange::CoachNames());
        const bool isToCome = state == SessionState::Printed;  // a card on paper changes nothing of the booking
        const std::string_view key = sessions::keyOf(isToCome ? SessionState::Planned : state);
        object.insert(QStringLiteral("state"), QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size())));
        return object;
    };
    const SessionState state = sessions::sessionStateOf(row.text(0)).value_or(seen.state);
    const bool isMoved = *now != seen.place;
    Conflict conflict{ConflictAbout::Booking, clientOf(session), session};
    conflict.yours = asJson(seen.place, SessionState::Withdrawn);
    conflict.theirs = asJson(*now, state);
    nameLastAct(m_database, conflict, isMoved ? QStringLiteral("booking_change") : QStringLiteral("session_change"), QStringLiteral("session_id"), session.value());
    refuseChanged(m_database, std::move(conflict), asJson(seen.place, seen.state));
}

std::optional<week::BookingPlace> ActWork::placeOf(base::SessionId session)
{
    Statement row(m_database, QStringLiteral("SELECT coach_id, day, start_minute, minutes, place, place_capacity, is_locked FROM session WHERE id = ?"));
    if (!row.run(session) || !row.next()) {
        refuse(QStringLiteral("There is no session %1").arg(session.value()));
        return std::nullopt;
    }
    return week::BookingPlace{base::CoachId(row.integer(0)), row.date(1), row.number(2), row.number(3), row.text(4), row.number(5), row.number(6) == 1};
}

void ActWork::changeBooking(base::SessionId session, const week::BookingPlace& place, const std::optional<week::BookingPlace>& expected)
{
    const auto before = placeOf(session);
    if (!before) {
        return;
    }
    if (expected && *before != *expected) {
        refuse(QStringLiteral("The booking was moved since: take that change back first"));
    }
    Statement(m_database, QStringLiteral("INSERT INTO booking_change (act_id, session_id, before, after) VALUES (?, ?, ?, ?)"))
        .run(m_outcome.act, session, textOfPlace(*before), textOfPlace(place));
    Statement(m_database, QStringLiteral("UPDATE session SET coach_id = ?, day = ?, start_minute = ?, minutes = ?, place = ?, place_capacity = ?, is_locked = ? WHERE id = ?"))
        .run(place.coach, place.date, place.startMinute, place.minutes, place.place, place.placeCapacity, place.isLocked, session);
}

void ActWork::takeBack(base::ActId act, const Progress& progress)
{
    if (!m_database.may(Right::Record)) {
        takeBackBookingAct(act);
        return;
    }
    takeBackEntries(act, progress);
    takeBackSessions(act, progress);
    takeBackReports(act);
    takeBackBookings(act);
    takeBackDecisions(m_database, act, m_outcome.act);
    takeBackPlans(m_database, act, m_outcome.act);
    takeBackTestedMaxima(m_database, act, m_outcome.act);
    takeBackPeople(m_database, act, m_outcome.act);
}

void ActWork::takeBackBookingAct(base::ActId act)
{
    if (originalKindOf(m_database, act) != keyOf(ActKind::Session)) {
        m_database.fail({StoreError::Kind::NotAllowed, QStringLiteral("Only bookings can be taken back by your role")});
        return;
    }
    takeBackSessions(act, {});
    takeBackBookings(act);
}

void ActWork::tell(const Progress& progress, std::size_t done, std::size_t of)
{
    if (progress && !progress(static_cast<int>(done), static_cast<int>(of))) {
        m_database.fail({StoreError::Kind::Cancelled, QStringLiteral("Stopped: nothing was taken back")});
    }
}

void ActWork::takeBackEntries(base::ActId act, const Progress& progress)
{
    std::vector<LogEntry> entries = m_edit.log().entriesOf(act);
    std::reverse(entries.begin(), entries.end());
    // Lift by lift, so that one history is held at a time, however large the act is.
    std::stable_sort(entries.begin(), entries.end(), [](const LogEntry& a, const LogEntry& b) { return a.lift < b.lift; });
    for (std::size_t i = 0; i < entries.size() && !isRefused(); ++i) {
        if (i > 0 && entries[i - 1].lift != entries[i].lift) {
            m_edit.settle();
            tell(progress, i, 2 * entries.size());
        }
        takeEntryBack(entries[i]);
    }
    if (!isRefused()) {
        m_edit.settle();
    }
}

void ActWork::takeEntryBack(const LogEntry& entry)
{
    const EntryVersions versions(m_database, m_edit.log(), entry);
    // Where what came later was taken back too, the latest version stands for this one again.
    if (versions.originOf(versions.latest()) != versions.originOf(entry)) {
        refuse(QStringLiteral("This was changed since: take that change back first"));
        return;
    }
    const LogEntry* former = versions.formerOf(entry);
    const LogEntry& latest = versions.latest();
    m_edit.writeLater(
        {latest.lift, former == nullptr ? entry.event : former->event, m_outcome.act, latest.session, latest.id, former == nullptr || former->isVoid});
}

void ActWork::takeBackSessions(base::ActId act, const Progress& progress)
{
    Statement rows(m_database, QStringLiteral("SELECT session_id, state_before, state_after FROM session_change WHERE act_id = ?"));
    std::vector<SessionChange> changes;
    rows.run(act);
    while (rows.next()) {
        changes.push_back({base::SessionId(rows.integer(0)), sessions::sessionStateOf(rows.text(1)), sessions::sessionStateOf(rows.text(2))});
    }
    for (std::size_t i = 0; i < changes.size() && !isRefused(); ++i) {
        const SessionChange& change = changes[i];
        if (change.before && change.after) {
            changeSession(change.session, *change.before, change.after);
        }
        tell(progress, changes.size() + i, 2 * changes.size());
    }
}

void ActWork::takeBackBookings(base::ActId act)
{
    Statement rows(m_database, QStringLiteral("SELECT session_id, before, after FROM booking_change WHERE act_id = ?"));
    std::vector<BookingChange> changes;
    rows.run(act);
    while (rows.next()) {
        changes.push_back({base::SessionId(rows.integer(0)), placeIn(rows.qtext(1)), placeIn(rows.qtext(2))});
    }
    for (const BookingChange& change : changes) {
        if (change.before && change.after) {
            changeBooking(change.session, *change.before, change.after);
        } else {
            m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: where session %2 lay cannot be read").arg(m_database.target()).arg(change.session.value())});
        }
    }
}

void ActWork::takeBackReports(base::ActId act)
{
    Statement rows(m_database, QStringLiteral("SELECT session_id, before, after FROM report_change WHERE act_id = ?"));
    std::vector<ReportChange> changes;
    rows.run(act);
    while (rows.next()) {
        const base::SessionId session(rows.integer(0));
        const SealedRow row = rows.sealedRow("report_change", act, session);
        changes.push_back({session, reportOf(m_database, rows.opened(1, row, "before")), reportOf(m_database, rows.opened(2, row, "after"))});
    }
    for (const ReportChange& change : changes) {
        changeReport(change.session, change.before, change.after);
    }
}

}  // namespace chalk::store
