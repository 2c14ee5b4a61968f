#include "core/store/studio_import.h"

#include "core/exchange/equipment_json.h"
#include "core/store/decision_rows.h"
#include "core/store/plan_rows.h"
#include "core/store/document_rows.h"
#include "core/store/lift_codec.h"
#include "core/store/report_rows.h"
#include "core/store/week_settings.h"

#include <QJsonDocument>
#include <QStringList>

#include <algorithm>
#include <utility>

namespace chalk::store {

namespace {

using exchange::DocumentClient;
using exchange::DocumentLift;

QString textOfEquipment(const lifts::Equipment& equipment)
{
    return QString::fromUtf8(QJsonDocument(exchange::toJson(equipment)).toJson(QJsonDocument::Compact));
}

}  // namespace

StudioImport::StudioImport(Database& database, const std::string& name, const std::vector<clients::Coach>& coaches,
                           const std::vector<exchange::StudioEquipment>& equipment, const QString& atUtc)
    : m_database(database),
      m_transaction(database),
      m_log(database),
      m_cache(database, m_log),
      m_inserts(database),
      m_insertSession(database, QStringLiteral("INSERT INTO session (client_id, coach_id, day, start_minute, minutes, place, place_capacity, kind, state, code, is_locked) "
                                               "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id"))
{
    Statement studio(database, QStringLiteral("SELECT name FROM studio"));
    if (studio.run() && studio.next()) {
        refuse(QStringLiteral("%1 holds a studio already: %2").arg(database.target(), studio.qtext(0)));
    }
    Statement(database, QStringLiteral("INSERT INTO studio (id, name) VALUES (1, ?)")).run(name);
    for (const clients::Coach& coach : coaches) {
        Statement insert(database, QStringLiteral("INSERT INTO coach (name) VALUES (?) RETURNING id"));
        m_coaches[coach.id] = base::CoachId(insert.runForId(coach.name));
    }
    for (const exchange::StudioEquipment& item : equipment) {
        Statement(database, QStringLiteral("INSERT INTO studio_equipment (key, name, kind, unit, equipment) VALUES (?, ?, ?, ?, ?)"))
            .run(item.key, item.name, lifts::keyOf(item.kind), textOfUnit(item.unit), textOfEquipment(item.equipment));
    }
    Statement act(database, QStringLiteral("INSERT INTO act (at_utc, kind) VALUES (?, 'import') RETURNING id"));
    m_act = base::ActId(act.runForId(atUtc));
}

base::CoachId StudioImport::coachOf(base::CoachId inDocument)
{
    const auto coach = m_coaches.find(inDocument);
    if (coach == m_coaches.end()) {
        refuse(QStringLiteral("there is no coach %1").arg(inDocument.value()));
        return {};
    }
    return coach->second;
}

void StudioImport::add(const DocumentClient& client)
{
    if (hasFailed()) {
        return;
    }
    const clients::Client& who = client.client;
    m_client = who.name;
    clients::Client ours = who;
    ours.coach = coachOf(who.coach);
    const base::ClientId id = m_inserts.client(ours);
    addProfile(client, id);
    addPlanning(client.planning, id);
    addSessions(client.sessions, id);
    WeekVolumes weeks;
    m_lifts.clear();
    for (const DocumentLift& lift : client.lifts) {
        addLift(lift, id, weeks);
    }
    m_cache.changeVolumes(id, {}, weeks);
    addPlannedLifts(client);
    addReports(client);
    addCheckIn(client, id);
    addDirection(client, id);
    insertForms(m_database, id, client.forms);
    insertLetters(m_database, id, client.letters);
}

void StudioImport::addOwn(const exchange::StudioDocument& document)
{
    insertTemplates(m_database, document.templates);
    insertSettings(m_database, document.restingLimits);
    if (document.week != week::StudioWeek()) {
        putStudioWeek(m_database, document.week);
    }
    for (const auto& [coach, work] : document.coachWork) {
        putCoachWork(m_database, coachOf(coach), work);
    }
    for (const base::CoachId coach : document.deskOnly) {
        Statement(m_database, QStringLiteral("UPDATE coach SET is_coaching = 0 WHERE id = ?")).run(coachOf(coach));
    }
    for (week::Closure closure : document.closures) {
        closure.coach = closure.coach.isNone() ? base::CoachId() : coachOf(closure.coach);
        insertClosure(m_database, closure);
    }
    addErased(document);
}

void StudioImport::addErased(const exchange::StudioDocument& document)
{
    std::vector<std::int64_t> numbers;
    for (const base::Date day : document.erasedOn) {
        numbers.push_back(Statement(m_database, QStringLiteral("INSERT INTO erased_client (erased_day) VALUES (?) RETURNING id")).runForId(day));
    }
    Statement insert(m_database, QStringLiteral("INSERT INTO erased_session (erased_client_id, coach_id, day, start_minute, minutes, kind, state) VALUES (?, ?, ?, ?, ?, ?, ?)"));
    for (const exchange::ErasedSession& session : document.erasedSessions) {
        insert.run(numbers.at(static_cast<std::size_t>(session.client) - 1), coachOf(session.coach), session.date, session.startMinute, session.minutes,
                   sessions::keyOf(session.kind), sessions::keyOf(session.state));
    }
}

void StudioImport::addPlanning(week::ClientPlanning planning, base::ClientId client)
{
    if (planning == week::ClientPlanning()) {
        return;
    }
    for (week::CoachWish& wish : planning.otherCoaches) {
        wish.coach = coachOf(wish.coach);
    }
    for (week::StandingSlot& slot : planning.standing) {
        slot.coach = coachOf(slot.coach);
    }
    putPlanning(m_database, client, planning);
}

void StudioImport::addPlannedLifts(const DocumentClient& client)
{
    for (const auto& [code, patterns] : client.plannedLifts) {
        std::vector<base::LiftId> lifts;
        for (const lifts::Pattern pattern : patterns) {
            const auto lift = m_lifts.find(pattern);
            if (lift == m_lifts.end()) {
                refuse(QStringLiteral("there is no lift %1 for session %2").arg(qstringOf(lifts::keyOf(pattern)), qstringOf(code)));
                return;
            }
            lifts.push_back(lift->second);
        }
        const auto session = m_sessionsByCode.find(code);
        if (session == m_sessionsByCode.end()) {
            refuse(QStringLiteral("there is no session %1 for planned lifts").arg(qstringOf(code)));
            return;
        }
        insertPlannedLifts(m_database, session->second, lifts);
        const auto reasons = client.leftOut.find(code);
        Vault& vault = m_database.vault();
        for (std::size_t i = 0; reasons != client.leftOut.end() && i < patterns.size(); ++i) {
            if (const auto why = reasons->second.find(patterns[i]); why != reasons->second.end()) {
                Statement(m_database, QStringLiteral("UPDATE session_lift SET left_out = ? WHERE session_id = ? AND lift_id = ?")).run(vault.sealed(vault.toWrite("session_lift", session->second, lifts[i]), "left_out", why->second), session->second, lifts[i]);
            }
        }
    }
}

void StudioImport::addReports(const DocumentClient& client)
{
    for (const auto& [code, report] : client.reports) {
        const auto session = m_sessionsByCode.find(code);
        if (session == m_sessionsByCode.end()) {
            refuse(QStringLiteral("there is no session %1 for a report").arg(qstringOf(code)));
            return;
        }
        putReport(m_database, session->second, report);
    }
}

void StudioImport::addCheckIn(const DocumentClient& client, base::ClientId id)
{
    for (const exchange::DocumentDecision& one : client.decisions) {
        checkin::Decision decision{m_act, id, {}, one.day, one.about, one.choice, one.note, one.nextReview};
        if (one.lift) {
            const auto lift = m_lifts.find(*one.lift);
            if (lift == m_lifts.end()) {
                refuse(QStringLiteral("there is no lift %1 for the decision of %2").arg(qstringOf(lifts::keyOf(*one.lift)), qstringOf(one.day.toString())));
                return;
            }
            decision.lift = lift->second;
        }
        insertDecision(m_database, decision);
    }
    for (const auto& [monday, sessions] : client.quotas) {
        putQuota(m_database, id, monday, sessions);
    }
}

void StudioImport::addDirection(const DocumentClient& client, base::ClientId id)
{
    std::vector<base::LiftId> lifts;
    for (const exchange::DocumentLift& lift : client.lifts) {
        lifts.push_back(m_lifts.at(lift.pattern));
    }
    for (direction::ClientPlan plan : client.plans) {
        plan.client = id;
        for (direction::PlannedLift& lift : plan.plan.wishes.lifts) {
            lift.lift = lifts.at(static_cast<std::size_t>(lift.lift.value()) - 1);
        }
        insertPlan(m_database, plan, m_act);
    }
    for (const exchange::DocumentTest& test : client.tests) {
        insertTestedMaximum(m_database, {m_act, id, m_lifts.at(test.lift), test.day, test.load, test.reps, test.end, test.note});
    }
}

void StudioImport::addProfile(const DocumentClient& client, base::ClientId id)
{
    for (const clients::Caution& caution : client.cautions) {
        m_inserts.caution(id, caution);
    }
    m_inserts.clearance(id, client.clearance);
}

void StudioImport::addSessions(const std::vector<sessions::Session>& sessions, base::ClientId client)
{
    m_sessionsByCode.clear();
    for (const sessions::Session& session : sessions) {
        m_sessionsByCode[session.code] = base::SessionId(
            m_insertSession.runForId(client, coachOf(session.coach), session.date, session.startMinute, session.minutes, session.place,
                                     session.placeCapacity, sessions::keyOf(session.kind), sessions::keyOf(session.state), session.code, session.isLocked));
    }
}

void StudioImport::addLift(const DocumentLift& lift, base::ClientId client, WeekVolumes& weeks)
{
    NewLift fresh{lift.pattern, lift.equipmentKey, lift.setup, lift.startedOn};
    fresh.setup.kit.exerciseKey = lift.exerciseKey;
    const base::LiftId id = m_inserts.lift(client, fresh);
    m_lifts[lift.pattern] = id;
    addEvents(lift.events, id);
    judge(lift.events, id, weeks);
}

void StudioImport::addEvents(const std::vector<exchange::DocumentEvent>& events, base::LiftId lift)
{
    for (const exchange::DocumentEvent& entry : events) {
        base::SessionId session;
        if (entry.sessionCode) {
            const auto found = m_sessionsByCode.find(*entry.sessionCode);
            if (found == m_sessionsByCode.end()) {
                refuse(QStringLiteral("there is no session %1 for the entry of %2").arg(qstringOf(*entry.sessionCode), qstringOf(entry.event.date.toString())));
                return;
            }
            session = found->second;
        }
        base::EventId last;
        for (const progression::Event& version : entry.former) {
            last = m_log.append({lift, version, m_act, session, last, false});
        }
        last = m_log.append({lift, entry.event, m_act, session, last, false});
        if (entry.isTakenBack) {
            m_log.append({lift, entry.event, m_act, session, last, true});
        }
    }
}

void StudioImport::judge(const std::vector<exchange::DocumentEvent>& events, base::LiftId id, WeekVolumes& weeks)
{
    auto fresh = hasFailed() ? std::nullopt : m_cache.readFresh(id);
    if (!fresh) {
        return;
    }
    std::vector<const progression::Event*> ordered;
    for (const exchange::DocumentEvent& entry : events) {
        if (!entry.isTakenBack) {
            ordered.push_back(&entry.event);
        }
    }
    std::stable_sort(ordered.begin(), ordered.end(), [](const auto* a, const auto* b) { return a->date < b->date; });
    const QString pattern = qstringOf(lifts::keyOf(fresh->pattern));
    const auto replay = replayOf(*std::move(fresh), ordered);
    if (!replay) {
        const auto& [index, fault] = replay.error();
        refuse(QStringLiteral("%1, entry of %2: %3 %4").arg(pattern, qstringOf(ordered[index.value_or(0)]->date.toString()), qstringOf(fault.field),
                                                            qstringOf(fault.reason)));
        return;
    }
    m_cache.keep(*replay);
    for (const auto& [monday, volume] : replay->weeks) {
        weeks[monday] += volume;
    }
}

Result<void> StudioImport::finish()
{
    auto committed = m_transaction.commit();
    if (committed) {
        m_database.engine().settle(m_database.connection());
        return {};
    }
    StoreError error = committed.error();
    if (error.kind == StoreError::Kind::Refused && !m_client.empty()) {
        error.message = qstringOf(m_client) + QStringLiteral(": ") + error.message;
    }
    return tl::make_unexpected(std::move(error));
}

Result<void> importStudio(Database& database, const exchange::StudioDocument& document, const QString& atUtc, const Progress& progress)
{
    StudioImport import(database, document.name, document.coaches, document.equipment, atUtc);
    import.addOwn(document);
    const int count = static_cast<int>(document.clients.size());
    for (int i = 0; i < count && !import.hasFailed(); ++i) {
        if (progress && !progress(i, count)) {
            return storeError(StoreError::Kind::Cancelled, QStringLiteral("Stopped: nothing was taken in"));
        }
        import.add(document.clients[static_cast<std::size_t>(i)]);
    }
    return import.finish();
}

}  // namespace chalk::store
