#pragma once

#include "core/clients/health_intake.h"

#include <optional>
#include <string>
#include <vector>

namespace chalk::clients {

/// The findings that a doctor is asked about: all but notes and limits.
[[nodiscard]] std::vector<HealthMark> askedAbout(const HealthOutcome& outcome);

/// The clearance after an intake that took the place of `before`. `answered` is what the newest letter on file was asked about; nothing where there
/// is none. A letter stays good while it answers every finding asked about and nothing calls for care now or is above its resting limit; so does
/// one that came from elsewhere, while the intake asks for none. `reason` says in words why a doctor is asked.
[[nodiscard]] Clearance clearanceAfter(const Clearance& before, const HealthOutcome& outcome, const std::string& reason,
                                       const std::optional<std::vector<HealthMark>>& answered);

}  // namespace chalk::clients
