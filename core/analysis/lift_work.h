#pragma once

#include "core/base/load.h"
#include "core/progression/event.h"
#include "core/progression/lift_state.h"

#include <cstdint>
#include <optional>

namespace chalk::analysis {

/// Whether the body's own share of what a lift moves is part of its work.
enum class BodyShare : std::uint8_t { LeftOut, Counted };

/// Work done, summed over working sets.
struct Work {
    base::Mass volume;       ///< Σ repetitions × mass: kilograms × repetitions
    std::int64_t reps = 0;   ///< of the sets in `volume`
    std::int64_t sets = 0;   ///< in `volume`
    std::int64_t unweighed = 0;  ///< sets that are not in `volume`, as the body mass is not known

    /// Average intensity: the mean mass of a repetition; nothing without one.
    [[nodiscard]] std::optional<base::Mass> meanLoad() const;
    Work& operator+=(const Work& other);
    friend Work operator+(Work a, const Work& b) { return a += b; }
    bool operator==(const Work&) const = default;
};

/// The mass that a lift moves with `load`: pieces × load where the body is left out, plus body share × body mass where it is counted
/// (assistance is a load below 0). Not below 0. Nothing where a body share is to be counted and the setup has no body mass. A jump squat of
/// 40 kg at a body mass of 80 kg moves 120 kg (Haff and Triplett (eds.), Essentials of Strength Training and Conditioning, 4th ed. 2016, ch. 17).
[[nodiscard]] std::optional<base::Mass> massMoved(base::Load load, const progression::LiftSetup& setup, const progression::Kit& kit, BodyShare body);

/// The work of one exposure: its sets but for warm-ups. Sets of holds and carries are turned into repetitions by the setup's policy, whole ones.
/// A set that moves no mass adds nothing, neither sets nor repetitions. No set counts for more than 1,000,000 kg × repetitions, so that sums stay in
/// range. With the body left out the volume is the load volume that the roster keeps. Source: Haff G.G. 2010, Quantifying workloads in resistance
/// training, Professional Strength and Conditioning 19:31-40 (Σ sets × repetitions × load).
[[nodiscard]] Work workOf(const progression::Exposure& exposure, const progression::LiftSetup& setup, const progression::Kit& kit, BodyShare body);

/// Density: kilograms × repetitions in a minute; nothing where `minutes` is 0 or less.
[[nodiscard]] std::optional<double> densityOf(base::Mass volume, int minutes);

/// Relative intensity: a load as a share of the single, 0.75 for 75 per cent; above 1 where the single was underestimated. Nothing where
/// `maximum` is 0 or less.
[[nodiscard]] std::optional<double> relativeLoad(base::Mass load, base::Mass maximum);

}  // namespace chalk::analysis
