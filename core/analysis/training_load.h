#pragma once

#include "core/base/date.h"

#include <cstdint>
#include <span>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::analysis {

/// The load of one session: effort × minutes, in arbitrary units, 0 or more. sessions::sessionLoad works it out from a report.
struct DayLoad {
    base::Date date;
    int load = 0;

    bool operator==(const DayLoad&) const = default;
};

/// The sums of the loads of each of `days` days from `from` on; 0 on a day without a session. A day whose session was not rated is the same as
/// a day off here: ask only about spans in which all were. Empty where `days` is 0 or less.
[[nodiscard]] std::vector<double> dailyLoads(std::span<const DayLoad> sessions, base::Date from, int days);

/// What a standard deviation divides the squares by: n - 1 or n.
enum class Deviation : std::uint8_t { Sample, Population };

/// Why a figure of training load cannot be given.
enum class NoLoadFigure : std::uint8_t {
    TooFew,     ///< fewer loads than it needs
    NoLoad,     ///< the loads it divides by are 0
    AllTheSame  ///< the loads do not differ, so their deviation is 0
};

/// How much alike the loads of a week are: mean / standard deviation. At least two loads, none negative; a week's days, zeros included, or its
/// sessions. Equal loads have no monotony but an endless one, so none is given. The default, the population's deviation, is the one that comes
/// nearest to the printed example: Foster C. et al. 2001, J Strength Cond Res 15(1):109-115, table 5, prints 1.26, which is the population's
/// over the nine sessions (1.2646); over the seven days it would be 1.21, and by the sample's deviation 1.19 or 1.12. The idea: Foster C. 1998, Med Sci
/// Sports Exerc 30:1164-1168.
[[nodiscard]] tl::expected<double, NoLoadFigure> monotonyOf(std::span<const double> loads, Deviation deviation = Deviation::Population);

/// The sum of the loads × their monotony, in arbitrary units. The table cited above multiplies by the rounded monotony (4284); this does not.
[[nodiscard]] tl::expected<double, NoLoadFigure> strainOf(std::span<const double> loads, Deviation deviation = Deviation::Population);

/// Whether the last week is part of the weeks that it is compared with.
enum class Coupling : std::uint8_t {
    Coupled,   ///< mean of the last 7 days over that of all 28: at most 4
    Uncoupled  ///< mean of the last 7 days over that of the 21 before them
};

/// Acute load over chronic load, by rolling means. `loads` are those of days, oldest first, none negative; at least 28, and the last 28 count.
/// To be shown only with its criticism, and never as a forecast of injury. Where it is coupled, the acute load is in both parts, which makes them
/// correlate with nothing behind it: Lolli L. et al. 2017, Br J Sports Med (mathematical coupling). Impellizzeri F.M. et al. 2020, Sports Med
/// 51:581-592, found an odds ratio for injury of 2.45 with it, 1.95 with the same acute load over a fixed number, 1.16 to 2.07 over random
/// ones, and advise to dismiss it.
[[nodiscard]] tl::expected<double, NoLoadFigure> acuteToChronic(std::span<const double> loads, Coupling coupling);

}  // namespace chalk::analysis
