#pragma once

#include "core/clients/health_intake.h"
#include "core/store/client_forms.h"

namespace chalk::store {

/// The findings that a doctor is asked about: all but notes and limits.
[[nodiscard]] std::vector<clients::HealthMark> askedAbout(const clients::HealthOutcome& outcome);

/// The clearance after an intake that took the place of `before`. A letter that answers every finding asked about stays good, where nothing calls for
/// care now or is not for today's reading; so does one that came from elsewhere, while the intake is not finished.
[[nodiscard]] clients::Clearance clearanceAfter(const clients::Clearance& before, const clients::HealthOutcome& outcome, const std::string& reason,
                                                const std::optional<Letter>& letter);

}  // namespace chalk::store
