#pragma once

#include "core/checkin/trends.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace chalk::checkin {

/// A kind of number that trends are made of.
enum class FigureKind : std::uint8_t {
    LoadVolume,       ///< of a pattern in a week, mass × repetitions
    Came,             ///< sessions of a week
    Counted,          ///< sessions of a week that were come to, missed or called off late
    SessionLoad,      ///< of a week, arbitrary units
    Monotony,         ///< of a week
    Strain,           ///< of a week, arbitrary units
    EstimatedSingle,  ///< of a lift, with its lowest and highest
    TargetSets,       ///< of a lift from a day on
    TargetReps,       ///< the same, with the lowest and highest where it is a range
    TargetRest,       ///< the same, in seconds
    LoadRatio,        ///< the last finished week over the three before it
    LoadRatioCoupled  ///< the last finished week over the four that end with it
};

inline constexpr std::array kFigureKinds{FigureKind::LoadVolume,      FigureKind::Came,       FigureKind::Counted,    FigureKind::SessionLoad,
                                         FigureKind::Monotony,        FigureKind::Strain,     FigureKind::EstimatedSingle, FigureKind::TargetSets,
                                         FigureKind::TargetReps,      FigureKind::TargetRest, FigureKind::LoadRatio,  FigureKind::LoadRatioCoupled};

/// One number of a chart.
struct TrendFigure {
    FigureKind kind = FigureKind::LoadVolume;
    base::Date day;                          ///< the Monday of a week's number
    std::optional<lifts::Pattern> pattern;   ///< of a load volume, and of a lift's number
    std::optional<std::size_t> lift;         ///< an index of the trends' lifts
    double value = 0;
    std::optional<double> low;
    std::optional<double> high;

    bool operator==(const TrendFigure&) const = default;
};

/// A mass in a unit, not rounded.
[[nodiscard]] double massIn(base::Mass mass, base::MassUnit unit);

/// All numbers of the charts, those of a kind together and by date; masses in `unit`, those of a lift in its own. Weeks without a number have none.
[[nodiscard]] std::vector<TrendFigure> figuresOf(const Trends& trends, base::MassUnit unit);
/// Those of the weeks of everybody together, in kilograms.
[[nodiscard]] std::vector<TrendFigure> figuresOf(const StudioTrends& trends);

/// `load_volume`, `came`, `counted`, `session_load`, `monotony`, `strain`, `estimated_single`, `target_sets`, `target_reps`, `target_rest`, `load_ratio`,
/// `load_ratio_coupled`.
[[nodiscard]] std::string_view keyOf(FigureKind kind);

}  // namespace chalk::checkin
