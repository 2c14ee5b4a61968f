#include "core/clients/intake_clearance.h"

#include <algorithm>

namespace chalk::clients {

namespace {

bool isAnswered(const HealthOutcome& outcome, const std::optional<std::vector<HealthMark>>& answered)
{
    if (outcome.isCareNeededNow || outcome.resting.isAny() || !answered) {
        return false;
    }
    const auto asked = askedAbout(outcome);
    return std::all_of(asked.begin(), asked.end(), [&answered](HealthMark mark) {
        return std::find(answered->begin(), answered->end(), mark) != answered->end();
    });
}

}  // namespace

std::vector<HealthMark> askedAbout(const HealthOutcome& outcome)
{
    std::vector<HealthMark> asked;
    for (const HealthFinding& finding : outcome.findings) {
        if (weightOf(finding.mark) >= HealthWeight::AskDoctor) {
            asked.push_back(finding.mark);
        }
    }
    return asked;
}

Clearance clearanceAfter(const Clearance& before, const HealthOutcome& outcome, const std::string& reason,
                         const std::optional<std::vector<HealthMark>>& answered)
{
    const ClearanceState next = clearanceStateAfter(outcome);
    const bool isDoctorAsked = next == ClearanceState::Recommended || next == ClearanceState::StopAndSeek;
    if (before.state == ClearanceState::Granted && (!isDoctorAsked || isAnswered(outcome, answered))) {
        return before;
    }
    Clearance after;
    after.state = next;
    after.reason = isDoctorAsked ? reason : std::string();
    if (isDoctorAsked && before.state == next) {
        after.askedOn = before.askedOn;
        after.remindOn = before.remindOn;
    }
    return after;
}

}  // namespace chalk::clients
