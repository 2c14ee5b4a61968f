#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/lifts/pattern.h"

#include <optional>
#include <vector>

namespace chalk::sessions {

/// A lift that a session may hold.
struct LiftCandidate {
    base::LiftId lift;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::optional<base::Date> lastTrained;  ///< the last exposure or rehearsal, whatever came of it
};

/// How many lifts a session holds where nobody planned it: what fits on one card. Common practice is four to six.
inline constexpr std::size_t kLiftsOfSession = 5;

/// The lifts of a session that nobody planned: those that have waited longest, in the order of the patterns.
[[nodiscard]] std::vector<base::LiftId> chooseLifts(std::vector<LiftCandidate> candidates, std::size_t most = kLiftsOfSession);

}  // namespace chalk::sessions
