#include "core/store/studio_reader.h"

#include "core/exchange/equipment_json.h"
#include "core/store/lift_codec.h"
#include "core/store/statement.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::store {

Result<std::string> StudioReader::name()
{
    const Snapshot snapshot(m_database);
    Statement row(m_database, QStringLiteral("SELECT name FROM studio"));
    const bool isThere = row.run() && row.next();
    return m_database.resultOf(isThere ? row.text(0) : std::string());
}

Result<std::vector<clients::Coach>> StudioReader::coaches()
{
    return coachesBy(QStringLiteral("SELECT id, name FROM coach WHERE is_coaching = 1 ORDER BY id"));
}

Result<std::vector<clients::Coach>> StudioReader::everybody()
{
    return coachesBy(QStringLiteral("SELECT id, name FROM coach ORDER BY id"));
}

Result<std::vector<clients::Coach>> StudioReader::coachesBy(const QString& query)
{
    const Snapshot snapshot(m_database);
    std::vector<clients::Coach> coaches;
    Statement rows(m_database, query);
    rows.run();
    while (rows.next()) {
        coaches.push_back({base::CoachId(rows.integer(0)), rows.text(1)});
    }
    return m_database.resultOf(std::move(coaches));
}

Result<std::vector<exchange::StudioEquipment>> StudioReader::equipment()
{
    const Snapshot snapshot(m_database);
    std::vector<exchange::StudioEquipment> items;
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
