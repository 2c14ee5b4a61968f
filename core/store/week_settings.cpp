#include "core/store/week_settings.h"

#include "core/exchange/studio_week_json.h"
#include "core/store/audit.h"
#include "core/store/statement.h"

#include <QJsonDocument>

namespace chalk::store {

namespace {

QString compact(const QJsonObject& object)
{
    return QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
}

QJsonObject objectOf(const QString& text)
{
    return QJsonDocument::fromJson(text.toUtf8()).object();
}

/// The value that was read, or one by default and a failure of the file that names the place.
template <class T>
T readOrFail(Database& database, const QString& what, exchange::JsonResult<T> result)
{
    if (!result) {
        database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: %2, %3 %4")
                                                      .arg(database.target(), what, QString::fromStdString(result.error().field),
                                                           QString::fromStdString(result.error().reason))});
        return T{};
    }
    return *std::move(result);
}

QJsonObject settingsOf(Database& database)
{
    Statement row(database, QStringLiteral("SELECT settings FROM studio"));
    return row.run() && row.next() ? objectOf(row.qtext(0)) : QJsonObject();
}

/// What is there now is not what was seen: a conflict. `now` is the text of the row; an empty one says that nothing was set yet.
void compareSetting(Database& database, Conflict conflict, const QJsonObject& now, const QJsonObject& byDefault, const QJsonObject& seen)
{
    conflict.theirs = now.isEmpty() ? byDefault : now;
    refuseChanged(database, std::move(conflict), seen);
}

}  // namespace

void putStudioWeek(Database& database, const week::StudioWeek& studio)
{
    QJsonObject settings = settingsOf(database);
    settings.insert(QStringLiteral("week"), exchange::toJson(studio));
    Statement(database, QStringLiteral("UPDATE studio SET settings = ?")).run(compact(settings));
}

void putCoachWork(Database& database, base::CoachId coach, const week::CoachWork& work)
{
    Statement(database, QStringLiteral("UPDATE coach SET work = ? WHERE id = ?")).run(compact(exchange::toJson(work)), coach);
}

void putPlanning(Database& database, base::ClientId client, const week::ClientPlanning& planning)
{
    Statement(database, QStringLiteral("UPDATE client SET planning = ? WHERE id = ?")).run(compact(exchange::toJson(planning, exchange::CoachNames())), client);
}

void putQuota(Database& database, base::ClientId client, base::Date monday, int sessions)
{
    Statement(database, QStringLiteral("INSERT INTO week_quota (client_id, monday, sessions) VALUES (?, ?, ?) "
                                       "ON CONFLICT (client_id, monday) DO UPDATE SET sessions = excluded.sessions"))
        .run(client, monday, sessions);
}

std::int64_t insertClosure(Database& database, const week::Closure& closure)
{
    Statement insert(database, QStringLiteral("INSERT INTO closure (first_day, last_day, from_minute, to_minute, coach_id, station, units, why) "
                                              "VALUES (?, ?, ?, ?, ?, ?, ?, ?) RETURNING id"));
    const auto station = closure.station ? std::optional(std::string(lifts::keyOf(*closure.station))) : std::nullopt;
    return insert.runForId(closure.first, closure.last, closure.fromMinute, closure.toMinute, closure.coach, station, closure.units, closure.why);
}

void WeekSettings::refuseFault(const std::optional<week::WeekFault>& fault)
{
    if (fault) {
        m_database.fail({StoreError::Kind::Refused, QStringLiteral("%1 %2").arg(QString::fromStdString(fault->field), QString::fromStdString(fault->reason))});
    }
}

Result<week::StudioWeek> WeekSettings::studioWeek()
{
    const Snapshot snapshot(m_database);
    const QJsonObject settings = settingsOf(m_database);
    week::StudioWeek studio;
    if (settings.contains(QStringLiteral("week"))) {
        studio = readOrFail(m_database, QStringLiteral("the studio's week"), exchange::readStudioWeek(settings.value(QStringLiteral("week")), {}));
    }
    return m_database.resultOf(studio);
}

