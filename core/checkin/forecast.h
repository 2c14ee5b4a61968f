#pragma once

#include "core/checkin/lift_evidence.h"

#include <cstdint>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::checkin {

/// The pace at which a lift is taken to go on; all of it from the client's own record.
struct ForecastPace {
    double exposuresPerWeek = 0;
    double madeShare = 1;        ///< of the exposures that met what was asked for, 0 to 1
    double weeklyPercent = 0;    ///< change of the estimated single in a week

    bool operator==(const ForecastPace&) const = default;
};

/// Where a lift would stand at the end of a week.
struct ForecastPoint {
    progression::Stage stage = progression::Stage::BaseLoad;
    int cycle = 1;
    base::Load load;
    base::Sets sets;
    base::Reps reps;             ///< the least that is asked for
    base::Seconds rest;
    base::Mass single;           ///< estimated

    bool operator==(const ForecastPoint&) const = default;
};

struct ForecastWeek {
    base::Date monday;
    ForecastPoint slow;
    ForecastPoint expected;
    ForecastPoint fast;

    bool operator==(const ForecastWeek&) const = default;
};

inline constexpr int kForecastWeeks = 12;

/// A forecast of one lift, not a promise: what the rules would ask for, week by week, if it went on as it has.
struct Forecast {
    ForecastPace slow;
    ForecastPace expected;
    ForecastPace fast;
    base::Mass single;                ///< estimated, that it sets out from
    std::vector<ForecastWeek> weeks;  ///< the coming ones, the next week first
};

/// Why there is no forecast.
enum class NoForecast : std::uint8_t {
    OnHold,
    NotLoaded,      ///< still learning
    NoSingle,       ///< holds and carries have no estimated single, nor has a lift whose body mass alone is moved and not known
    FewExposures,   ///< `missing` more are needed
    Away            ///< the last exposure is more than two weeks ago
};

struct ForecastLack {
    NoForecast why = NoForecast::FewExposures;
    int missing = 0;

    bool operator==(const ForecastLack&) const = default;
};

/// So many exposures with an estimate in the weeks that a check-in looks back on are needed for a forecast, over so many weeks at least. Common practice:
/// two a week for a month; with fewer the pace is a guess.
inline constexpr int kForecastNeeds = 8;
inline constexpr int kForecastNeedsWeeks = 4;

/// Runs the lift's rules over the coming weeks. The expected pace is that of the weeks that the check-in looks back on; the slow and the fast one take the
/// fewest and the most exposures a week of its spans of four weeks with any, the least and the greatest share of targets met in them, and the ends of the
/// 90 % range of the trend of estimated strength. In each exposure the client makes the repetitions that the estimated single allows at the load (Epley's
/// equation, see analysis::repsAt) with what is to be held in reserve, at most what is asked for; where more targets were met than the share says, one
/// less than the least, but for loads so light that the single allows two repetitions more than are asked for. A lift that is sent back to learning stays there. Nothing is left to chance. `evidence` is that of the record on the day.
[[nodiscard]] tl::expected<Forecast, ForecastLack> forecastOf(const LiftRecord& record, const LiftEvidence& evidence, base::Date day);

/// `on_hold`, `not_loaded`, `no_single`, `few_exposures`, `away`.
[[nodiscard]] std::string_view keyOf(NoForecast why);

}  // namespace chalk::checkin
