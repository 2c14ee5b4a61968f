#include "core/store/decision_rows.h"

namespace chalk::store {

const QString& decisionColumns()
{
    static const QString columns =
        QStringLiteral("d.id, (SELECT r.act_id FROM decision r WHERE r.id = coalesce(d.root_id, d.id)), "
                       "d.client_id, d.lift_id, d.day, d.about, d.choice, d.note, d.next_review_day");
    return columns;
}

const QString& decisionCounts()
{
    static const QString condition =
        QStringLiteral("d.is_void = 0 AND NOT EXISTS (SELECT 1 FROM decision later WHERE later.replaces_id = d.id)");
    return condition;
}

checkin::Decision decisionOf(const Statement& row)
{
    checkin::Decision decision;
    decision.act = base::ActId(row.integer(1));
    decision.client = base::ClientId(row.integer(2));
    decision.lift = row.isNull(3) ? std::nullopt : std::optional(base::LiftId(row.integer(3)));
    decision.day = row.date(4);
    decision.about = row.known(checkin::findingKindOf(row.text(5)), 5, "decision", 0);
    decision.choice = row.known(checkin::choiceKindOf(row.text(6)), 6, "decision", 0);
    decision.note = row.openedText(7, row.sealedRow("decision", decision.client, row.integer(3), decision.day.daysSince1970(), row.text(5)), "note");
    decision.nextReview = row.date(8);
    return decision;
}

void insertDecision(Database& database, const checkin::Decision& decision)
{
    Vault& vault = database.vault();
    const SealedRow row =
        vault.toWrite("decision", decision.client, decision.lift.value_or(base::LiftId()), decision.day.daysSince1970(), checkin::keyOf(decision.about));
    Statement(database, QStringLiteral("INSERT INTO decision "
                                       "(act_id, is_void, client_id, lift_id, day, about, choice, note, next_review_day) "
                                       "VALUES (?, 0, ?, ?, ?, ?, ?, ?, ?)"))
        .run(decision.act, decision.client, decision.lift, decision.day, checkin::keyOf(decision.about), checkin::keyOf(decision.choice),
             vault.sealed(row, "note", decision.note), decision.nextReview);
}

void takeBackDecisions(Database& database, base::ActId act, base::ActId by)
{
    Statement(database, QStringLiteral("INSERT INTO decision "
                                       "(root_id, replaces_id, act_id, is_void, client_id, lift_id, day, about, choice, note, next_review_day) "
                                       "SELECT coalesce(d.root_id, d.id), d.id, ?, 1 - d.is_void, d.client_id, d.lift_id, d.day, d.about, "
                                       "d.choice, d.note, d.next_review_day FROM decision d WHERE d.act_id = ? ORDER BY d.id"))
        .run(by, act);
}

}  // namespace chalk::store
