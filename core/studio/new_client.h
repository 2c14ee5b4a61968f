#pragma once

#include "core/clients/body_measures.h"
#include "core/clients/client.h"
#include "core/clients/health_intake.h"
#include "core/clients/profile.h"
#include "core/screens/field_tests.h"
#include "core/screens/pattern_screen.h"

#include <optional>
#include <vector>

namespace chalk::studio {

/// Somebody who comes to a studio, with all that is known of them on the first day.
struct NewClient {
    clients::Client client;                         ///< without an id
    clients::Profile profile;
    std::optional<clients::HealthIntake> intake;
    std::vector<clients::BodyMeasures> measures;    ///< each of a day of its own
    std::optional<screens::MovementScreen> screen;
    std::vector<screens::FieldTestDay> fieldTests;  ///< each of a day of its own
    std::vector<clients::Caution> cautions;         ///< without ids

    /// Whether any of it may be kept with consent alone.
    [[nodiscard]] bool hasHealth() const { return intake || screen || !measures.empty() || !fieldTests.empty() || !cautions.empty(); }
    bool operator==(const NewClient&) const = default;
};

}  // namespace chalk::studio
