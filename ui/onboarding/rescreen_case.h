#pragma once

#include "core/progression/rescreen.h"
#include "core/store/client_reader.h"

#include <optional>

namespace chalk::ui::onboarding {

/// What the movement step knows of earlier screens.
struct RescreenCase {
    std::optional<screens::MovementScreen> before;   ///< the last finished one before the one on show
    std::optional<progression::RescreenDue> due;     ///< of a client who was screened already
};

/// Reads it; `shown` is the newest screen, which is on show. A fault of the file is an error.
[[nodiscard]] store::Result<RescreenCase> readRescreenCase(store::Database& database, const store::ClientFile& file,
                                                           const std::optional<screens::MovementScreen>& shown, base::Date today);

}  // namespace chalk::ui::onboarding
