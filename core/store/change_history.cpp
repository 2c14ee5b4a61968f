#include "core/store/change_history.h"

#include "core/store/lift_codec.h"
#include "core/store/statement.h"
#include "core/store/trend_lifts.h"

#include <QJsonDocument>

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_map>

namespace chalk::store {

namespace {

ChangeEntry entryOfAct(ActRecord act)
{
    return {act.atUtc, act.coachName, act.client, act.clientName, std::move(act), {}};
}

QJsonObject changedIn(const QString& text)
{
    return QJsonDocument::fromJson(text.toUtf8()).object();
}

/// Both the latest first; of one moment the acts stand first.
std::vector<ChangeEntry> merged(std::vector<ActRecord> acts, std::vector<ChangeEntry> audited, int count)
{
    std::vector<ChangeEntry> all;
    all.reserve(acts.size() + audited.size());
    for (ActRecord& act : acts) {
        all.push_back(entryOfAct(std::move(act)));
    }
    std::move(audited.begin(), audited.end(), std::back_inserter(all));
    std::stable_sort(all.begin(), all.end(), [](const ChangeEntry& a, const ChangeEntry& b) { return a.atUtc > b.atUtc; });
    if (all.size() > static_cast<std::size_t>(count)) {
        all.erase(all.begin() + count, all.end());
    }
    return all;
}

/// The lifts of each act, in the order shown.
using LiftsOfActs = std::map<base::ActId, std::vector<ToldLift>>;
using LiftsById = std::unordered_map<std::int64_t, TrendLift>;

LiftsById liftsById(Database& database, base::ClientId client)
{
    LiftsById byId;
    for (TrendLift& lift : readTrendLifts(database, client)) {
        const std::int64_t id = lift.id.value();
        byId.emplace(id, std::move(lift));
    }
    return byId;
}

/// A statement about the rows of `table`, called `r`, by their acts; takes the first act, and the client where there is one.
QString rowsOfActs(const char* columns, const char* table, const char* rest, base::ClientId client)
{
    return QStringLiteral("SELECT %1 FROM %2 r JOIN act a ON a.id = r.act_id JOIN lift l ON l.id = r.lift_id WHERE r.act_id >= ? AND a.kind <> 'import' %3%4")
        .arg(QLatin1String(columns), QLatin1String(table), client.isNone() ? QString() : QStringLiteral("AND l.client_id = ? "), QLatin1String(rest));
}

ToldLift* toldIn(std::vector<ToldLift>& lifts, base::LiftId id)
{
    const auto found = std::find_if(lifts.begin(), lifts.end(), [id](const ToldLift& lift) { return lift.id == id; });
    return found == lifts.end() ? nullptr : &*found;
}

/// Adds the lifts of a statement: act, lift, day and place in the day. What an act named already stays.
void addTouched(Statement& rows, const LiftsById& byId, LiftsOfActs& acts)
{
    while (rows.next()) {
        const auto lift = byId.find(rows.integer(1));
        std::vector<ToldLift>& told = acts[base::ActId(rows.integer(0))];
        if (lift != byId.end() && toldIn(told, lift->second.id) == nullptr) {
            told.push_back({lift->second.id, lift->second.pattern, lift->second.kitAt(rows.date(2), rows.integer(3)).exerciseKey, {}});
        }
    }
}

void addHandSets(Statement& rows, const LiftsById& byId, Database& database, LiftsOfActs& acts)
{
    while (rows.next()) {
        const auto lift = byId.find(rows.integer(1));
        ToldLift* told = toldIn(acts[base::ActId(rows.integer(0))], base::LiftId(rows.integer(1)));
        const auto body = bodyOf(rows.qtext(4), rows.opened(5, rows.sealedRow("event", rows.integer(1), rows.integer(2), rows.text(4)), "detail"), 0);
        const auto* set = body ? std::get_if<progression::CoachSet>(&*body) : nullptr;
        if (set == nullptr || told == nullptr || lift == byId.end()) {
            database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: lift %2 cannot be read").arg(database.target()).arg(rows.integer(1))});
            return;
        }
        progression::LiftSetup setup = lift->second.setup;
        setup.kit = lift->second.kitAt(rows.date(2), rows.integer(3));
        told->sets.push_back({*set, std::move(setup)});
    }
}

/// Of the acts from `first` on; those of one client where there is one. An import is about everything and names none. Nothing for whoever may not see the log.
LiftsOfActs readToldLifts(Database& database, base::ActId first, base::ClientId client)
{
    LiftsOfActs acts;
    if (!database.may(Right::SeeHealth)) {
        return acts;
    }
    const LiftsById byId = liftsById(database, client);
    const auto run = [first, client](Statement& rows) { client.isNone() ? rows.run(first) : rows.run(first, client); };
    Statement events(database, rowsOfActs("r.act_id, r.lift_id, max(r.day), max(coalesce(r.root_id, r.id))", "event", "GROUP BY r.act_id, r.lift_id", client));
    run(events);
    addTouched(events, byId, acts);
    // A decision comes after everything of its day.
    Statement decisions(database, rowsOfActs("r.act_id, r.lift_id, max(r.day), 9223372036854775807", "decision", "GROUP BY r.act_id, r.lift_id", client));
    run(decisions);
    addTouched(decisions, byId, acts);
    Statement sets(database, rowsOfActs("r.act_id, r.lift_id, r.day, coalesce(r.root_id, r.id), r.type, r.detail", "event",
                                        "AND r.type = 'set' AND r.is_void = 0 AND a.kind NOT IN ('undo', 'merge') ORDER BY r.id", client));
    run(sets);
    addHandSets(sets, byId, database, acts);
    for (auto& [act, lifts] : acts) {
        std::sort(lifts.begin(), lifts.end(), [](const ToldLift& a, const ToldLift& b) { return std::tuple(a.pattern, a.id) < std::tuple(b.pattern, b.id); });
    }
    return acts;
}

/// Says of each act which lifts it was about.
void nameLifts(Database& database, base::ClientId client, std::vector<ChangeEntry>& entries)
{
    base::ActId first;
    for (const ChangeEntry& entry : entries) {
        const auto* act = std::get_if<ActRecord>(&entry.did);
        first = act != nullptr && (first.isNone() || act->id < first) ? act->id : first;
    }
    LiftsOfActs lifts = first.isNone() ? LiftsOfActs() : readToldLifts(database, first, client);
    for (ChangeEntry& entry : entries) {
        const auto* act = std::get_if<ActRecord>(&entry.did);
        if (const auto found = act == nullptr ? lifts.end() : lifts.find(act->id); found != lifts.end()) {
            entry.lifts = std::move(found->second);
        }
    }
}

}  // namespace

std::vector<ChangeEntry> ChangeHistory::audited(base::ClientId client, int count)
{
    std::vector<ChangeEntry> entries;
    Statement rows(m_database, QStringLiteral("SELECT a.id, a.at_utc, a.what, a.before, a.after, a.client_id, coalesce(c.name, ''), coalesce(o.name, '') FROM audit a "
                                              "LEFT JOIN client c ON c.id = a.client_id LEFT JOIN coach o ON o.id = a.coach_id %1ORDER BY a.id DESC LIMIT ?")
                                   .arg(client.isNone() ? QString() : QStringLiteral("WHERE a.client_id = ? ")));
    client.isNone() ? rows.run(count) : rows.run(client, count);
    while (rows.next()) {
        const base::ClientId about(rows.integer(5));
        const SealedRow place = rows.sealedRow("audit", about, rows.text(2));
        AuditRecord record{rows.integer(0), rows.known(auditWhatOf(rows.text(2)), 2, "audit", 0), changedIn(rows.opened(3, place, "before")),
                           changedIn(rows.opened(4, place, "after"))};
        entries.push_back({rows.text(1), rows.text(7), about, rows.text(6), std::move(record), {}});
    }
    return entries;
}

Result<std::vector<ChangeEntry>> ChangeHistory::of(base::ClientId client, int count)
{
    const Snapshot snapshot(m_database);
    auto acts = ActReader(m_database).of(client, count);
    if (!acts) {
        return tl::make_unexpected(acts.error());
    }
    auto entries = merged(*std::move(acts), audited(client, count), count);
    nameLifts(m_database, client, entries);
    return m_database.resultOf(std::move(entries));
}

Result<std::vector<ChangeEntry>> ChangeHistory::all(int count)
{
    const Snapshot snapshot(m_database);
    auto acts = ActReader(m_database).latest(count);
    if (!acts) {
        return tl::make_unexpected(acts.error());
    }
    auto entries = merged(*std::move(acts), audited({}, count), count);
    nameLifts(m_database, {}, entries);
    return m_database.resultOf(std::move(entries));
}

}  // namespace chalk::store
