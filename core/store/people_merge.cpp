#include "core/store/people_merge.h"

#include "core/clients/client.h"
#include "core/clients/profile.h"
#include "core/exchange/profile_json.h"
#include "core/progression/kit_change.h"
#include "core/store/act_work.h"
#include "core/store/client_forms.h"
#include "core/store/lift_codec.h"
#include "core/store/past_writer.h"
#include "core/store/people_changes.h"
#include "core/store/profile_rows.h"
#include "core/store/session_states.h"
#include "core/tables/past_lifts.h"

#include <QJsonDocument>

#include <algorithm>
#include <map>

namespace chalk::store {

namespace {

using lifts::Pattern;
using progression::Kit;

struct LiftToMerge {
    base::LiftId id;
    QString unit;
};

using LiftsToMerge = std::map<Pattern, LiftToMerge>;

/// The gaps of one file that another fills.
struct FilledGaps {
    ClientFacts facts;
    std::vector<std::string> fields;
};

void refuseMerge(Database& database, const QString& reason)
{
    database.fail({StoreError::Kind::Refused, reason});
}

bool hasRow(Database& database, const QString& sql, base::ClientId client)
{
    Statement row(database, sql);
    return row.run(client) && row.next();
}

int rowCount(Database& database, const QString& sql, base::ClientId client)
{
    Statement row(database, sql);
    return row.run(client) && row.next() ? row.number(0) : 0;
}

LiftsToMerge liftsToMerge(Database& database, base::ClientId client)
{
    LiftsToMerge lifts;
    Statement rows(database, QStringLiteral("SELECT id, pattern, unit FROM lift WHERE client_id = ? ORDER BY id"));
    rows.run(client);
    while (rows.next()) {
        lifts.emplace(rows.known(lifts::patternOf(rows.text(1)), 1, "lift", 0), LiftToMerge{base::LiftId(rows.integer(0)), rows.qtext(2)});
    }
    return lifts;
}

std::optional<clients::Client> clientToMerge(Database& database, base::ClientId id)
{
    Statement row(database, QStringLiteral("SELECT ") + clientColumns() + QStringLiteral(" FROM client c WHERE c.id = ? AND c.is_withdrawn = 0"));
    if (!row.run(id) || !row.next()) {
        refuseMerge(database, QStringLiteral("There is no client %1").arg(id.value()));
        return std::nullopt;
    }
    return clientOf(row);
}

template <class T>
void fillGap(T& gap, const T& value, const char* field, std::vector<std::string>& fields)
{
    if (gap == T() && value != T()) {
        gap = value;
        fields.emplace_back(field);
    }
}

FilledGaps filledGaps(Database& database, const clients::Client& into, const clients::Client& from, base::Date today)
{
    FilledGaps filled{readClientFacts(database, into.id), {}};
    const ClientFacts other = readClientFacts(database, from.id);
    fillGap(filled.facts.birthDate, other.birthDate, "birth_date", filled.fields);
    fillGap(filled.facts.goal, other.goal, "goal", filled.fields);
    auto own = ClientForms(database).profile(into.id);
    if (other.bodyMass && own && clients::canKeepHealth(*own, filled.facts.birthDate, today)) {
        fillGap(filled.facts.bodyMass, std::optional(base::Mass::of(*other.bodyMass, from.unit).in(into.unit)), "body_mass", filled.fields);
    }
    const auto theirs = ClientForms(database).profile(from.id);
    if (own && theirs) {
        const std::size_t before = filled.fields.size();
        fillGap(own->contact.phone, theirs->contact.phone, "phone", filled.fields);
        fillGap(own->contact.email, theirs->contact.email, "mail", filled.fields);
        fillGap(own->trainingHistory, theirs->trainingHistory, "notes", filled.fields);
        if (filled.fields.size() > before) {
            filled.facts.profile = QString::fromUtf8(QJsonDocument(exchange::toJson(*own)).toJson(QJsonDocument::Compact));
        }
    }
    return filled;
}

void refuseWhereBound(Database& database, const clients::Client& into, const clients::Client& from, base::Date today)
{
    const QString name = QString::fromStdString(from.name);
    if (into.id == from.id) {
        refuseMerge(database, QStringLiteral("%1 cannot be merged with the same record").arg(name));
    }
    if (hasRow(database, QStringLiteral("SELECT 1 FROM session WHERE client_id = ? AND state IN ") + statesWhere(sessions::isOpen), from.id)) {
        refuseMerge(database, QStringLiteral("%1 has sessions to come: keep that record, or take them away first").arg(name));
    }
    for (const char* table : {"plan", "tested_maximum"}) {
        const QString sql = QStringLiteral("SELECT 1 FROM %1 p WHERE p.client_id = ? AND p.is_void = 0 AND NOT EXISTS (SELECT 1 FROM %1 later WHERE later.replaces_id = p.id)");
        if (hasRow(database, sql.arg(QLatin1String(table)), from.id)) {
            refuseMerge(database, QStringLiteral("%1 follows a plan or was tested: keep that record").arg(name));
        }
    }
    const clients::Clearance clearance = readClearance(database, from.id);
    if (clearance.state != clients::ClearanceState::Unanswered && clients::isBlocked(clearance, today) && !clients::isBlocked(readClearance(database, into.id), today)) {
        refuseMerge(database, QStringLiteral("Loaded work of %1 waits for a doctor: keep that record, or settle it first").arg(name));
    }
    Statement forms(database, QStringLiteral("SELECT 1 FROM form f WHERE f.client_id = ? AND f.kind NOT IN ('profile', 'starting_plan') "
                                             "AND NOT EXISTS (SELECT 1 FROM form own WHERE own.client_id = ? AND own.kind = f.kind)"));
    if (forms.run(from.id, into.id) && forms.next()) {
        refuseMerge(database, QStringLiteral("%1 has health forms that the other does not have: keep that record").arg(name));
    }
}

MergePlan mergePlanOf(Database& database, const clients::Client& into, const clients::Client& from, base::Date today)
{
    MergePlan plan{into.id, from.id, into.name, from.name, {}, {}, 0, 0, {}, 0};
    const LiftsToMerge own = liftsToMerge(database, into.id);
    for (const auto& [pattern, lift] : liftsToMerge(database, from.id)) {
        const auto same = own.find(pattern);
        (same == own.end() ? plan.liftsMoved : plan.liftsJoined).push_back(pattern);
        if (same != own.end() && same->second.unit != lift.unit) {
            refuseMerge(database, QStringLiteral("%1 is loaded in kg by one and in lb by the other").arg(qstringOf(lifts::keyOf(pattern))));
        }
    }
    plan.sessions = rowCount(database, QStringLiteral("SELECT count(*) FROM session WHERE client_id = ? AND state <> 'withdrawn'"), from.id);
    plan.cautions = rowCount(database, QStringLiteral("SELECT count(*) FROM caution WHERE client_id = ?"), from.id);
    plan.filled = filledGaps(database, into, from, today).fields;
    plan.formsThatStay = rowCount(database, QStringLiteral("SELECT count(*) FROM form WHERE client_id = ? AND kind <> 'profile'"), from.id) +
                         rowCount(database, QStringLiteral("SELECT count(*) FROM letter WHERE client_id = ?"), from.id) +
                         rowCount(database, QStringLiteral("SELECT count(*) FROM decision WHERE client_id = ? AND is_void = 0"), from.id);
    return plan;
}

/// The kit in force at an entry, by the swaps before it.
Kit kitAtEntry(const LogEntry& entry, Kit kit, const std::vector<LogEntry>& entries)
{
    for (const LogEntry& one : entries) {
        const auto* swap = std::get_if<progression::Swap>(&one.event.body);
        const bool isBefore = std::pair(one.event.date, one.root) <= std::pair(entry.event.date, entry.root);
        kit = swap != nullptr && isBefore ? progression::kitAfter(*swap, kit) : kit;
    }
    return kit;
}

bool isWorkDone(const progression::EventBody& body)
{
    return std::holds_alternative<progression::Exposure>(body) || std::holds_alternative<progression::Rehearsal>(body);
}

/// Adds what was done of `from` to `into`, each with the exercise that it was done with, and takes it out of `from`.
void joinLifts(ActWork& work, base::LiftId into, base::LiftId from)
{
    LiftEdit& edit = work.edit();
    const auto own = edit.cache().readFresh(into);
    const auto theirs = edit.cache().readFresh(from);
    const std::vector<LogEntry> ownEntries = edit.log().presentEntries(into);
    const std::vector<LogEntry> entries = edit.log().presentEntries(from);
    if (!own || !theirs) {
        return;
    }
    const base::ActId act = work.outcome().act;
    for (const LogEntry& entry : entries) {
        const Kit ours = kitOn(entry.event.date, own->machine.kit(), ownEntries);
        const Kit kit = kitAtEntry(entry, theirs->machine.kit(), entries);
        const bool isOther = kit.exerciseKey != ours.exerciseKey;
        if (isWorkDone(entry.event.body) && isOther) {
            edit.writeLater({into, {entry.event.date, tables::swapToKit(kit)}, act, entry.session, {}, false});
        }
        if (isWorkDone(entry.event.body)) {
            edit.writeLater({into, entry.event, act, entry.session, {}, false});
        }
        if (isWorkDone(entry.event.body) && isOther) {
            edit.writeLater({into, {entry.event.date, tables::swapToKit(ours)}, act, entry.session, {}, false});
        }
        edit.writeLater({from, entry.event, act, entry.session, entry.id, true});
    }
}

void giveAllOf(Database& database, base::ActId act, OwnedThing thing, const QString& sql, base::ClientId from, base::ClientId into)
{
    Statement rows(database, sql);
    std::vector<std::int64_t> ids;
    rows.run(from);
    while (rows.next()) {
        ids.push_back(rows.integer(0));
    }
    for (const std::int64_t id : ids) {
        giveTo(database, act, thing, id, from, into);
    }
}

}  // namespace

Result<MergePlan> planMerge(Database& database, base::ClientId into, base::ClientId from, base::Date today)
{
    const Snapshot snapshot(database);
    const auto kept = clientToMerge(database, into);
    const auto other = clientToMerge(database, from);
    if (!kept || !other) {
        return tl::make_unexpected(*database.failure());
    }
    refuseWhereBound(database, *kept, *other, today);
    return database.resultOf(mergePlanOf(database, *kept, *other, today));
}

Result<ActOutcome> mergeClients(Database& database, base::ClientId into, base::ClientId from, const QString& atUtc, base::Date today)
{
    ActWork work(database);
    const auto kept = clientToMerge(database, into);
    const auto other = clientToMerge(database, from);
    if (!kept || !other) {
        return work.finish();
    }
    refuseWhereBound(database, *kept, *other, today);
    const MergePlan plan = mergePlanOf(database, *kept, *other, today);
    work.begin(ActKind::Merge, atUtc, {}, into);
    const base::ActId act = work.outcome().act;
    const LiftsToMerge own = liftsToMerge(database, into);
    for (const auto& [pattern, lift] : liftsToMerge(database, from)) {
        if (const auto same = own.find(pattern); same != own.end()) {
            joinLifts(work, same->second.id, lift.id);
        } else {
            giveTo(database, act, OwnedThing::Lift, lift.id.value(), from, into);
        }
    }
    work.edit().settle();
    giveAllOf(database, act, OwnedThing::Session, QStringLiteral("SELECT id FROM session WHERE client_id = ?"), from, into);
    giveAllOf(database, act, OwnedThing::Caution, QStringLiteral("SELECT id FROM caution WHERE client_id = ?"), from, into);
    const FilledGaps filled = filledGaps(database, *kept, *other, today);
    changeClientFacts(database, act, into, readClientFacts(database, into), filled.facts, today);
    const ClientFacts before = readClientFacts(database, from);
    ClientFacts after = before;
    after.isWithdrawn = true;
    changeClientFacts(database, act, from, before, after, today);
    return work.finish();
}

}  // namespace chalk::store