Result<void> WeekSettings::setStudioWeek(const week::StudioWeek& studio, const std::optional<week::StudioWeek>& seen)
{
    Transaction transaction(m_database);
    if (seen) {
        Conflict conflict{ConflictAbout::StudioWeek};
        conflict.yours = exchange::toJson(studio);
        const QJsonObject now = settingsOf(m_database).value(QStringLiteral("week")).toObject();
        compareSetting(m_database, std::move(conflict), now, exchange::toJson(week::StudioWeek()), exchange::toJson(*seen));
    }
    refuseFault(faultOf(studio));
    AuditedChange audited(m_database, AuditWhat::StudioWeek);
    putStudioWeek(m_database, studio);
    audited.keep();
    return transaction.commit();
}

Result<std::map<base::CoachId, week::CoachWork>> WeekSettings::coachWork()
{
    const Snapshot snapshot(m_database);
    std::map<base::CoachId, week::CoachWork> all;
    Statement rows(m_database, QStringLiteral("SELECT id, work FROM coach"));
    rows.run();
    while (rows.next()) {
        all[base::CoachId(rows.integer(0))] = readOrFail(m_database, QStringLiteral("coach %1").arg(rows.integer(0)), exchange::readCoachWork(objectOf(rows.qtext(1)), {}));
    }
    return m_database.resultOf(std::move(all));
}

Result<void> WeekSettings::setCoachWork(base::CoachId coach, const week::CoachWork& work, const std::optional<week::CoachWork>& seen)
{
    Transaction transaction(m_database);
    Statement row(m_database, QStringLiteral("SELECT work FROM coach WHERE id = ?"));
    if (seen && row.run(coach) && row.next()) {
        Conflict conflict{ConflictAbout::CoachWork};
        conflict.yours = exchange::toJson(work);
        compareSetting(m_database, std::move(conflict), objectOf(row.qtext(0)), exchange::toJson(week::CoachWork()), exchange::toJson(*seen));
    }
    refuseFault(faultOf(work));
    AuditedChange audited(m_database, AuditWhat::CoachWork);
    putCoachWork(m_database, coach, work);
    audited.keep();
    return transaction.commit();
}

Result<week::ClientPlanning> WeekSettings::planning(base::ClientId client)
{
    const Snapshot snapshot(m_database);
    Statement row(m_database, QStringLiteral("SELECT planning FROM client WHERE id = ?"));
    week::ClientPlanning planning;
    if (row.run(client) && row.next()) {
        planning = readOrFail(m_database, QStringLiteral("client %1").arg(client.value()),
                              exchange::readClientPlanning(objectOf(row.qtext(0)), {}, exchange::CoachNames()));
    }
    return m_database.resultOf(std::move(planning));
}

Result<std::map<base::ClientId, week::ClientPlanning>> WeekSettings::allPlanning()
{
    const Snapshot snapshot(m_database);
    std::map<base::ClientId, week::ClientPlanning> all;
    Statement rows(m_database, QStringLiteral("SELECT id, planning FROM client WHERE planning <> '{}'"));
    rows.run();
    while (rows.next()) {
        all[base::ClientId(rows.integer(0))] = readOrFail(m_database, QStringLiteral("client %1").arg(rows.integer(0)),
                                                          exchange::readClientPlanning(objectOf(rows.qtext(1)), {}, exchange::CoachNames()));
    }
    return m_database.resultOf(std::move(all));
}

Result<void> WeekSettings::setPlanning(base::ClientId client, const week::ClientPlanning& planning, const std::optional<week::ClientPlanning>& seen)
{
    Transaction transaction(m_database);
    Statement row(m_database, QStringLiteral("SELECT planning FROM client WHERE id = ?"));
    if (seen && row.run(client) && row.next()) {
        Conflict conflict{ConflictAbout::Planning, client};
        conflict.yours = exchange::toJson(planning, exchange::CoachNames());
        compareSetting(m_database, std::move(conflict), objectOf(row.qtext(0)), exchange::toJson(week::ClientPlanning(), exchange::CoachNames()),
                       exchange::toJson(*seen, exchange::CoachNames()));
    }
    refuseFault(faultOf(planning));
    AuditedChange audited(m_database, AuditWhat::Planning, client);
    putPlanning(m_database, client, planning);
    audited.keep();
    return transaction.commit();
}

