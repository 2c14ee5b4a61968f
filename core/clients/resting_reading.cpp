#include "core/clients/resting_reading.h"

namespace chalk::clients {

namespace {

bool isAbove(const std::optional<int>& value, int limit)
{
    return value && *value > limit;
}

bool isOutside(const std::optional<int>& value, int low, int high)
{
    return value && (*value < low || *value > high);
}

}  // namespace

RestingWarning warningFor(const RestingReading& reading, const RestingLimits& limits)
{
    return {isAbove(reading.heartRate, limits.heartRate), isAbove(reading.systolic, limits.systolic), isAbove(reading.diastolic, limits.diastolic)};
}

std::optional<const char*> faultyLimitOf(const RestingLimits& limits)
{
    if (limits.heartRate < 40 || limits.heartRate > 200) {
        return "heart_rate";
    }
    if (limits.systolic < 90 || limits.systolic > 250) {
        return "systolic";
    }
    if (limits.diastolic < 50 || limits.diastolic > 150 || limits.diastolic >= limits.systolic) {
        return "diastolic";
    }
    return std::nullopt;
}

std::optional<const char*> faultyFieldOf(const RestingReading& reading)
{
    if (isOutside(reading.heartRate, 20, 250)) {
        return "heart_rate";
    }
    if (isOutside(reading.systolic, 50, 300)) {
        return "systolic";
    }
    const bool isCrossed = reading.systolic && reading.diastolic && *reading.diastolic >= *reading.systolic;
    return isOutside(reading.diastolic, 20, 200) || isCrossed ? std::optional("diastolic") : std::nullopt;
}

}  // namespace chalk::clients
