#pragma once

#include "core/analysis/maximum_formula.h"
#include "core/base/load.h"
#include "core/base/quantity.h"

#include <cstdint>

#include <tl/expected.hpp>

namespace chalk::analysis {

/// The most repetitions that anything is said about.
inline constexpr int kMostReps = 100;
/// The heaviest load or maximum that anything is said about.
inline constexpr base::Mass kMostMass = base::Mass::fromRaw(100'000'000'000'000);  // 10,000 kg

/// Why there is no estimate.
enum class NoEstimate : std::uint8_t {
    LoadOutOfRange,   ///< not above 0 kg, or above kMostMass
    RepsOutOfRange,   ///< below 1, or above kMostReps
    PastPole,         ///< at or past the repetitions where the formula divides by 0
    AboveMaximum,     ///< the load is above the maximum
    AnyReps,          ///< the load is so light that the formula allows any number of repetitions
    BeyondEveryRange  ///< more repetitions than any formula should be used for
};

/// A load that a formula gives.
struct MassEstimate {
    base::Mass mass;        ///< to the nearest tenth of a microgram
    bool isInRange = true;  ///< the repetitions are among those that the formula should be used for

    bool operator==(const MassEstimate&) const = default;
};

/// Repetitions that a formula gives.
struct RepsEstimate {
    double reps = 1;        ///< 1 to kMostReps, not rounded: 5.9 is five, and nearly six
    bool isInRange = true;

    bool operator==(const RepsEstimate&) const = default;
};

/// The load of a single from `reps` repetitions to failure with `load`, the effective one where the lift uses body mass; repetitions in
/// reserve are the caller's to add. One repetition is the single itself, whatever the formula: as printed, Epley, Lander, Mayhew,
/// O'Conner and Wathan would make it 1.3 to 8.9 per cent heavier. Above the formula's range the number is given and marked.
[[nodiscard]] tl::expected<MassEstimate, NoEstimate> estimatedMaximum(base::Mass load, base::Reps reps, Formula formula);

/// The load that somebody with that maximum fails with after `reps` repetitions: the inverse of the above, one repetition included.
[[nodiscard]] tl::expected<MassEstimate, NoEstimate> loadFor(base::Mass maximum, base::Reps reps, Formula formula);

/// The repetitions to failure at a load. 1 for the maximum itself and for loads so near to it that the formula gives less than 1.
[[nodiscard]] tl::expected<RepsEstimate, NoEstimate> repsAt(base::Mass load, base::Mass maximum, Formula formula);

/// What the formulas say together.
struct MaximumBand {
    base::Mass lowest;
    base::Mass median;
    base::Mass highest;
    int formulas = 0;  ///< how many are in range: 7 up to 10 repetitions, 3 for 11 and 12

    bool operator==(const MaximumBand&) const = default;
};

/// The band of the formulas that should be used for so many repetitions. It shows how far the equations differ, not how far the person
/// may: single estimates err by some ten per cent (Hutchins and Gearhart 2010, cited at second hand).
[[nodiscard]] tl::expected<MaximumBand, NoEstimate> maximumBand(base::Mass load, base::Reps reps);

}  // namespace chalk::analysis
