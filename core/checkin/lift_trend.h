#pragma once

#include "core/analysis/best_single.h"
#include "core/checkin/check_in.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace chalk::checkin {

/// What one entry of a lift's log says to a trend.
struct LiftDay {
    base::Date date;
    std::optional<analysis::BestSingle> single;
    progression::Prescription after;  ///< for the next exposure
    bool isSwap = false;              ///< from here on it is another exercise
    bool isLighter = false;           ///< begins a lighter week
};

/// A lift and its whole log.
struct TrendedLift {
    base::LiftId lift;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    std::string name;
    base::MassUnit unit = base::MassUnit::Kilogram;
    lifts::Measure measure = lifts::Measure::Reps;
    base::Metres metresPerRep;  ///< that count as one repetition of a carry
    std::vector<LiftDay> days;  ///< by date, from the first entry on
};

/// What a lift was to do from a day on, until the next step.
struct TargetStep {
    base::Date from;
    base::Sets sets;
    base::Reps repsLow;   ///< in repetitions whatever the measure
    base::Reps repsHigh;
    base::Seconds rest;

    /// Whether the numbers are those of another step, its day aside.
    [[nodiscard]] bool isLike(const TargetStep& other) const;
    bool operator==(const TargetStep&) const = default;
};

/// Estimated singles that a line is drawn of: two make no course (common practice).
inline constexpr int kSinglesOfALine = 3;

/// How a lift went over some weeks.
struct LiftTrend {
    base::LiftId lift;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    std::string name;
    base::MassUnit unit = base::MassUnit::Kilogram;
    lifts::Measure measure = lifts::Measure::Reps;
    base::Metres metresPerRep;  ///< that count as one repetition of a carry
    /// The best of each ISO week by its median, with the day it is from. Estimates, not tested maxima; of the mass that is moved, the
    /// body's share in it where the lift uses body mass. From before a swap of the exercise there are none, as they do not compare.
    std::vector<EstimatePoint> singles;
    int estimates = 0;                 ///< exposures that an estimate could be made of, before the best of each week was taken
    std::vector<TargetStep> targets;   ///< the first from the first day of the span on, if there was one then; by date
    progression::Stage stage = progression::Stage::Pattern;  ///< at the end
    std::optional<base::Date> loadedSince;   ///< the day that led to its first prescription with a load, however long ago
    std::optional<base::Date> buildSince;    ///< the same of the first beyond Base load: until then reps and rest are held still

    /// Whether there is enough for a line of singles.
    [[nodiscard]] bool hasLine() const { return estimates >= kSinglesOfALine; }
};

/// Over `days`; what comes after them is left out.
[[nodiscard]] LiftTrend liftTrendOf(const TrendedLift& record, const DayRange& days);

}  // namespace chalk::checkin
