#pragma once

#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/lifts/equipment.h"

#include <optional>

namespace chalk::progression {

/// What a set at a planned load showed.
struct PlannedSetResult {
    base::Load load;          ///< effective, above 0: with the share of body mass that the lift moves
    base::Reps reps;          ///< done, 0 or more
    std::optional<int> reserve;  ///< repetitions left, 0 to 10; nothing where it was not asked
};

/// Repetitions to failure up to which the chart is one in all prints, and estimates are at their best.
inline constexpr int kSureReps = 10;
/// The chart's last row.
inline constexpr int kMostChartReps = 15;

/// The single that a set speaks for.
struct SpokenLoad {
    base::Load load;
    bool isRough = false;    ///< by more than kSureReps repetitions to failure
    bool isAtLeast = false;  ///< by more than kMostChartReps: the single is that or more

    bool operator==(const SpokenLoad&) const = default;
};

/// The single that a set speaks for, by the published chart at the repetitions done and those left: lifts::chartShare up to kSureReps, then 70 per cent
/// at 11, 67 at 12 and 65 at 15 (Haff and Triplett 2016, table 17.7; the row for 12 is from memory), and along the line at 13 and 14, where the table
/// prints none. Rough past kSureReps: prints differ there. Past the last row the single is at least what that row says. Nothing where the reserve is
/// not known or no repetition was done.
[[nodiscard]] std::optional<SpokenLoad> spokenFor(const PlannedSetResult& set);

/// The estimate after an exposure of a plan: half of the way to the single that its best set spoke for, but not more than 2.5 per cent up and
/// 5 per cent down at once. The rule is Chalkrung's own, so that one good or bad day does not turn a plan over; steps of 2 to 10 per cent are what is
/// published for loads (American College of Sports Medicine 2009, Med Sci Sports Exerc 41:687-708). `estimate` above 0.
[[nodiscard]] base::Load estimateAfter(base::Load estimate, base::Load spoken);

/// The load for a share of the single: the heaviest available one whose effective load is not above it; the lightest where none is.
/// `bodyPart` is the share of body mass that the lift moves, in the lift's unit.
[[nodiscard]] base::Load loadAt(base::Load single, base::Milli share, const lifts::LoadTable& loads, base::Load bodyPart = {});

}  // namespace chalk::progression
