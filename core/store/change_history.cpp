#include "core/store/change_history.h"

#include "core/store/statement.h"

#include <QJsonDocument>

#include <algorithm>

namespace chalk::store {

namespace {

ChangeEntry entryOfAct(ActRecord act)
{
    return {act.atUtc, act.coachName, act.client, act.clientName, std::move(act)};
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
        entries.push_back({rows.text(1), rows.text(7), about, rows.text(6), std::move(record)});
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
    return m_database.resultOf(merged(*std::move(acts), audited(client, count), count));
}

Result<std::vector<ChangeEntry>> ChangeHistory::all(int count)
{
    const Snapshot snapshot(m_database);
    auto acts = ActReader(m_database).latest(count);
    if (!acts) {
        return tl::make_unexpected(acts.error());
    }
    return m_database.resultOf(merged(*std::move(acts), audited({}, count), count));
}

}  // namespace chalk::store
