#include "core/store/record_writer.h"

#include "core/store/lift_codec.h"

#include <algorithm>
#include <set>

namespace chalk::store {

namespace {

using progression::Decision;

StoreError refused(const QString& message)
{
    return {StoreError::Kind::Refused, message};
}

/// The decisions of entries that stand on both sides but were decided differently.
std::vector<ChangedDecision> differencesOf(const std::map<base::EventId, Decision>& before, const std::map<base::EventId, Decision>& after)
{
    std::vector<ChangedDecision> changed;
    for (const auto& [root, decision] : after) {
        const auto old = before.find(root);
        if (old != before.end() && !(old->second.rules == decision.rules && old->second.after == decision.after)) {
            changed.push_back({decision.date, old->second.rules, decision.rules});
        }
    }
    std::sort(changed.begin(), changed.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
    return changed;
}

std::map<base::EventId, Decision> byRoot(const std::vector<LogEntry>& entries, const std::vector<Decision>& decisions)
{
    std::map<base::EventId, Decision> map;
    for (const Decision& decision : decisions) {
        map.emplace(entries[decision.index].root, decision);
    }
    return map;
}

}  // namespace

RecordWriter::RecordWriter(Database& database, std::function<QString()> atUtc) : m_database(database), m_atUtc(std::move(atUtc)) {}

base::ActId RecordWriter::beginAct(const char* kind, base::ClientId client, base::ActId undoes)
{
    Statement insert(m_database, QStringLiteral("INSERT INTO act (at_utc, kind, client_id, undoes_act_id) VALUES (?, ?, ?, ?)"));
    insert.run(m_atUtc(), std::string_view(kind), client, undoes);
    return base::ActId(insert.lastInsertId());
}

Result<ActOutcome> RecordWriter::finish(Transaction& transaction, ActOutcome outcome)
{
    if (auto committed = transaction.commit(); !committed) {
        return tl::make_unexpected(committed.error());
    }
    return outcome;
}

LiftOutcome RecordWriter::recordOne(const NewRecord& record, base::ActId act, base::SessionId session)
{
    EventLog log(m_database);
    LiftCache cache(m_database, log);
    LiftOutcome outcome{record.lift, {}, {}, {}};
    auto lift = cache.read(record.lift);
    if (!lift) {
        return outcome;
    }
    const base::Date day = std::max(record.event.date, lift->lastEvent.value_or(record.event.date));
    outcome.before = lift->machine.prescriptionOn(day);
    if (day == record.event.date) {
        if (const auto fault = lift->machine.faultOf(record.event.body)) {
            m_database.fail(refused(qstringOf(fault->field + " " + fault->reason)));
            return outcome;
        }
        log.append({record.lift, record.event, act, session, {}, false});
        outcome.rules = cache.append(*lift, record.event);
    } else {  // logged late: the whole history again
        log.append({record.lift, record.event, act, session, {}, false});
        const auto decisions = cache.rebuild(record.lift);
        cache.rebuildClient(lift->client);
        const auto last = std::find_if(decisions.rbegin(), decisions.rend(),
                                       [&record](const Decision& decision) { return decision.date == record.event.date; });
        outcome.rules = last == decisions.rend() ? progression::RuleList() : last->rules;
        lift = cache.read(record.lift);
    }
    if (lift) {
        outcome.after = lift->machine.prescriptionOn(day);
    }
    return outcome;
}

void RecordWriter::changeSession(base::ActId act, base::SessionId session, sessions::SessionState state)
{
    Statement before(m_database, QStringLiteral("SELECT state FROM session WHERE id = ?"));
    if (!before.run(session)) {
        return;
    }
    if (!before.next()) {
        m_database.fail(refused(QStringLiteral("There is no session %1").arg(session.value())));
        return;
    }
    Statement(m_database, QStringLiteral("INSERT INTO session_change (act_id, session_id, state_before, state_after) VALUES (?, ?, ?, ?)"))
        .run(act, session, before.qtext(0), sessions::keyOf(state));
    Statement(m_database, QStringLiteral("UPDATE session SET state = ? WHERE id = ?")).run(sessions::keyOf(state), session);
}

Result<ActOutcome> RecordWriter::record(base::ClientId client, base::SessionId session, const std::vector<NewRecord>& records)
{
    Transaction transaction(m_database);
    ActOutcome outcome{beginAct("record", client), client, {}, {}};
    for (const NewRecord& record : records) {
        Statement owner(m_database, QStringLiteral("SELECT 1 FROM lift WHERE id = ? AND client_id = ?"));
        if (owner.run(record.lift, client) && !owner.next()) {
            m_database.fail(refused(QStringLiteral("Lift %1 is not one of client %2").arg(record.lift.value()).arg(client.value())));
        }
        outcome.lifts.push_back(recordOne(record, outcome.act, session));
    }
    const bool isWork = std::any_of(records.begin(), records.end(), [](const NewRecord& record) {
        return std::holds_alternative<progression::Exposure>(record.event.body) || std::holds_alternative<progression::Rehearsal>(record.event.body);
    });
    if (!session.isNone() && isWork) {
        changeSession(outcome.act, session, sessions::SessionState::Recorded);
    }
    return finish(transaction, std::move(outcome));
}

void RecordWriter::replace(const LogEntry& old, const progression::Event& event, bool isVoid, ActOutcome& outcome)
{
    EventLog log(m_database);
    LiftCache cache(m_database, log);
    auto lift = cache.read(old.lift);
    if (!lift) {
        return;
    }
    const base::Date day = std::max({lift->lastEvent.value_or(event.date), event.date, old.event.date});
    LiftOutcome change{old.lift, {}, lift->machine.prescriptionOn(day), {}};
    const auto before = byRoot(log.presentEntries(old.lift), cache.rebuild(old.lift));
    log.append({old.lift, event, outcome.act, old.session, old.id, isVoid});
    auto after = byRoot(log.presentEntries(old.lift), cache.rebuild(old.lift));
    cache.rebuildClient(lift->client);
    if (const auto own = after.find(old.root); own != after.end()) {
        change.rules = own->second.rules;
        after.erase(own);
    }
    for (const ChangedDecision& decision : differencesOf(before, after)) {
        outcome.changed.push_back(decision);
    }
    if ((lift = cache.read(old.lift))) {
        change.after = lift->machine.prescriptionOn(day);
        outcome.client = lift->client;
    }
    outcome.lifts.push_back(change);
}

Result<ActOutcome> RecordWriter::replaceEntry(base::EventId id, const progression::Event* event, const char* kind)
{
    Transaction transaction(m_database);
    EventLog log(m_database);
    const auto old = log.entry(id);
    if (!m_database.failure() && (!old || old->isVoid || log.isReplaced(id))) {
        m_database.fail(refused(QStringLiteral("That entry is not there any more: it was changed since")));
    }
    if (!old || m_database.failure()) {
        return tl::make_unexpected(*m_database.failure());
    }
    Statement owner(m_database, QStringLiteral("SELECT client_id FROM lift WHERE id = ?"));
    owner.run(old->lift);
    const base::ClientId client(owner.next() ? owner.integer(0) : 0);
    ActOutcome outcome{beginAct(kind, client), client, {}, {}};
    replace(*old, event == nullptr ? old->event : *event, event == nullptr, outcome);
    return finish(transaction, std::move(outcome));
}

Result<ActOutcome> RecordWriter::correct(base::EventId entry, const progression::Event& event)
{
    return replaceEntry(entry, &event, "correct");
}

Result<ActOutcome> RecordWriter::takeBack(base::EventId entry)
{
    return replaceEntry(entry, nullptr, "take_back");
}

Result<ActOutcome> RecordWriter::setSessionState(base::SessionId session, sessions::SessionState state)
{
    Transaction transaction(m_database);
    Statement owner(m_database, QStringLiteral("SELECT client_id FROM session WHERE id = ?"));
    owner.run(session);
    const base::ClientId client(owner.next() ? owner.integer(0) : 0);
    ActOutcome outcome{beginAct("session", client), client, {}, {}};
    changeSession(outcome.act, session, state);
    return finish(transaction, std::move(outcome));
}

void RecordWriter::undoSessions(base::ActId act, base::ActId undo)
{
    Statement changes(m_database, QStringLiteral("SELECT session_id, state_before FROM session_change WHERE act_id = ?"));
    changes.run(act);
    std::vector<std::pair<base::SessionId, std::string>> states;
    while (changes.next()) {
        states.emplace_back(changes.integer(0), changes.text(1));
    }
    for (const auto& [session, key] : states) {
        if (const auto state = sessions::sessionStateOf(key)) {
            changeSession(undo, session, *state);
        }
    }
}

Result<ActOutcome> RecordWriter::undo(base::ActId act)
{
    Transaction transaction(m_database);
    EventLog log(m_database);
    Statement row(m_database, QStringLiteral("SELECT client_id, kind FROM act WHERE id = ? AND NOT EXISTS "
                                             "(SELECT 1 FROM act later WHERE later.undoes_act_id = act.id)"));
    if (row.run(act) && (!row.next() || row.text(1) == "import")) {
        m_database.fail(refused(QStringLiteral("There is nothing to take back")));
    }
    if (m_database.failure()) {
        return tl::make_unexpected(*m_database.failure());
    }
    const base::ClientId client(row.integer(0));
    ActOutcome outcome{beginAct("undo", client, act), client, {}, {}};
    std::vector<LogEntry> entries = log.entriesOf(act);
    std::reverse(entries.begin(), entries.end());
    for (const LogEntry& entry : entries) {
        if (log.isReplaced(entry.id)) {
            m_database.fail(refused(QStringLiteral("This was changed since: take that change back first")));
            break;
        }
        const auto former = entry.replaces.isNone() ? std::nullopt : log.entry(entry.replaces);
        replace(entry, former ? former->event : entry.event, !former || former->isVoid, outcome);
    }
    undoSessions(act, outcome.act);
    return finish(transaction, std::move(outcome));
}

}  // namespace chalk::store
