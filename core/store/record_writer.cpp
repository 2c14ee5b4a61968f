#include "core/store/record_writer.h"

#include "core/store/act_work.h"
#include "core/store/lift_codec.h"
#include "core/store/people_changes.h"
#include "core/store/report_rows.h"
#include "core/store/statement.h"

#include <algorithm>
#include <set>

namespace chalk::store {

namespace {

bool isWork(const NewRecord& record)
{
    return std::holds_alternative<progression::Exposure>(record.event.body) || std::holds_alternative<progression::Rehearsal>(record.event.body);
}

/// What an act of these records is called: by what the coach did, where that is all there is.
ActKind kindOf(const std::vector<NewRecord>& records)
{
    const bool isOneKind = std::all_of(records.begin(), records.end(), [&records](const NewRecord& record) {
        return record.event.body.index() == records.front().event.body.index();
    });
    const auto kind = !records.empty() && isOneKind ? actKindOf(progression::typeKeyOf(records.front().event.body)) : std::nullopt;
    return kind.value_or(ActKind::Record);
}

}  // namespace

RecordWriter::RecordWriter(Database& database, std::function<QString()> atUtc, base::CoachId coach)
    : m_database(database), m_atUtc(std::move(atUtc)), m_coach(coach)
{
}

Result<ActOutcome> RecordWriter::record(base::ClientId client, base::SessionId session, const std::vector<NewRecord>& records,
                                        const std::optional<sessions::SessionReport>& report)
{
    ActWork work(m_database);
    if (records.empty() && !report) {
        work.refuse(QStringLiteral("There is nothing to record"));
    }
    if (!session.isNone() && work.clientOf(session) != client) {
        work.refuse(QStringLiteral("Session %1 is not one of client %2").arg(session.value()).arg(client.value()));
    }
    for (const NewRecord& record : records) {
        if (work.clientOf(record.lift) != client) {
            work.refuse(QStringLiteral("Lift %1 is not one of client %2").arg(record.lift.value()).arg(client.value()));
        }
    }
    if (report) {
        checkReport(work, session, *report);
    }
    work.begin(records.empty() ? ActKind::Report : kindOf(records), m_atUtc(), m_coach, client);
    for (const NewRecord& record : records) {
        work.edit().add(record.lift, record.event, session);
    }
    if (!session.isNone() && std::any_of(records.begin(), records.end(), isWork)) {
        work.changeSession(session, sessions::SessionState::Recorded);
    }
    if (report) {
        work.changeReport(session, *report);
    }
    return work.finish();
}

Result<ActOutcome> RecordWriter::replaceEntry(base::EventId id, const progression::Event* event, ActKind kind,
                                              const std::optional<sessions::SessionReport>& report)
{
    ActWork work(m_database);
    const auto old = work.edit().log().entry(id);
    if (!old || old->isVoid || work.edit().log().isReplaced(id)) {
        work.refuse(QStringLiteral("That entry is not there any more: it was changed since"));
        return work.finish();
    }
    if (report) {
        checkReport(work, old->session, *report);
    }
    work.begin(kind, m_atUtc(), m_coach, work.clientOf(old->lift));
    work.edit().replace(*old, event == nullptr ? old->event : *event, event == nullptr);
    if (event == nullptr && !old->session.isNone() && work.edit().log().presentEntriesIn(old->session).empty()) {
        work.changeSession(old->session, sessions::SessionState::Planned);
    }
    if (report) {
        work.changeReport(old->session, *report);
    }
    return work.finish();
}

Result<ActOutcome> RecordWriter::correct(base::EventId entry, const progression::Event& event, const std::optional<sessions::SessionReport>& report)
{
    return replaceEntry(entry, &event, ActKind::Correct, report);
}

Result<ActOutcome> RecordWriter::takeBack(base::EventId entry)
{
    return replaceEntry(entry, nullptr, ActKind::TakeBack);
}

Result<ActOutcome> RecordWriter::setSessionState(base::SessionId session, sessions::SessionState state)
{
    return setSessionStates({session}, state);
}

Result<ActOutcome> RecordWriter::setSessionStates(const std::vector<base::SessionId>& sessions, sessions::SessionState state)
{
    ActWork work(m_database);
    const std::set<base::SessionId> distinct(sessions.begin(), sessions.end());
    std::set<base::ClientId> clients;
    for (const base::SessionId session : distinct) {
        clients.insert(work.clientOf(session));
    }
    if (clients.empty()) {
        work.refuse(QStringLiteral("There is no session to change"));
    }
    work.begin(ActKind::Session, m_atUtc(), m_coach, clients.size() == 1 ? *clients.begin() : base::ClientId());
    for (const base::SessionId session : distinct) {
        work.changeSession(session, state);
    }
    return work.finish();
}

void RecordWriter::checkReport(ActWork& work, base::SessionId session, const sessions::SessionReport& report)
{
    if (work.clientOf(session).isNone()) {
        work.refuse(QStringLiteral("There is no session %1").arg(session.value()));
    }
    if (const auto fault = sessions::faultOf(report)) {
        work.refuse(qstringOf(fault->field) + QLatin1Char(' ') + qstringOf(fault->reason));
    }
    const sessions::SessionReport before = readReport(m_database, session);
    if (before == report) {
        work.refuse(QStringLiteral("There is nothing new to say of the session"));
    }
    const bool isReadinessKept = before.sleep == report.sleep && before.soreness == report.soreness && before.stress == report.stress;
    if (report.hasReadiness() && !isReadinessKept && !isHealthKept(m_database, session)) {
        work.refuse(QStringLiteral("Without consent no sleep, soreness or stress is kept"));
    }
}

Result<ActOutcome> RecordWriter::saveReport(base::SessionId session, const sessions::SessionReport& report)
{
    ActWork work(m_database);
    const base::ClientId client = work.clientOf(session);
    checkReport(work, session, report);
    work.begin(ActKind::Report, m_atUtc(), m_coach, client);
    work.changeReport(session, report);
    return work.finish();
}

Result<ActOutcome> RecordWriter::undo(base::ActId act)
{
    ActWork work(m_database);
    Statement row(m_database, QStringLiteral("SELECT client_id, kind FROM act WHERE id = ? AND NOT EXISTS "
                                             "(SELECT 1 FROM act later WHERE later.undoes_act_id = act.id)"));
    const auto kind = row.run(act) && row.next() ? actKindOf(row.text(1)) : std::nullopt;
    const bool isOfPeople = kind == ActKind::Import && isPeopleImport(m_database, act);
    if (!kind || (*kind == ActKind::Import && !isOfPeople)) {
        work.refuse(QStringLiteral("There is nothing to take back"));
        return work.finish();
    }
    if (isOfPeople) {
        refuseWhereBuiltUpon(m_database, act);
    }
    work.begin(*kind == ActKind::Undo ? ActKind::Redo : ActKind::Undo, m_atUtc(), m_coach, base::ClientId(row.integer(0)), act);
    work.takeBack(act);
    return work.finish();
}

}  // namespace chalk::store
