#include "core/store/erasure.h"

#include "core/store/audit.h"
#include "core/store/statement.h"

#include <QSqlQuery>

#include <algorithm>
#include <vector>

namespace chalk::store {

namespace {

/// What is kept of the sessions: not what was withdrawn, and not what is still to come.
const QString& keptOfClient()
{
    static const QString condition = QStringLiteral("client_id = ? AND state <> 'withdrawn' AND (day < ? OR state NOT IN ('planned', 'printed'))");
    return condition;
}

constexpr const char* kOfLift = "lift_id IN (SELECT l.id FROM lift l WHERE l.client_id = ?)";
constexpr const char* kOfSession = "session_id IN (SELECT s.id FROM session s WHERE s.client_id = ?)";
constexpr const char* kOfEvent = "event_id IN (SELECT e.id FROM event e JOIN lift l ON l.id = e.lift_id WHERE l.client_id = ?)";
constexpr const char* kOfClient = "client_id = ?";
constexpr const char* kOfOwner = "? IN (client_before, client_after)";

struct RowsOfClient {
    const char* table;
    const char* condition;
};

/// In the order in which they can go: what points to a row goes before it.
constexpr RowsOfClient kErasedRows[] = {
    {"client_change", kOfClient},    {"owner_change", kOfOwner},
    {"event_set", kOfEvent},        {"event", kOfLift},          {"decision", kOfClient},      {"tested_maximum", kOfClient}, {"plan", kOfClient},
    {"report_change", kOfSession},  {"session_change", kOfSession}, {"booking_change", kOfSession}, {"session_report", kOfSession}, {"session_lift", kOfSession},
    {"lift_state", kOfLift},        {"stage_reached", kOfLift},  {"lift_log", kOfLift},        {"client_week", kOfClient},    {"lift", kOfClient},
    {"session", kOfClient},         {"act", kOfClient},          {"caution", kOfClient},       {"clearance", kOfClient},      {"form", kOfClient},
    {"letter", kOfClient},          {"week_quota", kOfClient},   {"audit", kOfClient}};

template <class... Values>
int countOf(Database& database, const QString& rest, const Values&... values)
{
    Statement row(database, QStringLiteral("SELECT count(*) FROM ") + rest);
    return row.run(values...) && row.next() ? row.number(0) : 0;
}

int countOfTable(Database& database, const char* table, const char* condition, base::ClientId client)
{
    return countOf(database, QStringLiteral("%1 WHERE %2").arg(QLatin1String(table), QLatin1String(condition)), client);
}

std::string nameToErase(Database& database, base::ClientId client)
{
    Statement row(database, QStringLiteral("SELECT name FROM client WHERE id = ?"));
    if (!row.run(client) || !row.next()) {
        database.fail({StoreError::Kind::Refused, QStringLiteral("There is no client %1").arg(client.value())});
        return {};
    }
    return row.text(0);
}

/// Keeps the sessions under a number, and answers it.
int keepSessions(Database& database, base::ClientId client, base::Date today)
{
    Statement number(database, QStringLiteral("INSERT INTO erased_client (erased_day) VALUES (?) RETURNING id"));
    const std::int64_t id = number.runForId(today);
    Statement(database, QStringLiteral("INSERT INTO erased_session (erased_client_id, coach_id, day, start_minute, minutes, kind, state) "
                                       "SELECT CAST(? AS INTEGER), coach_id, day, start_minute, minutes, kind, state FROM session WHERE ") +
                            keptOfClient() + QStringLiteral(" ORDER BY day, start_minute, id"))
        .run(id, client, today);
    return static_cast<int>(id);
}

/// The client, and the records of the same person that were merged into theirs.
std::vector<base::ClientId> recordsOf(Database& database, base::ClientId client)
{
    std::vector<base::ClientId> records{client};
    for (std::size_t i = 0; i < records.size(); ++i) {
        Statement merged(database, QStringLiteral("SELECT DISTINCT o.client_before FROM owner_change o JOIN client c ON c.id = o.client_before "
                                                  "WHERE o.client_after = ? AND c.is_withdrawn = 1 "
                                                  "UNION SELECT m.client_id FROM client_change m JOIN act a ON a.id = m.act_id JOIN client c ON c.id = m.client_id "
                                                  "WHERE a.kind = 'merge' AND a.client_id = ? AND c.is_withdrawn = 1"));
        merged.run(records[i], records[i]);
        while (merged.next()) {
            if (const base::ClientId one(merged.integer(0)); std::find(records.begin(), records.end(), one) == records.end()) {
                records.push_back(one);
            }
        }
    }
    return records;
}

void deleteRows(Database& database, const std::vector<base::ClientId>& records)
{
    const auto forEach = [&](const QString& sql) {
        Statement statement(database, sql);
        for (const base::ClientId client : records) {
            statement.run(client);
        }
    };
    forEach(QStringLiteral("INSERT INTO erasing (client_id) VALUES (?)"));
    for (const RowsOfClient& rows : kErasedRows) {
        forEach(QStringLiteral("DELETE FROM %1 WHERE %2").arg(QLatin1String(rows.table), QLatin1String(rows.condition)));
    }
    forEach(QStringLiteral("DELETE FROM erasing WHERE client_id = ?"));
    forEach(QStringLiteral("DELETE FROM client WHERE id = ?"));
}

bool isSqlite(const Database& database)
{
    return database.engine().driver() == QLatin1String("QSQLITE");
}

/// Writes the file anew, so that nothing of what was deleted is left in free pages or in the log beside it. On a connection of its own: no
/// reading is under way on it.
Wiped wipe(Database& database)
{
    if (!isSqlite(database)) {
        return Wiped::Later;
    }
    const auto own = Database::open(database.access(), OpenMode::MustExist);
    if (!own) {
        return Wiped::Later;
    }
    const OwnWrite write(**own);
    QSqlQuery query((*own)->connection());
    if (!query.exec(QStringLiteral("VACUUM"))) {
        return Wiped::Later;
    }
    // The checkpoint answers one row: whether it was kept from the end.
    return query.exec(QStringLiteral("PRAGMA wal_checkpoint(TRUNCATE)")) && query.next() && query.value(0).toInt() == 0 ? Wiped::Done : Wiped::Later;
}

}  // namespace

Result<ErasurePreview> previewErasure(Database& database, base::ClientId client, base::Date today)
{
    const Snapshot snapshot(database);
    ErasurePreview preview;
    preview.name = nameToErase(database, client);
    preview.lifts = countOfTable(database, "lift", kOfClient, client);
    preview.entries = countOfTable(database, "event", kOfLift, client);
    preview.forms = countOfTable(database, "form", kOfClient, client);
    preview.letters = countOfTable(database, "letter", kOfClient, client);
    preview.decisions = countOfTable(database, "decision", kOfClient, client) + countOfTable(database, "plan", kOfClient, client) +
                        countOfTable(database, "tested_maximum", kOfClient, client);
    preview.keptSessions = countOf(database, QStringLiteral("session WHERE ") + keptOfClient(), client, today);
    preview.openSessions = countOf(database, QStringLiteral("session WHERE client_id = ? AND day >= ? AND state IN ('planned', 'printed')"), client, today);
    return database.resultOf(std::move(preview));
}

Result<Erased> eraseClient(Database& database, base::ClientId client, const std::string& typedName, base::Date today)
{
    if (isSqlite(database)) {
        QSqlQuery(database.connection()).exec(QStringLiteral("PRAGMA secure_delete = ON"));
    }
    Erased erased;
    {
        Transaction transaction(database);
        const std::string name = nameToErase(database, client);
        if (!database.failure() && typedName != name) {
            database.fail({StoreError::Kind::Refused, QStringLiteral("The name typed is not that of the client: nothing was erased")});
        }
        erased.number = keepSessions(database, client, today);
        deleteRows(database, recordsOf(database, client));
        writeAudit(database, AuditWhat::ClientErased, {}, {}, {{QStringLiteral("number"), erased.number}});
        if (auto committed = transaction.commit(); !committed) {
            return tl::make_unexpected(committed.error());
        }
    }
    erased.wiped = wipe(database);
    return erased;
}

}  // namespace chalk::store
