#include "ui/onboarding/onboarding_steps.h"

#include "ui/onboarding/health_step.h"
#include "ui/onboarding/movement_step.h"
#include "ui/onboarding/plan_step.h"
#include "ui/onboarding/profile_step.h"
#include "ui/onboarding/time_step.h"

namespace chalk::ui::onboarding {

std::map<StepKind, StepFactory> stepFactories(const OnboardingServices& services)
{
    return {
        {StepKind::Profile, [services](QWidget* parent) { return new ProfileStep(services, parent); }},
        {StepKind::Health, [services](QWidget* parent) { return new HealthStep(services, parent); }},
        {StepKind::TimeAndKit, [services](QWidget* parent) { return new TimeStep(services, parent); }},
        {StepKind::Movement, [services](QWidget* parent) { return new MovementStep(services, parent); }},
        {StepKind::StartingPlan, [services](QWidget* parent) { return new PlanStep(services, parent); }},
    };
}

}  // namespace chalk::ui::onboarding
