#include "core/store/session_writer.h"

#include "core/store/act_work.h"
#include "core/store/event_log.h"
#include "core/store/session_states.h"
#include "core/store/statement.h"

#include <set>

namespace chalk::store {

namespace {

using sessions::Session;
using sessions::SessionState;

constexpr int kLeastMinutes = 5;
constexpr int kMostMinutes = 480;
constexpr int kMinutesOfDay = 24 * 60;

/// Why the session cannot be booked; empty where it can.
QString faultOfBooking(Database& database, const Session& session)
{
    if (session.startMinute < 0 || session.startMinute >= kMinutesOfDay) {
        return QStringLiteral("start must be a time of the day");
    }
    if (session.minutes < kLeastMinutes || session.minutes > kMostMinutes) {
        return QStringLiteral("minutes must be %1 to %2").arg(kLeastMinutes).arg(kMostMinutes);
    }
    Statement coach(database, QStringLiteral("SELECT 1 FROM coach WHERE id = ?"));
    if (!coach.run(session.coach) || !coach.next()) {
        return QStringLiteral("There is no coach %1").arg(session.coach.value());
    }
    Statement same(database, QStringLiteral("SELECT 1 FROM session WHERE client_id = ? AND day = ? AND start_minute < ? AND start_minute + minutes > ? "
                                            "AND state IN ") + statesWhere(sessions::takesTime));
    if (same.run(session.client, session.date, session.startMinute + session.minutes, session.startMinute) && same.next()) {
        return QStringLiteral("There is a session on %1 at that time already").arg(QString::fromStdString(session.date.toString()));
    }
    return {};
}

}  // namespace

SessionWriter::SessionWriter(Database& database, std::function<QString()> atUtc, SessionCodes newCode)
    : m_database(database), m_atUtc(std::move(atUtc)), m_newCode(std::move(newCode))
{
}

Result<ActOutcome> SessionWriter::book(const Session& session)
{
    ActWork work(m_database);
    if (const QString fault = faultOfBooking(m_database, session); !fault.isEmpty()) {
        work.refuse(fault);
    }
    work.begin(ActKind::Session, m_atUtc(), {}, session.client);
    // It begins as a booking that was taken away, so that undo leads back there.
    Statement insert(m_database, QStringLiteral("INSERT INTO session (client_id, coach_id, day, start_minute, minutes, place, place_capacity, kind, state, code) "
                                                "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id"));
    const base::SessionId id(insert.runForId(session.client, session.coach, session.date, session.startMinute, session.minutes, session.place, session.placeCapacity,
                                             sessions::keyOf(session.kind), sessions::keyOf(SessionState::Withdrawn), freeSessionCode(m_database, m_newCode)));
    work.changeSession(id, SessionState::Planned);
    return work.finish();
}

Result<void> SessionWriter::setLifts(base::SessionId session, const std::vector<sessions::SessionLift>& lifts)
{
    Transaction transaction(m_database);
    Statement(m_database, QStringLiteral("DELETE FROM session_lift WHERE session_id = ?")).run(session);
    std::set<base::LiftId> named;
    int position = 0;
    for (const sessions::SessionLift& one : lifts) {
        Statement owner(m_database, QStringLiteral("SELECT 1 FROM lift l JOIN session s ON s.client_id = l.client_id WHERE l.id = ? AND s.id = ?"));
        if (!owner.run(one.lift, session) || !owner.next() || !named.insert(one.lift).second) {
            m_database.fail({StoreError::Kind::Refused, QStringLiteral("Lift %1 is not one of session %2, or is named twice").arg(one.lift.value()).arg(session.value())});
            break;
        }
        Statement(m_database, QStringLiteral("INSERT INTO session_lift (session_id, position, lift_id, left_out) VALUES (?, ?, ?, ?)"))
            .run(session, position++, one.lift, one.leftOut);
    }
    return transaction.commit();
}

Result<ActOutcome> SessionWriter::withdraw(base::SessionId session)
{
    ActWork work(m_database);
    if (!EventLog(m_database).presentEntriesIn(session).empty()) {
        work.refuse(QStringLiteral("Something was recorded in this session: it stays"));
    }
    work.begin(ActKind::Session, m_atUtc(), {}, work.clientOf(session));
    work.changeSession(session, SessionState::Withdrawn);
    return work.finish();
}

}  // namespace chalk::store
