#pragma once

#include "core/plateau/confidence.h"
#include "core/plateau/lever_witness.h"
#include "core/plateau/new_best.h"
#include "core/plateau/trend_witness.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace chalk::plateau {

/// What is said of a lift on one day. Progressing is no proof: it says that there is no sign of a stall.
enum class PlateauVerdict : std::uint8_t { Progressing, Stalled, Regressing, NotEnoughData };

inline constexpr std::array kPlateauVerdicts{PlateauVerdict::Progressing, PlateauVerdict::Stalled, PlateauVerdict::Regressing,
                                             PlateauVerdict::NotEnoughData};

/// Why nothing is said, in the order in which it is asked; or why nothing else counts.
enum class PlateauReason : std::uint8_t {
    None,
    NoExposures,
    FewExposures,
    NewVariation,   ///< few exposures of a later variation
    AwayNow,        ///< the last exposure is more than two weeks ago
    BackFromBreak,  ///< fewer than three exposures since two weeks or more without one
    LighterWeek,    ///< the last exposure is a lighter one, planned or not
    Pain,           ///< in two or more of the last five
    Attendance,     ///< fewer than half of the planned sessions
    NewBest         ///< progressing, whatever the witnesses say
};

/// How strongly the witnesses speak.
enum class PlateauStrength : std::uint8_t { Possible, Likely, Strong };

/// A verdict with everything on the way to it. What stands after a reason not to judge is left out.
struct Judgement {
    PlateauVerdict verdict = PlateauVerdict::NotEnoughData;
    PlateauReason reason = PlateauReason::None;
    std::optional<TrendReading> trend;
    std::optional<LeverReading> lever;
    std::optional<double> z;         ///< of both witnesses together; more is less progress
    std::optional<BestReading> best; ///< where nothing forbids to judge
    std::optional<Confidence> confidence;
    std::optional<PlateauStrength> strength;  ///< of a stall or a loss
    bool isWatched = false;                   ///< progressing, but near to a stall
};

/// The keys in files: `not_enough_data`, `back_from_break`, `likely` …; that of no reason is empty, that of a lighter week `deload`.
[[nodiscard]] std::string_view keyOf(PlateauVerdict verdict);
[[nodiscard]] std::string_view keyOf(PlateauReason reason);
[[nodiscard]] std::string_view keyOf(PlateauStrength strength);

}  // namespace chalk::plateau
