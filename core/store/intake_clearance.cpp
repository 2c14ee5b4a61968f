#include "core/store/intake_clearance.h"

#include <algorithm>

namespace chalk::store {

namespace {

using clients::ClearanceState;

bool isAnswered(const clients::HealthOutcome& outcome, const std::optional<Letter>& letter)
{
    if (outcome.isCareNeededNow || outcome.resting.isAny() || !letter) {
        return false;
    }
    const auto asked = askedAbout(outcome);
    return std::all_of(asked.begin(), asked.end(), [&letter](clients::HealthMark mark) {
        return std::find(letter->answers.begin(), letter->answers.end(), mark) != letter->answers.end();
    });
}

}  // namespace

std::vector<clients::HealthMark> askedAbout(const clients::HealthOutcome& outcome)
{
    std::vector<clients::HealthMark> asked;
    for (const clients::HealthFinding& finding : outcome.findings) {
        if (clients::weightOf(finding.mark) >= clients::HealthWeight::AskDoctor) {
            asked.push_back(finding.mark);
        }
    }
    return asked;
}

clients::Clearance clearanceAfter(const clients::Clearance& before, const clients::HealthOutcome& outcome, const std::string& reason,
                                  const std::optional<Letter>& letter)
{
    const ClearanceState next = clients::clearanceStateAfter(outcome);
    const bool isDoctorAsked = next == ClearanceState::Recommended || next == ClearanceState::StopAndSeek;
    const bool doesLetterStand = isDoctorAsked ? isAnswered(outcome, letter) : true;
    if (before.state == ClearanceState::Granted && doesLetterStand) {
        return before;
    }
    clients::Clearance after;
    after.state = next;
    after.reason = isDoctorAsked ? reason : std::string();
    after.askedOn = isDoctorAsked && before.state == next ? before.askedOn : std::nullopt;
    return after;
}

}  // namespace chalk::store
