#pragma once

#include "core/clients/resting_reading.h"
#include "core/store/conflict.h"

#include <QJsonObject>

namespace chalk::store {

/// What a studio has set for itself. What it has not set has its stated default.
class StudioSettings {
public:
    explicit StudioSettings(Database& database) : m_database(database) {}

    /// A setting that cannot be read is a fault of the file.
    [[nodiscard]] Result<clients::RestingLimits> restingLimits();
    /// Refused outside of the ranges of faultyLimitOf, and as a Conflict where they are no longer those that were seen.
    [[nodiscard]] Result<void> setRestingLimits(const clients::RestingLimits& limits, const std::optional<clients::RestingLimits>& seen = {});

    /// Settings with these limits and nothing else.
    [[nodiscard]] static QJsonObject written(const clients::RestingLimits& limits);

private:
    Database& m_database;
};

}  // namespace chalk::store
