#include "core/store/session_writer.h"

#include "core/store/act_work.h"
#include "core/store/conflict.h"
#include "core/store/event_log.h"
#include "core/store/session_reader.h"
#include "core/store/session_states.h"
#include "core/store/statement.h"

#include <QJsonArray>

#include <set>

namespace chalk::store {

namespace {

using sessions::Session;
using sessions::SessionState;

constexpr int kLeastMinutes = 5;
constexpr int kMostMinutes = 480;
constexpr int kMinutesOfDay = 24 * 60;

/// Why a booking cannot lie there; empty where it can.
QString faultOfPlace(Database& database, base::CoachId coach, int startMinute, int minutes)
{
    if (startMinute < 0 || startMinute >= kMinutesOfDay) {
        return QStringLiteral("start must be a time of the day");
    }
    if (minutes < kLeastMinutes || minutes > kMostMinutes) {
        return QStringLiteral("minutes must be %1 to %2").arg(kLeastMinutes).arg(kMostMinutes);
    }
    Statement row(database, QStringLiteral("SELECT 1 FROM coach WHERE id = ?"));
    return row.run(coach) && row.next() ? QString() : QStringLiteral("There is no coach %1").arg(coach.value());
}

/// Who may not see what was recorded still sees that it was: by the session's state.
bool hasRecords(Database& database, base::SessionId session)
{
    if (database.may(Right::SeeHealth)) {
        return !EventLog(database).presentEntriesIn(session).empty();
    }
    Statement row(database, QStringLiteral("SELECT state FROM session WHERE id = ?"));
    return row.run(session) && row.next() && row.text(0) == keyOf(SessionState::Recorded);
}

/// The client of all that is changed; none where there are several.
base::ClientId onlyClientOf(ActWork& work, const BookingChanges& changes)
{
    std::set<base::ClientId> clients;
    for (const Session& session : changes.booked) {
        clients.insert(session.client);
    }
    for (const MovedBooking& moved : changes.moved) {
        clients.insert(work.clientOf(moved.session));
    }
    for (const base::SessionId session : changes.withdrawn) {
        clients.insert(work.clientOf(session));
    }
    return clients.size() == 1 ? *clients.begin() : base::ClientId();
}

/// The lifts of a session by their patterns, in their order, and why some are left out. A client has one lift of each pattern.
QJsonObject jsonOfLifts(Database& database, const std::vector<sessions::SessionLift>& lifts)
{
    QJsonArray order;
    QJsonObject leftOut;
    for (const sessions::SessionLift& one : lifts) {
        Statement row(database, QStringLiteral("SELECT pattern FROM lift WHERE id = ?"));
        const QString pattern = row.run(one.lift) && row.next() ? row.qtext(0) : QString::number(one.lift.value());
        order.append(pattern);
        if (one.leftOut) {
            leftOut.insert(pattern, one.leftOut->empty() ? QJsonValue(true) : QJsonValue(QString::fromStdString(*one.leftOut)));
        }
    }
    return {{QStringLiteral("lifts"), order}, {QStringLiteral("left_out"), leftOut}};
}

}  // namespace

SessionWriter::SessionWriter(Database& database, std::function<QString()> atUtc, SessionCodes newCode)
    : m_database(database), m_atUtc(std::move(atUtc)), m_newCode(std::move(newCode))
{
}

void SessionWriter::refuseOverlaps(ActWork& work, const std::vector<base::SessionId>& sessions)
{
    Statement same(m_database, QStringLiteral("SELECT a.day FROM session a JOIN session b ON b.client_id = a.client_id AND b.day = a.day AND b.id <> a.id "
                                              "WHERE a.id = ? AND b.start_minute < a.start_minute + a.minutes AND b.start_minute + b.minutes > a.start_minute "
                                              "AND b.state IN ") + statesWhere(sessions::takesTime));
    for (const base::SessionId session : sessions) {
        if (same.run(session) && same.next()) {
            work.refuse(QStringLiteral("There is a session on %1 at that time already").arg(QString::fromStdString(same.date(0).toString())));
            return;
        }
    }
}

void SessionWriter::insert(ActWork& work, const Session& session)
{
    if (const QString fault = faultOfPlace(m_database, session.coach, session.startMinute, session.minutes); !fault.isEmpty()) {
        work.refuse(fault);
    }
    // It begins as a booking that was taken away, so that undo leads back there.
    Statement row(m_database, QStringLiteral("INSERT INTO session (client_id, coach_id, day, start_minute, minutes, place, place_capacity, kind, state, code, is_locked) "
                                             "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id"));
    const base::SessionId id(row.runForId(session.client, session.coach, session.date, session.startMinute, session.minutes, session.place, session.placeCapacity,
                                          sessions::keyOf(session.kind), sessions::keyOf(SessionState::Withdrawn), freeSessionCode(m_database, m_newCode), session.isLocked));
    work.changeSession(id, SessionState::Planned);
    refuseOverlaps(work, {id});
}

void SessionWriter::moveTo(ActWork& work, const MovedBooking& moved)
{
    if (const QString fault = faultOfPlace(m_database, moved.place.coach, moved.place.startMinute, moved.place.minutes); !fault.isEmpty()) {
        work.refuse(fault);
    }
    Statement row(m_database, QStringLiteral("SELECT state FROM session WHERE id = ? AND state IN ('planned', 'printed')"));
    if (!row.run(moved.session) || !row.next()) {
        work.refuse(QStringLiteral("Session %1 is over or called off: it stays").arg(moved.session.value()));
    }
    if (moved.seen) {
        work.comparePlace(moved.session, moved.place, *moved.seen);
    }
    work.changeBooking(moved.session, moved.place);
}

void SessionWriter::withdrawIn(ActWork& work, base::SessionId session, const std::optional<SeenBooking>& seen)
{
    if (Statement row(m_database, QStringLiteral("SELECT 1 FROM session WHERE id = ? AND state = 'withdrawn'")); row.run(session) && row.next()) {
        work.refuse(QStringLiteral("This session is out of the week already"));
    }
    if (hasRecords(m_database, session)) {
        work.refuse(QStringLiteral("Something was recorded in this session: it stays"));
    }
    if (seen) {
        work.compareBooking(session, *seen);
    }
    work.changeSession(session, SessionState::Withdrawn);
}

Result<ActOutcome> SessionWriter::book(const Session& session)
{
    ActWork work(m_database);
    work.begin(ActKind::Session, m_atUtc(), {}, session.client);
    insert(work, session);
    return work.finish();
}

Result<ActOutcome> SessionWriter::move(base::SessionId session, const week::BookingPlace& place, const std::optional<week::BookingPlace>& seen)
{
    ActWork work(m_database);
    work.begin(ActKind::Session, m_atUtc(), {}, work.clientOf(session));
    moveTo(work, {session, place, seen});
    refuseOverlaps(work, {session});
    return work.finish();
}

Result<ActOutcome> SessionWriter::apply(const BookingChanges& changes)
{
    ActWork work(m_database);
    if (changes.isEmpty()) {
        work.refuse(QStringLiteral("There is nothing to change"));
    }
    work.begin(ActKind::Session, m_atUtc(), {}, onlyClientOf(work, changes));
    std::vector<base::SessionId> moved;
    for (const base::SessionId session : changes.withdrawn) {
        const auto seen = changes.seenWithdrawn.find(session);
        withdrawIn(work, session, seen == changes.seenWithdrawn.end() ? std::nullopt : std::optional(seen->second));
    }
    for (const MovedBooking& one : changes.moved) {
        moveTo(work, one);
        moved.push_back(one.session);
    }
    for (const Session& session : changes.booked) {
        insert(work, session);
    }
    refuseOverlaps(work, moved);
    return work.finish();
}

void SessionWriter::compareLifts(base::SessionId session, const std::vector<sessions::SessionLift>& lifts, const std::vector<sessions::SessionLift>& seen)
{
    const auto now = SessionReader(m_database).lifts(session);
    Statement owner(m_database, QStringLiteral("SELECT client_id FROM session WHERE id = ?"));
    if (!now || !owner.run(session) || !owner.next()) {
        return;
    }
    Conflict conflict{ConflictAbout::SessionLifts, base::ClientId(owner.integer(0)), session};
    conflict.yours = jsonOfLifts(m_database, lifts);
    conflict.theirs = jsonOfLifts(m_database, *now);
    refuseChanged(m_database, std::move(conflict), jsonOfLifts(m_database, seen));
}

Result<void> SessionWriter::setLifts(base::SessionId session, const std::vector<sessions::SessionLift>& lifts,
                                     const std::optional<std::vector<sessions::SessionLift>>& seen)
{
    Transaction transaction(m_database);
    if (seen) {
        compareLifts(session, lifts, *seen);
    }
    Statement(m_database, QStringLiteral("DELETE FROM session_lift WHERE session_id = ?")).run(session);
    std::set<base::LiftId> named;
    int position = 0;
    for (const sessions::SessionLift& one : lifts) {
        Statement owner(m_database, QStringLiteral("SELECT 1 FROM lift l JOIN session s ON s.client_id = l.client_id WHERE l.id = ? AND s.id = ?"));
        if (!owner.run(one.lift, session) || !owner.next() || !named.insert(one.lift).second) {
            m_database.fail({StoreError::Kind::Refused, QStringLiteral("Lift %1 is not one of session %2, or is named twice").arg(one.lift.value()).arg(session.value())});
            break;
        }
        Vault& vault = m_database.vault();
        const SealedRow row = vault.toWrite("session_lift", session, one.lift);
        const auto leftOut = one.leftOut ? std::optional(vault.sealed(row, "left_out", *one.leftOut)) : std::nullopt;
        Statement(m_database, QStringLiteral("INSERT INTO session_lift (session_id, position, lift_id, left_out) VALUES (?, ?, ?, ?)"))
            .run(session, position++, one.lift, leftOut);
    }
    return transaction.commit();
}

Result<ActOutcome> SessionWriter::withdraw(base::SessionId session, const std::optional<SeenBooking>& seen)
{
    ActWork work(m_database);
    work.begin(ActKind::Session, m_atUtc(), {}, work.clientOf(session));
    withdrawIn(work, session, seen);
    return work.finish();
}

}  // namespace chalk::store
