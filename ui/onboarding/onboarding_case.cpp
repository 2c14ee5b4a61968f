#include "ui/onboarding/onboarding_case.h"

#include "core/base/enum_keys.h"
#include "core/store/client_forms.h"
#include "core/store/client_reader.h"

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr std::array<std::string_view, kSteps.size()> kStepKeys{"profile", "health", "time", "movement", "plan"};

StepState profileState(const OnboardingCase& onboarding)
{
    return onboarding.canKeepHealth() && onboarding.client.birthDate ? StepState::Done : StepState::Begun;
}

StepState healthState(const OnboardingCase& onboarding)
{
    if (!onboarding.canKeepHealth()) {
        return StepState::WaitsForConsent;
    }
    if (!onboarding.intake) {
        return StepState::Open;
    }
    return clients::outcomeOf(*onboarding.intake, clients::RestingLimits()).isComplete() ? StepState::Done : StepState::Begun;
}

StepState movementState(const OnboardingCase& onboarding)
{
    if (!onboarding.canKeepHealth()) {
        return StepState::WaitsForConsent;
    }
    if (clients::isBlocked(onboarding.clearance, onboarding.today)) {
        return StepState::WaitsForClearance;
    }
    if (!onboarding.screen) {
        return StepState::Open;
    }
    return onboarding.screen->isFinished ? StepState::Done : StepState::Begun;
}

StepState planState(const OnboardingCase& onboarding)
{
    if (onboarding.hasLifts) {
        return StepState::Done;
    }
    return clients::isBlocked(onboarding.clearance, onboarding.today) ? StepState::WaitsForClearance : StepState::Open;
}

}  // namespace

StepState stateOf(StepKind step, const OnboardingCase& onboarding)
{
    switch (step) {
    case StepKind::Profile:
        return profileState(onboarding);
    case StepKind::Health:
        return healthState(onboarding);
    case StepKind::TimeAndKit:
        return onboarding.profile.free.isEmpty() ? StepState::Open : StepState::Done;
    case StepKind::Movement:
        return movementState(onboarding);
    case StepKind::StartingPlan:
        return planState(onboarding);
    }
    return StepState::Open;
}

StepKind firstOpenStep(const OnboardingCase& onboarding)
{
    const auto* open = std::find_if(kSteps.begin(), kSteps.end(), [&onboarding](StepKind step) {
        const StepState state = stateOf(step, onboarding);
        return state == StepState::Open || state == StepState::Begun;
    });
    return open == kSteps.end() ? kSteps.back() : *open;
}

std::string_view keyOf(StepKind step)
{
    return base::keyIn(kStepKeys, step);
}

std::optional<StepKind> stepOf(std::string_view key)
{
    return base::enumOf<StepKind>(kStepKeys, key);
}

store::Result<OnboardingCase> readOnboardingCase(store::Database& database, base::ClientId client, base::Date today)
{
    store::ClientForms forms(database);
    const auto file = store::ClientReader(database).read(client, today);
    const auto profile = forms.profile(client);
    const auto intake = forms.healthIntake(client);
    const auto screen = forms.movementScreen(client);
    if (!file) {
        return tl::make_unexpected(file.error());
    }
    if (!profile) {
        return tl::make_unexpected(profile.error());
    }
    if (!intake) {
        return tl::make_unexpected(intake.error());
    }
    if (!screen) {
        return tl::make_unexpected(screen.error());
    }
    OnboardingCase onboarding{today, file->client, file->coachName, *profile, *intake, file->clearance, *screen, !file->lifts.empty(), {}};
    for (const store::ClientLift& lift : file->lifts) {
        onboarding.begun.push_back(lift.lift.pattern);
    }
    return onboarding;
}

}  // namespace chalk::ui::onboarding
