#include "core/store/act_reader.h"

#include "core/store/statement.h"

#include <set>

namespace chalk::store {

namespace {

std::optional<ActRecord> firstOf(std::vector<ActRecord> acts)
{
    return acts.empty() ? std::nullopt : std::optional(std::move(acts.front()));
}

}  // namespace

std::vector<ActRecord> ActReader::collect(const QString& rest, int count, base::ClientId client)
{
    std::vector<ActRecord> acts;
    Statement rows(m_database, QStringLiteral("SELECT a.id, a.at_utc, a.kind, a.client_id, coalesce(c.name, ''), coalesce(coach.name, ''), a.undoes_act_id, "
                                              "EXISTS (SELECT 1 FROM act later WHERE later.undoes_act_id = a.id) FROM act a "
                                              "LEFT JOIN client c ON c.id = a.client_id LEFT JOIN coach ON coach.id = a.coach_id ") +
                                   rest + QStringLiteral(" ORDER BY a.id DESC LIMIT ?"));
    client.isNone() ? rows.run(count) : rows.run(client, client, client, count);
    while (rows.next()) {
        ActRecord& act = acts.emplace_back();
        act.id = base::ActId(rows.integer(0));
        act.atUtc = rows.text(1);
        act.kind = rows.known(actKindOf(rows.text(2)), 2, "act", 0);
        act.client = base::ClientId(rows.integer(3));
        act.clientName = rows.text(4);
        act.coachName = rows.text(5);
        act.undoes = base::ActId(rows.integer(6));
        act.isUndone = rows.number(7) != 0;
    }
    for (ActRecord& act : acts) {
        readTouched(act);
    }
    return acts;
}

void ActReader::readTouched(ActRecord& act)
{
    if (act.kind == ActKind::Import) {
        return;  // everything
    }
    std::set<lifts::Pattern> patterns;
    Statement lifts(m_database, QStringLiteral("SELECT DISTINCT l.pattern FROM event e JOIN lift l ON l.id = e.lift_id WHERE e.act_id = ? "
                                              "UNION SELECT l.pattern FROM decision d JOIN lift l ON l.id = d.lift_id WHERE d.act_id = ?"));
    const bool isRead = m_database.may(Right::SeeHealth) && lifts.run(act.id, act.id);
    while (isRead && lifts.next()) {
        if (const auto pattern = lifts::patternOf(lifts.text(0))) {
            patterns.insert(*pattern);
        }
    }
    act.patterns.assign(patterns.begin(), patterns.end());
    Statement sessions(m_database, QStringLiteral("SELECT state_after FROM session_change WHERE act_id = ?"));
    sessions.run(act.id);
    while (sessions.next()) {
        ++act.sessions;
        act.sessionState = sessions::sessionStateOf(sessions.text(0));
    }
}

Result<std::vector<ActRecord>> ActReader::latest(int count)
{
    const Snapshot snapshot(m_database);
    return m_database.resultOf(collect({}, count));
}

Result<std::vector<ActRecord>> ActReader::of(base::ClientId client, int count)
{
    const Snapshot snapshot(m_database);
    return m_database.resultOf(collect(QStringLiteral("WHERE a.client_id = ? OR a.id IN "
                                                      "(SELECT x.act_id FROM session_change x JOIN session s ON s.id = x.session_id WHERE s.client_id = ? "
                                                      "UNION SELECT b.act_id FROM booking_change b JOIN session s ON s.id = b.session_id WHERE s.client_id = ?)"),
                                       count, client));
}

Result<std::optional<ActRecord>> ActReader::undoable()
{
    const Snapshot snapshot(m_database);
    return m_database.resultOf(firstOf(collect(QStringLiteral("WHERE a.kind NOT IN ('undo', 'import') AND NOT EXISTS "
                                                              "(SELECT 1 FROM act later WHERE later.undoes_act_id = a.id)"),
                                               1)));
}

Result<std::optional<ActRecord>> ActReader::redoable()
{
    const Snapshot snapshot(m_database);
    return m_database.resultOf(firstOf(collect(QStringLiteral("WHERE a.kind = 'undo' AND NOT EXISTS "
                                                              "(SELECT 1 FROM act later WHERE later.undoes_act_id = a.id) AND NOT EXISTS "
                                                              "(SELECT 1 FROM act fresh WHERE fresh.id > a.id AND fresh.kind NOT IN ('undo', 'redo'))"),
                                               1)));
}

}  // namespace chalk::store
