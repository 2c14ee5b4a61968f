#pragma once

#include "core/analysis/estimated_maximum.h"
#include "core/progression/event.h"
#include "core/progression/lift_state.h"

#include <optional>

namespace chalk::analysis {

/// The single that an exposure speaks for, and the set that it was estimated from.
struct BestSingle {
    MaximumBand band;             ///< of the mass that is moved, the body's share in it where the lift uses body mass
    base::Mass load;              ///< moved in that set
    base::Reps toFailure;         ///< its repetitions, and those in reserve where they were written down
    bool isReserveKnown = false;  ///< else the repetitions were taken for all there were, and the single is that or more

    bool operator==(const BestSingle&) const = default;
};

/// The set with the highest median of the formulas; of equal ones the first. Warm-ups, sets without a mass, sets that lost their form, and those with
/// more repetitions to failure than any formula should be used for are left out. Nothing where no set is left, and for holds and carries.
/// An estimate, not a tested maximum.
[[nodiscard]] std::optional<BestSingle> bestSingle(const progression::Exposure& exposure, const progression::LiftSetup& setup,
                                                   const progression::Kit& kit);

}  // namespace chalk::analysis
