#pragma once

#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/onboarding_services.h"

#include <functional>
#include <map>

class QWidget;

namespace chalk::ui::onboarding {

class OnboardingStep;

/// Makes a step; the parent owns it.
using StepFactory = std::function<OnboardingStep*(QWidget* parent)>;

/// The steps that there are, in their order. A step that has no factory is not shown.
[[nodiscard]] std::map<StepKind, StepFactory> stepFactories(const OnboardingServices& services);

}  // namespace chalk::ui::onboarding
