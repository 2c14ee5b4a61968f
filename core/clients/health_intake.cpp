#include "core/clients/health_intake.h"

#include "core/base/enum_keys.h"

namespace chalk::clients {

namespace {

constexpr std::array<std::string_view, 4> kLevelKeys{"clear", "limits", "ask_doctor", "not_today"};

/// What was marked; for a bare yes the gravest of the question's marks.
std::vector<HealthFinding> findingsOf(HealthQuestion question, const HealthAnswer& answer)
{
    if (answer.isYes != true) {
        return {};
    }
    std::vector<HealthFinding> findings;
    const auto own = marksOf(question);
    for (const HealthMark mark : own) {
        if (std::find(answer.marks.begin(), answer.marks.end(), mark) != answer.marks.end()) {
            findings.push_back({question, mark, false});
        }
    }
    if (findings.empty()) {
        const auto gravest = std::max_element(own.begin(), own.end(), [](HealthMark a, HealthMark b) { return weightOf(a) < weightOf(b); });
        findings.push_back({question, *gravest, own.size() > 1});
    }
    return findings;
}

void take(const HealthFinding& finding, HealthOutcome& outcome)
{
    const HealthWeight weight = weightOf(finding.mark);
    outcome.facts.hasKnownDisease = outcome.facts.hasKnownDisease || weight == HealthWeight::KnownDisease;
    outcome.facts.hasSignsOrSymptoms = outcome.facts.hasSignsOrSymptoms || weight >= HealthWeight::Symptom;
    outcome.isCareNeededNow = outcome.isCareNeededNow || weight == HealthWeight::SeekCareNow;
    const auto tag = finding.isAssumed ? std::nullopt : cautionTagOf(finding.mark);
    if (tag && std::find(outcome.cautions.begin(), outcome.cautions.end(), *tag) == outcome.cautions.end()) {
        outcome.cautions.push_back(*tag);
    }
}

/// The highest that the findings, the algorithm and the reading each ask for.
HealthLevel levelOf(const HealthOutcome& outcome)
{
    HealthLevel level = HealthLevel::Clear;
    for (const HealthFinding& finding : outcome.findings) {
        const HealthWeight weight = weightOf(finding.mark);
        const HealthLevel asked = weight == HealthWeight::AskDoctor ? HealthLevel::AskDoctor
                                  : weight == HealthWeight::Note    ? HealthLevel::Clear
                                                                    : HealthLevel::Limits;
        level = std::max(level, asked);
    }
    if (isClearanceAdvised(outcome.advice)) {
        level = std::max(level, outcome.advice == ScreeningAdvice::StopAndClear ? HealthLevel::NotToday : HealthLevel::AskDoctor);
    }
    const bool isNotToday = outcome.isCareNeededNow || outcome.resting.isAny();
    return isNotToday ? HealthLevel::NotToday : level;
}

}  // namespace

HealthOutcome outcomeOf(const HealthIntake& intake, const RestingLimits& limits)
{
    HealthOutcome outcome;
    outcome.facts.isRegularExerciser = intake.isRegularExerciser.value_or(false);
    outcome.facts.intended = intake.intended;
    outcome.isActivityOpen = !intake.isRegularExerciser.has_value();
    for (int i = 0; i < kHealthQuestionCount; ++i) {
        const auto question = static_cast<HealthQuestion>(i);
        const HealthAnswer& answer = intake.answerTo(question);
        if (!answer.isYes) {
            outcome.open.push_back(question);
        }
        for (const HealthFinding& finding : findingsOf(question, answer)) {
            outcome.findings.push_back(finding);
            take(finding, outcome);
        }
    }
    outcome.advice = adviceFor(outcome.facts);
    outcome.resting = warningFor(intake.resting, limits);
    outcome.level = levelOf(outcome);
    return outcome;
}

ClearanceState clearanceStateAfter(const HealthOutcome& outcome)
{
    switch (outcome.level) {
    case HealthLevel::AskDoctor:
        return ClearanceState::Recommended;
    case HealthLevel::NotToday:
        return ClearanceState::StopAndSeek;
    case HealthLevel::Clear:
    case HealthLevel::Limits:
        break;
    }
    return outcome.isComplete() ? ClearanceState::NotNeeded : ClearanceState::Unanswered;
}

std::string_view keyOf(HealthLevel level)
{
    return base::keyIn(kLevelKeys, level);
}

}  // namespace chalk::clients
