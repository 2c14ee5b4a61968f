#pragma once

#include "core/base/quantity.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace chalk::direction {

/// A zone of intensity and how many repetitions of a lift are done in it in one session.
struct RepZone {
    base::Milli from;        ///< share of the single; counts
    base::Milli to;          ///< counts; 1000 for the highest
    int setLeast = 0;        ///< repetitions of one set …
    int setMost = 0;         ///< … at most
    int totalLeast = 0;      ///< repetitions of all its sets …
    int totalBest = 0;       ///< … the best total …
    int totalMost = 0;       ///< … at most

    bool operator==(const RepZone&) const = default;
};

/// Repetitions by intensity for the strength lifts, as printed: 55 to 65, 70 to 79, 80 to 89 and 90 per cent and more. Source: the table of
/// A. S. Prilepin, from the records of some thousand competition lifters, as given by Laputin N. P. and Oleshko V. G., Managing the Training
/// of Weightlifters, 1982 (read in several secondary prints; one of them gives 4 and 2 to 10 for the highest zone). What lies between the
/// printed zones (66 to 69 per cent, and below 55) has no row.
[[nodiscard]] std::span<const RepZone> repZones();

/// The zone of a share; shares are judged in whole per cent, rounded down. Nothing where the table prints none.
[[nodiscard]] std::optional<RepZone> zoneOf(base::Milli share);

/// Sets of one lift in one session at one share.
struct ZoneWork {
    base::Milli share;
    base::Sets sets;
    base::Reps reps;  ///< of each set
};

/// How a session's total in a zone stands to the printed one.
struct ZoneTotal {
    std::optional<RepZone> zone;  ///< nothing for work that lies in no printed zone
    int reps = 0;
    bool isTotalInside = false;   ///< within totalLeast to totalMost
    bool areSetsInside = false;   ///< every set within setLeast to setMost

    bool operator==(const ZoneTotal&) const = default;
};

/// The totals of a session of one lift, one for each zone that is worked in, the lightest first; work in no zone comes first of all.
[[nodiscard]] std::vector<ZoneTotal> zoneTotals(std::span<const ZoneWork> session);

}  // namespace chalk::direction
