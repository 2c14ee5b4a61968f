#include "core/store/people_changes.h"

#include "core/store/event_log.h"
#include "core/store/form_rows.h"
#include "core/store/lift_cache.h"
#include "core/store/statement.h"

#include <QJsonDocument>
#include <QJsonObject>

#include <array>
#include <vector>

namespace chalk::store {

namespace {

struct OwnerChange {
    OwnedThing thing = OwnedThing::Lift;
    std::int64_t id = 0;
    base::ClientId before;
    base::ClientId after;
};

struct FactsChange {
    base::ClientId client;
    ClientFacts before;
    ClientFacts after;
};

constexpr std::array kOwnedThings{OwnedThing::Lift, OwnedThing::Session, OwnedThing::Caution};

/// The table of a thing, which is its key too.
QString tableOf(OwnedThing thing)
{
    switch (thing) {
    case OwnedThing::Lift:
        return QStringLiteral("lift");
    case OwnedThing::Session:
        return QStringLiteral("session");
    case OwnedThing::Caution:
        return QStringLiteral("caution");
    }
    return {};
}

QString textOfFacts(const ClientFacts& facts)
{
    const QJsonObject object{{QStringLiteral("born"), facts.birthDate ? QJsonValue(QString::fromStdString(facts.birthDate->toString())) : QJsonValue()},
                             {QStringLiteral("goal"), QString::fromStdString(facts.goal)},
                             {QStringLiteral("body_mass_centi"), facts.bodyMass ? QJsonValue(facts.bodyMass->centi()) : QJsonValue()},
                             {QStringLiteral("withdrawn"), facts.isWithdrawn},
                             {QStringLiteral("profile"), facts.profile}};
    return QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
}

ClientFacts factsIn(const QString& text)
{
    const QJsonObject object = QJsonDocument::fromJson(text.toUtf8()).object();
    ClientFacts facts;
    facts.birthDate = base::Date::parse(object[QStringLiteral("born")].toString().toStdString());
    facts.goal = object[QStringLiteral("goal")].toString().toStdString();
    const QJsonValue mass = object[QStringLiteral("body_mass_centi")];
    facts.bodyMass = mass.isDouble() ? std::optional(base::Load::fromCenti(mass.toInt())) : std::nullopt;
    facts.isWithdrawn = object[QStringLiteral("withdrawn")].toBool();
    facts.profile = object[QStringLiteral("profile")].toString();
    return facts;
}

void putProfile(Database& database, base::ClientId client, const QString& profile, base::Date day)
{
    if (profile.isEmpty()) {
        Statement(database, QStringLiteral("DELETE FROM form WHERE client_id = ? AND kind = 'profile' AND is_finished = 0")).run(client);
    } else {
        putOpenForm(database, client, FormKind::Profile, day, profile);
    }
}

/// Takes the load volumes of a lift from one client to another.
void moveVolumes(Database& database, base::LiftId lift, base::ClientId before, base::ClientId after)
{
    EventLog log(database);
    LiftCache cache(database, log);
    if (const auto logged = cache.replay(lift)) {
        cache.changeVolumes(before, logged->replay.weeks, {});
        cache.changeVolumes(after, {}, logged->replay.weeks);
    }
}

/// Whether anything counts in a lift that was written after an act, but for what `by` writes.
bool hasGoneOn(Database& database, base::LiftId lift, base::ActId act, base::ActId by)
{
    Statement later(database, QStringLiteral("SELECT 1 FROM event e WHERE e.lift_id = ? AND e.act_id > ? AND e.act_id <> ? AND e.is_void = 0 "
                                             "AND NOT EXISTS (SELECT 1 FROM event other WHERE other.replaces_id = e.id)"));
    return later.run(lift, act, by) && later.next();
}

void takeBackOwners(Database& database, base::ActId act, base::ActId by)
{
    Statement rows(database, QStringLiteral("SELECT thing, thing_id, client_before, client_after FROM owner_change WHERE act_id = ?"));
    std::vector<OwnerChange> changes;
    rows.run(act);
    while (rows.next()) {
        for (const OwnedThing thing : kOwnedThings) {
            if (rows.qtext(0) == tableOf(thing)) {
                changes.push_back({thing, rows.integer(1), base::ClientId(rows.integer(2)), base::ClientId(rows.integer(3))});
            }
        }
    }
    for (const OwnerChange& change : changes) {
        Statement owner(database, QStringLiteral("SELECT client_id FROM %1 WHERE id = ?").arg(tableOf(change.thing)));
        if (owner.run(change.id) && (!owner.next() || base::ClientId(owner.integer(0)) != change.after)) {
            database.fail({StoreError::Kind::Refused, QStringLiteral("This went to another client since: take that back first")});
        }
        if (change.thing == OwnedThing::Lift && change.before != change.after && hasGoneOn(database, base::LiftId(change.id), act, by)) {
            database.fail({StoreError::Kind::Refused, QStringLiteral("A lift has gone on since: take that back first")});
        }
        giveTo(database, by, change.thing, change.id, change.after, change.before);
    }
}

}  // namespace

ClientFacts readClientFacts(Database& database, base::ClientId client)
{
    ClientFacts facts;
    Statement row(database, QStringLiteral("SELECT birth_day, goal, body_mass_centi, is_withdrawn FROM client WHERE id = ?"));
    if (!row.run(client) || !row.next()) {
        database.fail({StoreError::Kind::Refused, QStringLiteral("There is no client %1").arg(client.value())});
        return facts;
    }
    facts.birthDate = row.optionalDate(0);
    facts.goal = row.openedText(1, row.sealedRow("client", client), "goal");
    facts.bodyMass = row.optionalLoad(2);
    facts.isWithdrawn = row.number(3) == 1;
    Statement profile(database, QStringLiteral("SELECT detail, id FROM form WHERE client_id = ? AND kind = 'profile' AND is_finished = 0"));
    if (profile.run(client) && profile.next()) {
        facts.profile = profile.opened(0, profile.sealedRow("form", profile.integer(1)), "detail");
    }
    return facts;
}

void changeClientFacts(Database& database, base::ActId act, base::ClientId client, const ClientFacts& before, const ClientFacts& after, base::Date day)
{
    if (before == after) {
        return;
    }
    Vault& vault = database.vault();
    const SealedRow change = vault.toWrite("client_change", act, client);
    Statement(database, QStringLiteral("INSERT INTO client_change (act_id, client_id, before, after) VALUES (?, ?, ?, ?)"))
        .run(act, client, vault.sealed(change, "before", textOfFacts(before)), vault.sealed(change, "after", textOfFacts(after)));
    Statement(database, QStringLiteral("UPDATE client SET birth_day = ?, goal = ?, body_mass_centi = ?, is_withdrawn = ? WHERE id = ?"))
        .run(after.birthDate, vault.sealed(vault.toWrite("client", client), "goal", after.goal), after.bodyMass, after.isWithdrawn, client);
    if (before.profile != after.profile) {
        putProfile(database, client, after.profile, day);
    }
}

void giveTo(Database& database, base::ActId act, OwnedThing thing, std::int64_t id, base::ClientId before, base::ClientId after)
{
    Statement(database, QStringLiteral("INSERT INTO owner_change (act_id, thing, thing_id, client_before, client_after) VALUES (?, ?, ?, ?, ?)"))
        .run(act, tableOf(thing), id, before, after);
    if (before == after) {
        return;
    }
    Statement(database, QStringLiteral("UPDATE %1 SET client_id = ? WHERE id = ?").arg(tableOf(thing))).run(after, id);
    if (thing == OwnedThing::Lift) {
        moveVolumes(database, base::LiftId(id), before, after);
    }
}

void takeBackPeople(Database& database, base::ActId act, base::ActId by)
{
    takeBackOwners(database, act, by);
    Statement rows(database, QStringLiteral("SELECT client_id, before, after FROM client_change WHERE act_id = ?"));
    std::vector<FactsChange> changes;
    rows.run(act);
    while (rows.next()) {
        const base::ClientId client(rows.integer(0));
        const SealedRow row = rows.sealedRow("client_change", act, client);
        changes.push_back({client, factsIn(rows.opened(1, row, "before")), factsIn(rows.opened(2, row, "after"))});
    }
    Statement day(database, QStringLiteral("SELECT started_day FROM client WHERE id = ?"));
    for (const FactsChange& change : changes) {
        const ClientFacts now = readClientFacts(database, change.client);
        if (now != change.after) {
            database.fail({StoreError::Kind::Refused, QStringLiteral("The client's file was changed since: what came with this act cannot be told from that any more")});
        }
        const base::Date started = day.run(change.client) && day.next() ? day.date(0) : base::Date();
        changeClientFacts(database, by, change.client, now, change.before, started);
    }
}

bool isPeopleImport(Database& database, base::ActId act)
{
    Statement source(database, QStringLiteral("SELECT 1 FROM import_source WHERE act_id = ?"));
    return source.run(act) && source.next();
}

void refuseWhereBuiltUpon(Database& database, base::ActId act)
{
    Statement rows(database, QStringLiteral("SELECT client_id, before FROM client_change WHERE act_id = ?"));
    std::vector<base::ClientId> brought;
    rows.run(act);
    while (rows.next()) {
        const base::ClientId client(rows.integer(0));
        if (factsIn(rows.opened(1, rows.sealedRow("client_change", act, client), "before")).isWithdrawn) {
            brought.push_back(client);
        }
    }
    Statement lifts(database, QStringLiteral("SELECT 1 FROM lift WHERE client_id = ? AND id NOT IN (SELECT thing_id FROM owner_change WHERE act_id = ? AND thing = 'lift')"));
    Statement sessions(database, QStringLiteral("SELECT 1 FROM session WHERE client_id = ? AND state <> 'withdrawn' AND id NOT IN (SELECT session_id FROM session_change WHERE act_id = ?)"));
    Statement entries(database, QStringLiteral("SELECT 1 FROM event e JOIN lift l ON l.id = e.lift_id WHERE l.client_id = ? AND e.act_id <> ? AND e.is_void = 0 "
                                               "AND NOT EXISTS (SELECT 1 FROM event later WHERE later.replaces_id = e.id)"));
    Statement plans(database, QStringLiteral("SELECT 1 FROM plan p WHERE p.client_id = ? AND p.act_id <> ? AND p.is_void = 0 "
                                             "AND NOT EXISTS (SELECT 1 FROM plan later WHERE later.replaces_id = p.id)"));
    Statement name(database, QStringLiteral("SELECT name FROM client WHERE id = ?"));
    for (const base::ClientId client : brought) {
        for (Statement* later : {&lifts, &sessions, &entries, &plans}) {
            if (later->run(client, act) && later->next() && name.run(client) && name.next()) {
                database.fail({StoreError::Kind::Refused, QStringLiteral("%1 has gone on since the import: it stays").arg(name.qtext(0))});
            }
        }
    }
}

}  // namespace chalk::store
