#pragma once

#include "ui/onboarding/onboarding_case.h"

#include <QString>

namespace chalk::ui::onboarding {

/// `Time and kit`.
[[nodiscard]] QString stepName(StepKind step);
/// What is in it, or what it waits for: `Hours, equipment`, `Waits for clearance`.
[[nodiscard]] QString stepNote(StepKind step, StepState state);
/// How far it is, for screen readers.
[[nodiscard]] QString stateWords(StepState state);
/// `New client · 66 · started Wed 18 Nov with Tobias`; for somebody who trains already `66 · with Tobias since 18 Nov`.
[[nodiscard]] QString subtitleOf(const OnboardingCase& onboarding);

/// Why a step has to wait and which step ends that; both empty where it does not wait.
struct WaitWords {
    QString lead;
    QString text;
    StepKind wayOut = StepKind::Profile;
};
[[nodiscard]] WaitWords waitWordsOf(StepState state, const OnboardingCase& onboarding);

}  // namespace chalk::ui::onboarding
