#pragma once

#include <optional>

namespace chalk::clients {

/// Heart rate and blood pressure at rest, as a coach reads them. Nothing where it was not taken.
struct RestingReading {
    std::optional<int> heartRate;  ///< beats a minute, 20 to 250
    std::optional<int> systolic;   ///< mmHg, 50 to 300
    std::optional<int> diastolic;  ///< mmHg, 20 to 200, below `systolic`

    bool operator==(const RestingReading&) const = default;
};

/// Readings above these warn. Sources disagree, so it is a setting of the studio. The defaults are those of one of them: the exclusion limits
/// of the NHANES cardiovascular fitness manual (CDC): heart rate above 100, 180 systolic, 100 diastolic.
struct RestingLimits {
    int heartRate = 100;
    int systolic = 180;
    int diastolic = 100;

    bool operator==(const RestingLimits&) const = default;
};

/// Which parts of a reading are above their limit.
struct RestingWarning {
    bool isHeartRateHigh = false;
    bool isSystolicHigh = false;
    bool isDiastolicHigh = false;

    [[nodiscard]] bool isAny() const { return isHeartRateHigh || isSystolicHigh || isDiastolicHigh; }
    bool operator==(const RestingWarning&) const = default;
};

[[nodiscard]] RestingWarning warningFor(const RestingReading& reading, const RestingLimits& limits);

/// The limit that is of no use: `heart_rate` outside of 40 to 200, `systolic` outside of 90 to 250, `diastolic` outside of 50 to 150 or not below
/// `systolic`; nothing where all can be.
[[nodiscard]] std::optional<const char*> faultyLimitOf(const RestingLimits& limits);

/// The field that cannot be: `heart_rate`, `systolic`, `diastolic`; nothing where all can.
[[nodiscard]] std::optional<const char*> faultyFieldOf(const RestingReading& reading);

}  // namespace chalk::clients
