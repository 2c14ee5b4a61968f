#include "core/store/session_reader.h"

#include "core/exchange/equipment_json.h"
#include "core/store/lift_codec.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::store {

namespace {

QString namedSessions(const char* rest)
{
    return QStringLiteral("SELECT ") + sessionColumns() +
           QStringLiteral(", c.name, coach.name FROM session s JOIN client c ON c.id = s.client_id JOIN coach ON coach.id = s.coach_id ") +
           QLatin1String(rest);
}

}  // namespace

std::vector<NamedSession> SessionReader::collect(Statement& rows)
{
    std::vector<NamedSession> sessions;
    while (rows.next()) {
        sessions.push_back({sessionOf(rows), rows.text(kSessionColumns), rows.text(kSessionColumns + 1)});
    }
    return sessions;
}

Result<std::vector<NamedSession>> SessionReader::on(base::Date day)
{
    m_database.begin();
    Statement rows(m_database, namedSessions("WHERE s.day = ? ORDER BY s.start_minute, s.coach_id, s.id"));
    rows.run(day);
    return m_database.resultOf(collect(rows));
}

Result<std::vector<NamedSession>> SessionReader::of(base::ClientId client)
{
    m_database.begin();
    Statement rows(m_database, namedSessions("WHERE s.client_id = ? ORDER BY s.day DESC, s.start_minute DESC"));
    rows.run(client);
    return m_database.resultOf(collect(rows));
}

Result<std::optional<NamedSession>> SessionReader::withCode(const std::string& code)
{
    m_database.begin();
    Statement rows(m_database, namedSessions("WHERE s.code = ?"));
    rows.run(code);
    std::vector<NamedSession> found = collect(rows);
    return m_database.resultOf(found.empty() ? std::nullopt : std::optional(std::move(found.front())));
}

Result<std::string> SessionReader::studioName()
{
    m_database.begin();
    Statement row(m_database, QStringLiteral("SELECT name FROM studio"));
    const bool isThere = row.run() && row.next();
    return m_database.resultOf(isThere ? row.text(0) : std::string());
}

Result<std::vector<clients::Coach>> SessionReader::coaches()
{
    m_database.begin();
    std::vector<clients::Coach> coaches;
    Statement rows(m_database, QStringLiteral("SELECT id, name FROM coach ORDER BY id"));
    rows.run();
    while (rows.next()) {
        coaches.push_back({base::CoachId(rows.integer(0)), rows.text(1)});
    }
    return m_database.resultOf(std::move(coaches));
}

Result<std::vector<studio::StudioEquipment>> SessionReader::equipment()
{
    m_database.begin();
    std::vector<studio::StudioEquipment> items;
    Statement rows(m_database, QStringLiteral("SELECT key, name, kind, unit, equipment FROM studio_equipment ORDER BY id"));
    rows.run();
    while (rows.next()) {
        const auto kind = lifts::equipmentKindOf(rows.text(2));
        const auto equipment = exchange::readEquipment(QJsonDocument::fromJson(rows.qtext(4).toUtf8()).object(), "equipment");
        if (!kind || !equipment) {
            m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: the equipment %2 cannot be read").arg(m_database.target(), rows.qtext(0))});
            break;
        }
        items.push_back({rows.text(0), rows.text(1), *kind, unitOf(rows.qtext(3)), *equipment});
    }
    return m_database.resultOf(std::move(items));
}

}  // namespace chalk::store
