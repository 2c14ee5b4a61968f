#include "core/store/studio_writer.h"

#include "core/exchange/equipment_json.h"
#include "core/store/lift_codec.h"

#include <QJsonDocument>
#include <QStringList>

#include <algorithm>

namespace chalk::store {

namespace {

using studio::DocumentClient;
using studio::DocumentLift;

QString textOfTags(const std::vector<lifts::CautionTag>& tags)
{
    QStringList keys;
    for (const lifts::CautionTag tag : tags) {
        keys.append(qstringOf(lifts::keyOf(tag)));
    }
    return keys.join(QLatin1Char(' '));
}

QString textOfEquipment(const lifts::Equipment& equipment)
{
    return QString::fromUtf8(QJsonDocument(exchange::toJson(equipment)).toJson(QJsonDocument::Compact));
}

}  // namespace

StudioImport::StudioImport(Database& database, const std::string& name, const std::vector<clients::Coach>& coaches,
                           const std::vector<studio::StudioEquipment>& equipment, const QString& atUtc)
    : m_database(database),
      m_transaction(database),
      m_log(database),
      m_cache(database, m_log),
      m_insertSession(database, QStringLiteral("INSERT INTO session (client_id, coach_id, day, start_minute, minutes, place, place_capacity, kind, state, code) "
                                               "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"))
{
    Statement studio(database, QStringLiteral("SELECT name FROM studio"));
    if (studio.run() && studio.next()) {
        database.fail({StoreError::Kind::Refused, QStringLiteral("%1 holds a studio already: %2").arg(database.target(), studio.qtext(0))});
    }
    Statement(database, QStringLiteral("INSERT INTO studio (id, name) VALUES (1, ?)")).run(name);
    for (const clients::Coach& coach : coaches) {
        Statement insert(database, QStringLiteral("INSERT INTO coach (name) VALUES (?)"));
        insert.run(coach.name);
        m_coaches[coach.id.value()] = insert.lastInsertId();
    }
    for (const studio::StudioEquipment& item : equipment) {
        Statement(database, QStringLiteral("INSERT INTO studio_equipment (key, name, kind, unit, equipment) VALUES (?, ?, ?, ?, ?)"))
            .run(item.key, item.name, lifts::keyOf(item.kind), textOfUnit(item.unit), textOfEquipment(item.equipment));
    }
    Statement act(database, QStringLiteral("INSERT INTO act (at_utc, kind) VALUES (?, 'import')"));
    act.run(atUtc);
    m_act = base::ActId(act.lastInsertId());
}

void StudioImport::add(const DocumentClient& client)
{
    const clients::Client& who = client.client;
    Statement insert(m_database, QStringLiteral("INSERT INTO client (name, birth_day, goal, coach_id, unit, body_mass_centi, started_day, sessions_per_week, "
                                                "away_until_day) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)"));
    insert.run(who.name, who.birthDate, who.goal, m_coaches[who.coach.value()], textOfUnit(who.unit), who.bodyMass, who.startedOn,
               who.sessionsPerWeek, who.awayUntil);
    const base::ClientId id(insert.lastInsertId());
    addProfile(client, id);
    addSessions(client.sessions, id);
    WeekVolumes weeks;
    for (const DocumentLift& lift : client.lifts) {
        addLift(lift, id, weeks);
    }
    m_cache.addVolumes(id, weeks);
}

void StudioImport::addProfile(const DocumentClient& client, base::ClientId id)
{
    for (const clients::Caution& caution : client.cautions) {
        Statement(m_database, QStringLiteral("INSERT INTO caution (client_id, body_part, text, short_text, tags, until_day) VALUES (?, ?, ?, ?, ?, ?)"))
            .run(id, caution.bodyPart, caution.text, caution.shortText, textOfTags(caution.tags), caution.until);
    }
    const clients::Clearance& clearance = client.clearance;
    Statement(m_database, QStringLiteral("INSERT INTO clearance (client_id, state, reason, asked_day, granted_day, valid_until_day, limits) "
                                         "VALUES (?, ?, ?, ?, ?, ?, ?)"))
        .run(id, clients::keyOf(clearance.state), clearance.reason, clearance.askedOn, clearance.grantedOn, clearance.validUntil, clearance.limits);
}

void StudioImport::addSessions(const std::vector<sessions::Session>& sessions, base::ClientId client)
{
    m_sessionsByCode.clear();
    for (const sessions::Session& session : sessions) {
        m_insertSession.run(client, m_coaches[session.coach.value()], session.date, session.startMinute, session.minutes, session.place,
                            session.placeCapacity, sessions::keyOf(session.kind), sessions::keyOf(session.state), session.code);
        m_sessionsByCode[session.code] = base::SessionId(m_insertSession.lastInsertId());
    }
}

void StudioImport::addLift(const DocumentLift& lift, base::ClientId client, WeekVolumes& weeks)
{
    progression::Kit kit = lift.setup.kit;
    kit.exerciseKey = lift.exerciseKey;
    Statement insert(m_database, QStringLiteral("INSERT INTO lift (client_id, pattern, equipment_key, unit, region, body_mass_centi, kit, start_stage, policy, "
                                                "started_day) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"));
    insert.run(client, lifts::keyOf(lift.pattern), lift.equipmentKey, textOfUnit(lift.setup.unit), lifts::keyOf(lift.setup.region), lift.setup.bodyMass,
               textOfKit(kit), progression::keyOf(lift.setup.startStage), textOfPolicy(lift.setup.policy, lift.setup.unit), lift.startedOn);
    const base::LiftId id(insert.lastInsertId());
    std::vector<progression::Event> events;
    for (const studio::DocumentEvent& entry : lift.events) {
        const auto session = entry.sessionCode ? m_sessionsByCode.find(*entry.sessionCode) : m_sessionsByCode.end();
        m_log.append({id, entry.event, m_act, session == m_sessionsByCode.end() ? base::SessionId() : session->second, {}, false});
        events.push_back(entry.event);
    }
    std::stable_sort(events.begin(), events.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
    if (auto fresh = m_database.failure() ? std::nullopt : m_cache.readFresh(id)) {
        m_cache.judgeAll(*fresh, events, &weeks, nullptr);
    }
}

Result<void> importStudio(Database& database, const studio::StudioDocument& document, const QString& atUtc, const Progress& progress)
{
    StudioImport import(database, document.name, document.coaches, document.equipment, atUtc);
    const int count = static_cast<int>(document.clients.size());
    for (int i = 0; i < count && !import.hasFailed(); ++i) {
        if (progress && !progress(i, count)) {
            return storeError(StoreError::Kind::Cancelled, QStringLiteral("Stopped: nothing was taken in"));
        }
        import.add(document.clients[static_cast<std::size_t>(i)]);
    }
    return import.finish();
}

}  // namespace chalk::store
