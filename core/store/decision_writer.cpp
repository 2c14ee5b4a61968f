#include "core/store/decision_writer.h"

#include "core/store/act_work.h"
#include "core/store/decision_rows.h"

#include <algorithm>

namespace chalk::store {

namespace {

/// The first reason why a decision cannot be; empty where it can.
QString faultOf(const checkin::Decision& decision, bool hasEvent, base::ClientId ownerOfLift)
{
    if (hasEvent && !decision.lift) {
        return QStringLiteral("A decision that changes a lift has to name it");
    }
    if (decision.lift && ownerOfLift != decision.client) {
        return QStringLiteral("Lift %1 is not one of client %2").arg(decision.lift->value()).arg(decision.client.value());
    }
    return decision.nextReview <= decision.day ? QStringLiteral("The next review has to lie after the day of the decision") : QString();
}

QJsonObject decisionJson(const checkin::Decision& decision)
{
    return {{QStringLiteral("choice"), QString::fromStdString(std::string(checkin::keyOf(decision.choice)))},
            {QStringLiteral("note"), QString::fromStdString(decision.note)},
            {QStringLiteral("next_review"), QString::fromStdString(decision.nextReview.toString())}};
}

/// Somebody decided about the same client on the same day, unseen.
void refuseUnseen(Database& database, const checkin::Decision& decision, base::ActId seen)
{
    Statement row(database, QStringLiteral("SELECT ") + decisionColumns() + QStringLiteral(" FROM decision d WHERE d.client_id = ? AND d.day = ? AND ")
                                + decisionCounts() + QStringLiteral(" ORDER BY d.id DESC LIMIT 1"));
    if (!row.run(decision.client, decision.day) || !row.next()) {
        return;
    }
    const checkin::Decision theirs = decisionOf(row);
    if (theirs.act.value() <= seen.value()) {
        return;
    }
    Conflict conflict{ConflictAbout::Decision, decision.client, {}, decision.lift.value_or(base::LiftId())};
    conflict.yours = decisionJson(decision);
    conflict.theirs = decisionJson(theirs);
    nameLastAct(database, conflict, QStringLiteral("decision"), QStringLiteral("act_id"), theirs.act.value());
    refuseAsConflict(database, std::move(conflict));
}

bool foundNothingToDo(const LiftOutcome& outcome)
{
    return outcome.rules.has(progression::Rule::D4);
}

}  // namespace

DecisionWriter::DecisionWriter(Database& database, std::function<QString()> atUtc, base::CoachId coach)
    : m_database(database), m_atUtc(std::move(atUtc)), m_coach(coach)
{
}

Result<ActOutcome> DecisionWriter::decide(checkin::Decision decision, const std::optional<progression::EventBody>& event,
                                           std::optional<base::ActId> seenOfDay)
{
    ActWork work(m_database);
    const base::ClientId owner = decision.lift ? work.clientOf(*decision.lift) : base::ClientId();
    if (const QString fault = faultOf(decision, event.has_value(), owner); !fault.isEmpty()) {
        work.refuse(fault);
    }
    if (seenOfDay && !work.isRefused()) {
        refuseUnseen(m_database, decision, *seenOfDay);
    }
    work.begin(ActKind::Decide, m_atUtc(), m_coach, decision.client);
    decision.act = work.outcome().act;
    insertDecision(m_database, decision);
    if (event && !work.isRefused()) {
        work.edit().add(*decision.lift, {decision.day, *event}, {});
    }
    const auto& lifts = work.outcome().lifts;
    if (std::any_of(lifts.begin(), lifts.end(), foundNothingToDo)) {
        work.refuse(QStringLiteral("The lift carries no load that could be lighter, or is on hold"));
    }
    return work.finish();
}

}  // namespace chalk::store
