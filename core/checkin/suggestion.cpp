#include "core/checkin/suggestion.h"

#include "core/checkin/lift_evidence.h"

#include <algorithm>

namespace chalk::checkin {

namespace {

/// What speaks for what, of one lift on one day.
class SuggestionCase {
public:
    SuggestionCase(const LiftEvidence& lift, const ClientSigns& client, base::Date day, const SuggestionFigures& figures)
        : m_lift(lift), m_client(client), m_day(day), m_figures(figures)
    {
    }

    [[nodiscard]] bool isStalled() const { return checkin::isStalled(m_lift.judgement, m_lift.flags, m_lift.isOnHold); }
    [[nodiscard]] bool isFalling() const { return m_lift.judgement.verdict == plateau::PlateauVerdict::Regressing; }
    [[nodiscard]] bool isLearningForLong() const;
    [[nodiscard]] bool isAway() const;
    [[nodiscard]] bool hadLighterWeek() const;
    [[nodiscard]] bool isTired() const;
    [[nodiscard]] bool isHard() const { return m_lift.reserve && *m_lift.reserve <= m_figures.hardReserve; }
    [[nodiscard]] bool isInReserve() const { return m_lift.reserve && *m_lift.reserve > m_figures.hardReserve; }
    [[nodiscard]] bool hasManyStalls() const;

private:
    using Answer = std::optional<int> ReadinessPoint::*;
    /// The mean of an answer in the last days; nothing where too few gave it.
    [[nodiscard]] std::optional<double> meanOf(Answer answer) const;

    const LiftEvidence& m_lift;
    const ClientSigns& m_client;
    base::Date m_day;
    const SuggestionFigures& m_figures;
};

bool SuggestionCase::isLearningForLong() const
{
    return !progression::isLoaded(m_lift.stage) && !m_lift.evidence.stage && !m_lift.stages.empty() &&
           m_day - m_lift.stages.back().days.from >= m_figures.learningDays;
}

bool SuggestionCase::isAway() const
{
    return m_client.plannedSessions > 0 && m_client.attendedSessions < m_figures.lowAttendance * m_client.plannedSessions;
}

bool SuggestionCase::hadLighterWeek() const
{
    return std::any_of(m_lift.lighterWeeks.begin(), m_lift.lighterWeeks.end(),
                       [this](const DayRange& week) { return m_day - week.to <= m_figures.lighterWeekDays; });
}

std::optional<double> SuggestionCase::meanOf(Answer answer) const
{
    double sum = 0;
    std::size_t count = 0;
    for (const ReadinessPoint& point : m_client.readiness) {
        if (point.*answer && point.date <= m_day && m_day - point.date < m_figures.readinessDays) {
            sum += *(point.*answer);
            ++count;
        }
    }
    return count < m_figures.readinessNeeds ? std::nullopt : std::optional(sum / static_cast<double>(count));
}

bool SuggestionCase::isTired() const
{
    const auto sleep = meanOf(&ReadinessPoint::sleep);
    const auto soreness = meanOf(&ReadinessPoint::soreness);
    const auto stress = meanOf(&ReadinessPoint::stress);
    return (sleep && *sleep <= m_figures.badSleep) || (soreness && *soreness >= m_figures.soreOrStressed) ||
           (stress && *stress >= m_figures.soreOrStressed);
}

bool SuggestionCase::hasManyStalls() const
{
    return !m_client.isDirectionSettled && m_client.stalledLifts >= m_figures.manyStalls && m_client.firstLoad &&
           m_day - *m_client.firstLoad >= m_figures.manyStallsDays;
}

/// Of a lift that is stalled and not on hold.
Suggestion suggestionForStalled(const SuggestionCase& c, progression::Stage stage, const SwapsAtHand& swaps)
{
    const bool isRested = c.hadLighterWeek();
    if (c.isAway()) {
        return {ChoiceKind::Hold, ChoiceReason::Attendance};
    }
    if (c.isFalling() && !(isRested && swaps.hasEasier)) {
        return {isRested ? ChoiceKind::Hold : ChoiceKind::LighterWeek, ChoiceReason::Falling};
    }
    if (c.isFalling()) {
        return {ChoiceKind::Swap, ChoiceReason::Falling};
    }
    if (!isRested && (c.isTired() || c.isHard())) {
        return {ChoiceKind::LighterWeek, c.isTired() ? ChoiceReason::Tired : ChoiceReason::Hard};
    }
    if (c.hasManyStalls()) {
        return {ChoiceKind::Direction, ChoiceReason::ManyStalls};
    }
    if (!isRested && !c.isInReserve()) {
        return {ChoiceKind::Hold, ChoiceReason::TooLittle};
    }
    const bool isLast = stage == progression::Stage::RestCut && swaps.hasHarder;
    return {isLast ? ChoiceKind::Swap : ChoiceKind::MoveOn, isRested ? ChoiceReason::Rested : ChoiceReason::InReserve, isLast};
}

}  // namespace

Suggestion suggestionFor(const LiftEvidence& lift, const ClientSigns& client, const SwapsAtHand& swaps, base::Date day, const SuggestionFigures& figures)
{
    const SuggestionCase c(lift, client, day, figures);
    if (lift.isOnHold) {
        return {ChoiceKind::Rescreen, ChoiceReason::OnHold};
    }
    if (lift.flags.has(progression::Flag::Rescreen)) {
        return {ChoiceKind::Rescreen, ChoiceReason::AfterLayoff};
    }
    if (c.isLearningForLong()) {
        return {ChoiceKind::Rescreen, ChoiceReason::LearningForLong};
    }
    if (client.isPlanToReview) {
        return {ChoiceKind::Direction, ChoiceReason::PlanOver};
    }
    if (c.isStalled() && progression::isLoaded(lift.stage)) {
        return suggestionForStalled(c, lift.stage, swaps);
    }
    const bool isKnown = lift.judgement.verdict != plateau::PlateauVerdict::NotEnoughData || !progression::isLoaded(lift.stage);
    return {ChoiceKind::Hold, isKnown ? ChoiceReason::OnCourse : ChoiceReason::TooLittle};
}

}  // namespace chalk::checkin
