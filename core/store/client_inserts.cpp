#include "core/store/client_inserts.h"

#include "core/store/lift_codec.h"
#include "core/store/profile_rows.h"

namespace chalk::store {

ClientInserts::ClientInserts(Database& database)
    : m_database(database),
      m_client(database, QStringLiteral("INSERT INTO client (name, birth_day, goal, coach_id, unit, body_mass_centi, started_day, sessions_per_week, "
                                        "away_until_day) VALUES (?, ?, '', ?, ?, ?, ?, ?, ?) RETURNING id")),
      m_goal(database, QStringLiteral("UPDATE client SET goal = ? WHERE id = ?")),
      m_lift(database, QStringLiteral("INSERT INTO lift (client_id, pattern, equipment_key, unit, region, body_mass_centi, kit, start_stage, policy, "
                                      "started_day) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) RETURNING id")),
      m_caution(database, QStringLiteral("INSERT INTO caution (client_id, body_part, text, short_text, tags) VALUES (?, '', '', '', '') RETURNING id")),
      m_cautionTexts(database, QStringLiteral("UPDATE caution SET body_part = ?, text = ?, short_text = ?, tags = ?, until_day = ? WHERE id = ? AND client_id = ?")),
      m_clearance(database, QStringLiteral("INSERT INTO clearance (client_id, state, reason, asked_day, granted_day, valid_until_day, limits, granted_by, remind_day) "
                                           "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (client_id) DO UPDATE SET state = excluded.state, reason = excluded.reason, "
                                           "asked_day = excluded.asked_day, granted_day = excluded.granted_day, valid_until_day = excluded.valid_until_day, "
                                           "limits = excluded.limits, granted_by = excluded.granted_by, remind_day = excluded.remind_day"))
{
}

base::ClientId ClientInserts::client(const clients::Client& client)
{
    const base::ClientId id(m_client.runForId(client.name, client.birthDate, client.coach, textOfUnit(client.unit), client.bodyMass, client.startedOn,
                                              client.sessionsPerWeek, client.awayUntil));
    Vault& vault = m_database.vault();
    m_goal.run(vault.sealed(vault.toWrite("client", id), "goal", client.goal), id);
    return id;
}

base::LiftId ClientInserts::lift(base::ClientId client, const NewLift& lift)
{
    const progression::LiftSetup& setup = lift.setup;
    return base::LiftId(m_lift.runForId(client, lifts::keyOf(lift.pattern), lift.equipmentKey, textOfUnit(setup.unit), lifts::keyOf(setup.region), setup.bodyMass,
                                        textOfKit(setup.kit), progression::keyOf(setup.startStage), textOfPolicy(setup.policy, setup.unit), lift.startedOn));
}

base::CautionId ClientInserts::caution(base::ClientId client, const clients::Caution& caution)
{
    clients::Caution made = caution;
    made.id = base::CautionId(m_caution.runForId(client));
    changeCaution(client, made);
    return made.id;
}

void ClientInserts::changeCaution(base::ClientId client, const clients::Caution& caution)
{
    Vault& vault = m_database.vault();
    const SealedRow row = vault.toWrite("caution", caution.id);
    m_cautionTexts.run(vault.sealed(row, "body_part", caution.bodyPart), vault.sealed(row, "text", caution.text), vault.sealed(row, "short_text", caution.shortText),
                       vault.sealed(row, "tags", textOfTags(caution.tags)), caution.until, caution.id, client);
}

void ClientInserts::clearance(base::ClientId client, const clients::Clearance& clearance)
{
    Vault& vault = m_database.vault();
    const SealedRow row = vault.toWrite("clearance", client);
    m_clearance.run(client, clients::keyOf(clearance.state), vault.sealed(row, "reason", clearance.reason), clearance.askedOn, clearance.grantedOn,
                    clearance.validUntil, vault.sealed(row, "limits", clearance.limits), vault.sealed(row, "granted_by", clearance.grantedBy), clearance.remindOn);
}

}  // namespace chalk::store
