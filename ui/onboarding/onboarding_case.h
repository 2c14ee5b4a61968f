#pragma once

#include "core/base/date.h"
#include "core/clients/client.h"
#include "core/clients/health_intake.h"
#include "core/clients/profile.h"
#include "core/screens/pattern_screen.h"
#include "core/store/database.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace chalk::ui::onboarding {

/// The steps, in their order.
enum class StepKind : std::uint8_t { Profile, Health, TimeAndKit, Movement, StartingPlan };

inline constexpr std::array kSteps{StepKind::Profile, StepKind::Health, StepKind::TimeAndKit, StepKind::Movement, StepKind::StartingPlan};

/// How far a step is.
enum class StepState : std::uint8_t {
    Open,               ///< not begun
    Begun,              ///< something is answered, something is open
    Done,
    WaitsForConsent,    ///< nothing about health is kept before the client agrees to it
    WaitsForClearance   ///< the intake is not finished, or a doctor's answer is awaited
};

/// What all steps work from: one client as the studio has it now.
struct OnboardingCase {
    base::Date today;
    clients::Client client;
    std::string coachName;
    clients::Profile profile;
    std::optional<clients::HealthIntake> intake;      ///< the newest, finished or not
    clients::Clearance clearance;
    std::optional<screens::MovementScreen> screen;    ///< the newest
    bool hasLifts = false;                            ///< a plan was started
    std::vector<lifts::Pattern> begun;                ///< the patterns whose lifts run

    [[nodiscard]] bool canKeepHealth() const { return clients::canKeepHealth(profile, client.birthDate, today); }
};

[[nodiscard]] StepState stateOf(StepKind step, const OnboardingCase& onboarding);
/// The first step that is neither done nor waiting; the last one where there is none.
[[nodiscard]] StepKind firstOpenStep(const OnboardingCase& onboarding);

/// The key of a step in places: `profile`, `health`, `time`, `movement`, `plan`.
[[nodiscard]] std::string_view keyOf(StepKind step);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<StepKind> stepOf(std::string_view key);

/// Reads it. A fault of the file, or a client that is not there, is an error.
[[nodiscard]] store::Result<OnboardingCase> readOnboardingCase(store::Database& database, base::ClientId client, base::Date today);

}  // namespace chalk::ui::onboarding
