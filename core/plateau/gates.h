#pragma once

#include "core/plateau/judgement.h"
#include "core/plateau/logged_exposure.h"

#include <optional>
#include <span>

namespace chalk::plateau {

/// A break of training and what came after it.
struct TrainingBreak {
    int days = 0;        ///< from the last exposure before it to the first one after
    int exposures = 0;   ///< since, that one included
};

/// The last break of a segment that is so recent that nothing is said yet.
[[nodiscard]] std::optional<TrainingBreak> recentBreakOf(std::span<const CleanExposure> segment);

/// Why a segment is too short to be judged.
[[nodiscard]] PlateauReason shortageOf(std::span<const CleanExposure> segment);

/// Why a segment, which has enough exposures, is not judged on a day; None where it is. The first of the reasons in their order.
[[nodiscard]] PlateauReason gateOf(std::span<const CleanExposure> segment, const CheckDay& check);

}  // namespace chalk::plateau
