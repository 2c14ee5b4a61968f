#pragma once

#include "core/base/date.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include <tl/expected.hpp>

namespace chalk::checkin {

/// A session that took place, with its load by the session-RPE method (sessions::sessionLoad).
struct SessionEffort {
    base::Date date;
    std::optional<int> load;  ///< arbitrary units; nothing where effort or minutes were not asked

    bool operator==(const SessionEffort&) const = default;
};

/// Why a week has no monotony.
enum class NoMonotony : std::uint8_t {
    NotOver,    ///< the week is not over
    NoSession,  ///< nothing took place
    Unrated,    ///< of a session nothing is known, or all were rated as rest
    AllTheSame  ///< every day had the same load, so the deviation is 0 and the monotony has no end
};

/// The session load of an ISO week.
struct WeekLoad {
    int load = 0;     ///< the sum of the rated sessions, arbitrary units
    int rated = 0;
    int unrated = 0;  ///< took place without effort or minutes: the load is too low by theirs
    std::optional<double> monotony;  ///< of the seven days, days off as 0, by the population's standard deviation
    std::optional<double> strain;    ///< load × monotony, arbitrary units
    std::optional<NoMonotony> why;   ///< where there is no monotony

    bool operator==(const WeekLoad&) const = default;
};

/// From here on the days of a week are called too much alike. Common practice, quoted at second hand, after Foster C. 1998, Med Sci Sports Exerc
/// 30:1164-1168, who found thresholds of each athlete's own rather than one for everybody.
inline constexpr double kTooMuchAlike = 2.0;

/// Of the week from `monday` on, as it stands on `day`.
[[nodiscard]] WeekLoad weekLoadOf(std::span<const SessionEffort> sessions, base::Date monday, base::Date day);

/// The last finished week over the weeks before it; see analysis::acuteToChronic for its criticism, which goes with it wherever it is shown.
struct LoadRatio {
    base::Date monday;     ///< of that last week
    double uncoupled = 0;  ///< over the mean of the three weeks before it
    double coupled = 0;    ///< over the mean of all four

    bool operator==(const LoadRatio&) const = default;
};

/// Why there is no ratio.
enum class NoRatio : std::uint8_t {
    TooEarly,  ///< nothing took place in the first of the four weeks
    Unrated    ///< of a session in the four weeks nothing is known, or the first three are 0
};

/// By the four finished ISO weeks before the week of `day`. That the first of them must hold a session is common practice: else there is
/// nothing to compare with.
[[nodiscard]] tl::expected<LoadRatio, NoRatio> loadRatioOf(std::span<const SessionEffort> sessions, base::Date day);

/// `not_over`, `no_session`, `unrated`, `all_the_same`.
[[nodiscard]] std::string_view keyOf(NoMonotony why);
/// `too_early`, `unrated`.
[[nodiscard]] std::string_view keyOf(NoRatio why);

/// The Monday of the ISO week that a day lies in.
[[nodiscard]] base::Date mondayOf(base::Date day);

}  // namespace chalk::checkin