Result<std::map<base::ClientId, int>> WeekSettings::quotas(base::Date monday)
{
    const Snapshot snapshot(m_database);
    std::map<base::ClientId, int> all;
    Statement rows(m_database, QStringLiteral("SELECT client_id, sessions FROM week_quota WHERE monday = ?"));
    rows.run(monday);
    while (rows.next()) {
        all[base::ClientId(rows.integer(0))] = rows.number(1);
    }
    return m_database.resultOf(std::move(all));
}

QJsonObject WeekSettings::quotaSeen(base::Date monday, std::optional<int> sessions)
{
    return {{QStringLiteral("monday"), QString::fromStdString(monday.toString())},
            {QStringLiteral("sessions"), sessions ? QJsonValue(*sessions) : QJsonValue(QStringLiteral("usual"))}};
}

Result<void> WeekSettings::setQuota(base::ClientId client, base::Date monday, std::optional<int> sessions, const Seen& seen)
{
    Transaction transaction(m_database);
    Statement row(m_database, QStringLiteral("SELECT sessions FROM week_quota WHERE client_id = ? AND monday = ?"));
    if (seen && row.run(client, monday)) {
        Conflict conflict{ConflictAbout::Planning, client};
        conflict.yours = quotaSeen(monday, sessions);
        conflict.theirs = quotaSeen(monday, row.next() ? std::optional(row.number(0)) : std::nullopt);
        refuseChanged(m_database, std::move(conflict), seen);
    }
    if (monday.weekday() != 0) {
        m_database.fail({StoreError::Kind::Refused, QStringLiteral("%1 is no Monday").arg(QString::fromStdString(monday.toString()))});
    }
    if (sessions && (*sessions < 0 || *sessions > kMostSessionsInWeek)) {
        m_database.fail({StoreError::Kind::Refused, QStringLiteral("A week has 0 to %1 sessions").arg(kMostSessionsInWeek)});
    }
    AuditedChange audited(m_database, AuditWhat::WeekQuota, client);
    if (sessions) {
        putQuota(m_database, client, monday, *sessions);
    } else {
        Statement(m_database, QStringLiteral("DELETE FROM week_quota WHERE client_id = ? AND monday = ?")).run(client, monday);
    }
    audited.keep();
    return transaction.commit();
}

Result<std::vector<KeptClosure>> WeekSettings::closures(base::Date from)
{
    const Snapshot snapshot(m_database);
    std::vector<KeptClosure> all;
    Statement rows(m_database, QStringLiteral("SELECT id, first_day, last_day, from_minute, to_minute, coach_id, station, units, why FROM closure "
                                              "WHERE last_day >= ? ORDER BY first_day, from_minute, id"));
    rows.run(from);
    while (rows.next()) {
        week::Closure closure{rows.date(1), rows.date(2), rows.number(3), rows.number(4), base::CoachId(rows.integer(5)), {}, rows.number(7), rows.text(8)};
        if (!rows.isNull(6)) {
            closure.station = rows.known(lifts::stationOf(rows.text(6)), 6, "closure", 0);
        }
        all.push_back({rows.integer(0), std::move(closure)});
    }
    return m_database.resultOf(std::move(all));
}

Result<std::int64_t> WeekSettings::addClosure(const week::Closure& closure)
{
    Transaction transaction(m_database);
    refuseFault(faultOf(closure));
    AuditedChange audited(m_database, AuditWhat::Closures);
    const std::int64_t id = insertClosure(m_database, closure);
    audited.keep();
    const auto committed = transaction.commit();
    return committed ? Result<std::int64_t>(id) : tl::make_unexpected(committed.error());
}

Result<void> WeekSettings::removeClosure(std::int64_t id)
{
    Transaction transaction(m_database);
    Statement row(m_database, QStringLiteral("SELECT 1 FROM closure WHERE id = ?"));
    if (row.run(id) && !row.next()) {
        m_database.fail({StoreError::Kind::Refused, QStringLiteral("There is no closure %1").arg(id)});
    }
    AuditedChange audited(m_database, AuditWhat::Closures);
    Statement(m_database, QStringLiteral("DELETE FROM closure WHERE id = ?")).run(id);
    audited.keep();
    return transaction.commit();
}

}  // namespace chalk::store
