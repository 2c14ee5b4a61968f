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

bool foundNothingToDo(const LiftOutcome& outcome)
{
    return outcome.rules.has(progression::Rule::D4);
}

}  // namespace

DecisionWriter::DecisionWriter(Database& database, std::function<QString()> atUtc, base::CoachId coach)
    : m_database(database), m_atUtc(std::move(atUtc)), m_coach(coach)
{
}

Result<ActOutcome> DecisionWriter::decide(checkin::Decision decision, const std::optional<progression::EventBody>& event)
{
    ActWork work(m_database);
    const base::ClientId owner = decision.lift ? work.clientOf(*decision.lift) : base::ClientId();
    if (const QString fault = faultOf(decision, event.has_value(), owner); !fault.isEmpty()) {
        work.refuse(fault);
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
