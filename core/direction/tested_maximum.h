#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/direction/maximum_test.h"

#include <optional>
#include <string>
#include <string_view>

namespace chalk::direction {

inline constexpr int kMostTestReps = 5;
/// For so many days a tested single is what a plan starts from before any estimate. Common practice.
inline constexpr int kTestCountsDays = 90;

/// What a test found: a single, or three to five repetitions to failure in place of one.
struct TestedMaximum {
    base::ActId act;       ///< none: not on file yet
    base::ClientId client;
    base::LiftId lift;
    base::Date day;
    base::Load load;       ///< as it is written on the lift
    base::Reps reps{1};    ///< made with it, 1 to kMostTestReps
    TestEnd end = TestEnd::Found;
    std::string note;

    bool operator==(const TestedMaximum&) const = default;
};

/// `found`, `pain`, `too_many`, `equipment_ends`, `stopped`.
[[nodiscard]] std::string_view keyOf(TestEnd end);
[[nodiscard]] std::optional<TestEnd> testEndOf(std::string_view key);

}  // namespace chalk::direction
