#pragma once

#include <cstddef>

namespace chalk::plateau {

/// Every figure of the plateau detector. Chosen on simulated histories, with noise and gains taken from published studies of strength
/// tests and of reps in reserve; nothing here was measured on real clients. Changing one changes how often a client who progresses is
/// called stalled, so the whole is measured anew before one changes.
struct DetectorFigures {
    // Cleaning: which exposures count.
    double lightShare = 0.82;              ///< a target load below this share of the usual one is a light session
    std::size_t lightMemory = 3;           ///< the usual target load is the median of so many
    int lightRunAccepted = 3;              ///< so many light sessions in a row are the new level
    double loadShareLowest = 0.7;          ///< a logged load below this share of its target is looked at again
    double loadShareHighest = 1.4;         ///< and one above this
    int repsMost = 30;                     ///< more reps than these are looked at again
    int repsOverTargetMost = 6;            ///< and more than so many beyond the target
    int reserveMost = 7;                   ///< reps in reserve are 0 to this; others count as not recorded
    double jump = 0.22;                    ///< natural logarithm: an index so far from the usual one is looked at again
    std::size_t jumpMemory = 6;            ///< the usual index is the median of so many
    std::size_t jumpNeeds = 3;             ///< and is known from so many on
    int jumpRunAccepted = 3;               ///< so many jumps the same way in a row are another variation
    int restGraceSeconds = 20;             ///< a rest may be longer than its target by this
    double restGraceShare = 0.25;          ///< or by this share of it, whichever is more

    // Index: what the first set says about strength.
    double repsOfDoubling = 30;            ///< 1RM = load (1 + reps / 30) (Epley)
    double reserveAfterMiss = 0.7;         ///< reps in reserve of a first set that missed its target, where none are recorded
    double reserveBeforeMiss = 1.5;        ///< where only a later set missed
    double reserveUnknown = 2.5;           ///< where nothing is known
    std::size_t reserveMemory = 4;         ///< else the median of so many recorded ones
    double readinessSpread = 0.024;        ///< standard deviation of a day's form, natural logarithm
    double reserveSpread = 0.8;            ///< reps: standard deviation of a report of 0 in reserve
    double reserveSpreadPerRep = 0.25;     ///< reps: more for each one in reserve
    double missSpread = 0.9;               ///< reps, where a set missed and nothing is recorded
    double unknownSpread = 2.0;            ///< reps, where nothing is recorded
    double cappedSpread = 3.0;             ///< reps, from `cappedReserve` on
    int cappedReserve = 5;                 ///< a report of so many in reserve means "many"
    double manyReps = 10;                  ///< beyond so many reps the formula itself gets worse
    double manyRepsSpread = 0.0025;        ///< natural logarithm, for each rep beyond

    // Witness A: the trend of the index.
    int gapMostDays = 10;                  ///< a longer gap counts as so many days of training
    double windowWeeks = 6;                ///< training weeks that are looked back on
    std::size_t windowLeast = 8;           ///< or as far as it takes for so many exposures
    double windowMostWeeks = 10;           ///< but never farther
    std::size_t trendNeeds = 6;            ///< exposures
    double trendNeedsWeeks = 2;            ///< training weeks between the first and the last of them
    double smallestGain = 0.0025;          ///< natural logarithm a week: the least gain worth having where strength is the lever
    double strengthShareOfReps = 0.85;     ///< of that gain, where reps are the lever: the rest of the drive builds endurance
    double strengthShareOfSets = 0.3;      ///< where sets are
    double strengthShareOfRest = 0.15;     ///< where the rest between them is
    double clamp = 3;                      ///< no witness says more than this
    double longTrendWeeks = 12;            ///< training weeks of the trend that is shown beside it

    // Witness B: targets missed.
    std::size_t leverNeeds = 8;            ///< exposures
    std::size_t recent = 4;                ///< the last ones, which are judged
    std::size_t usual = 16;                ///< at most so many before, which they are compared with
    int missesBeforehand = 1;              ///< misses put in beforehand, so that one who never missed is not alarmed about by the first
    int triesBeforehand = 4;               ///< of so many
    double leverWeight = 0.7;              ///< of witness B beside witness A

    // Gates: when nothing is said.
    int awayDays = 14;                     ///< a last exposure longer ago than this: away
    int breakDays = 14;                    ///< a gap of so many days is a break
    std::size_t afterBreak = 3;            ///< exposures after a break before anything is said
    std::size_t painMemory = 5;            ///< of so many exposures
    int painMost = 2;                      ///< so many with pain are too many
    double attendance = 0.5;               ///< less than this share of the planned sessions of 28 days is too little
    std::size_t newVariation = 10;         ///< a later variation is new for fewer exposures than these

    // Veto: a new best.
    int leverBestDays = 10;                ///< one in the lever of the stage holds so long
    int indexBestDays = 7;                 ///< one of the smoothed index
    double smoothing = 0.3;                ///< of that index (exponentially weighted moving average)

    // Verdict.
    double alarm = 0.5;                    ///< from here on a lift is called stalled
    double likely = 1.25;                  ///< and likely so
    double strong = 2.5;                   ///< and strongly so
    double watch = -0.75;                  ///< from here on it is worth watching
    double fall = 1.645;                   ///< a loss of so many standard errors is a fall: one-sided, 95 %

    // How long a load step takes.
    double weeklyGain = 0.009;             ///< usual gain in a week before a stall, share of the load
};

inline constexpr DetectorFigures kFigures{};

}  // namespace chalk::plateau
