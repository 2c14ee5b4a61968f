#include "core/store/record_writer.h"

#include "core/exchange/event_json.h"
#include "core/store/act_work.h"
#include "core/store/conflict.h"
#include "core/store/entry_versions.h"
#include "core/store/lift_codec.h"
#include "core/store/people_changes.h"
#include "core/store/report_rows.h"
#include "core/store/statement.h"

#include <algorithm>
#include <set>

namespace chalk::store {

namespace {

bool isWorkDone(const progression::EventBody& body)
{
    return std::holds_alternative<progression::Exposure>(body) || std::holds_alternative<progression::Rehearsal>(body);
}

bool isWork(const NewRecord& record)
{
    return isWorkDone(record.event.body);
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

/// The conflict of an entry of the log with what was about to be written in its place; nothing of one's own where it was to be taken back.
Conflict entryConflict(Database& database, EventLog& log, const LogEntry& theirs, const progression::Event* yours)
{
    Conflict conflict{ConflictAbout::Entry, {}, theirs.session, theirs.lift};
    const auto lift = LiftCache(database, log).read(theirs.lift);
    const auto asJson = [&lift](const progression::Event& event) {
        return lift ? exchange::toJson(event, lift->machine.kit().measure) : QJsonObject();
    };
    conflict.entry = theirs.isVoid ? base::EventId() : theirs.id;
    conflict.yours = yours == nullptr ? QJsonObject() : asJson(*yours);
    conflict.theirs = theirs.isVoid ? QJsonObject() : asJson(theirs.event);
    Statement owner(database, QStringLiteral("SELECT client_id FROM lift WHERE id = ?"));
    conflict.client = base::ClientId(owner.run(theirs.lift) && owner.next() ? owner.integer(0) : 0);
    nameLastAct(database, conflict, QStringLiteral("event"), QStringLiteral("id"), theirs.id.value());
    return conflict;
}

}  // namespace

RecordWriter::RecordWriter(Database& database, std::function<QString()> atUtc, base::CoachId coach)
    : m_database(database), m_atUtc(std::move(atUtc)), m_coach(coach)
{
}

Result<ActOutcome> RecordWriter::record(base::ClientId client, base::SessionId session, const std::vector<NewRecord>& records,
                                        const std::optional<sessions::SessionReport>& report, const SeenSession& seen)
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
    if (seen.hasNoEntry) {
        refuseOtherEntries(work, session, records);
    }
    if (seen.entriesOfLift && !records.empty()) {
        refuseOtherState(work, records.front(), *seen.entriesOfLift);
    }
    if (report) {
        checkReport(work, session, *report, seen.report);
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

void RecordWriter::refuseOtherState(ActWork& work, const NewRecord& choice, const std::vector<base::EventId>& seen)
{
    const auto entries = work.edit().log().presentEntries(choice.lift);
    const bool isAsSeen = std::equal(entries.begin(), entries.end(), seen.begin(), seen.end(), [](const LogEntry& now, base::EventId then) { return now.id == then; });
    const auto rows = work.edit().log().allEntries(choice.lift);
    if (work.isRefused() || isAsSeen || rows.empty()) {
        return;
    }
    Conflict conflict = entryConflict(m_database, work.edit().log(), rows.back(), &choice.event);
    conflict.about = ConflictAbout::Choice;
    conflict.entry = {};
    refuseAsConflict(m_database, std::move(conflict));
}

void RecordWriter::refuseOtherEntries(ActWork& work, base::SessionId session, const std::vector<NewRecord>& records)
{
    if (session.isNone() || work.isRefused()) {
        return;
    }
    for (const LogEntry& theirs : work.edit().log().presentEntriesIn(session)) {
        const auto yours = std::find_if(records.begin(), records.end(), [&theirs](const NewRecord& record) { return record.lift == theirs.lift; });
        if (yours != records.end() && isWork(*yours) && isWorkDone(theirs.event.body)) {
            refuseAsConflict(m_database, entryConflict(m_database, work.edit().log(), theirs, &yours->event));
            return;
        }
    }
}

Result<ActOutcome> RecordWriter::replaceEntry(base::EventId id, const progression::Event* event, ActKind kind,
                                              const std::optional<sessions::SessionReport>& report,
                                              const std::optional<sessions::SessionReport>& seenReport)
{
    ActWork work(m_database);
    const auto old = work.edit().log().entry(id);
    if (!old) {
        work.refuse(QStringLiteral("That entry is not there any more: it was changed since"));
        return work.finish();
    }
    if (old->isVoid || work.edit().log().isReplaced(id)) {
        const EntryVersions versions(m_database, work.edit().log(), *old);
        refuseAsConflict(m_database, entryConflict(m_database, work.edit().log(), versions.latest(), event));
        return work.finish();
    }
    if (report) {
        checkReport(work, old->session, *report, seenReport);
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

Result<ActOutcome> RecordWriter::correct(base::EventId entry, const progression::Event& event, const std::optional<sessions::SessionReport>& report,
                                         const std::optional<sessions::SessionReport>& seenReport)
{
    return replaceEntry(entry, &event, ActKind::Correct, report, seenReport);
}

Result<ActOutcome> RecordWriter::takeBack(base::EventId entry)
{
    return replaceEntry(entry, nullptr, ActKind::TakeBack);
}

Result<ActOutcome> RecordWriter::setSessionState(base::SessionId session, sessions::SessionState state, std::optional<sessions::SessionState> seen)
{
    ActWork work(m_database);
    const base::ClientId client = work.clientOf(session);
    if (seen) {
        work.compareState(session, state, *seen);
    }
    work.begin(ActKind::Session, m_atUtc(), m_coach, client);
    work.changeSession(session, state);
    return work.finish();
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

void RecordWriter::checkReport(ActWork& work, base::SessionId session, const sessions::SessionReport& report,
                               const std::optional<sessions::SessionReport>& seen)
{
    if (work.clientOf(session).isNone()) {
        work.refuse(QStringLiteral("There is no session %1").arg(session.value()));
    }
    if (const auto fault = sessions::faultOf(report)) {
        work.refuse(qstringOf(fault->field) + QLatin1Char(' ') + qstringOf(fault->reason));
    }
    work.compareReport(session, report, seen);
    const sessions::SessionReport before = readReport(m_database, session);
    if (before == report) {
        work.refuse(QStringLiteral("There is nothing new to say of the session"));
    }
    const bool isReadinessKept = before.sleep == report.sleep && before.soreness == report.soreness && before.stress == report.stress;
    if (report.hasReadiness() && !isReadinessKept && !isHealthKept(m_database, session)) {
        work.refuse(QStringLiteral("Without consent no sleep, soreness or stress is kept"));
    }
}

Result<ActOutcome> RecordWriter::saveReport(base::SessionId session, const sessions::SessionReport& report,
                                            const std::optional<sessions::SessionReport>& seen)
{
    ActWork work(m_database);
    const base::ClientId client = work.clientOf(session);
    checkReport(work, session, report, seen);
    work.begin(ActKind::Report, m_atUtc(), m_coach, client);
    work.changeReport(session, report);
    return work.finish();
}

Result<int> RecordWriter::entriesOf(base::ActId act)
{
    const Snapshot snapshot(m_database);
    Statement count(m_database, QStringLiteral("SELECT count(*) FROM event WHERE act_id = ?"));
    const int entries = count.run(act) && count.next() ? count.number(0) : 0;
    return m_database.resultOf(entries);
}

Result<ActOutcome> RecordWriter::undo(base::ActId act, const Progress& progress)
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
    work.takeBack(act, progress);
    return work.finish();
}

}  // namespace chalk::store
