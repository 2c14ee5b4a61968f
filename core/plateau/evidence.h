#pragma once

#include "core/plateau/gates.h"
#include "core/plateau/judgement.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace chalk::plateau {

/// Targets missed of late, beside the client's own record.
struct MissedTargets {
    int misses = 0;
    int of = 0;             ///< the last so many
    double usualShare = 0;  ///< see LeverReading
};

/// How fast estimated strength changes, per cent a training week, and the 90 % range of that.
struct WeeklyChange {
    double percent = 0;
    double low = 0;
    double high = 0;
};

/// What else may hold a lift back, over the exposures that the trend looks at: the reader sees by these what is ruled out.
struct OtherCauses {
    int plannedSessions = 0;   ///< of the 28 days up to the check
    int attendedSessions = 0;  ///< of those
    int longestGapDays = 0;    ///< between two exposures
    int painful = 0;           ///< of the last kFigures.painMemory exposures
    int lighter = 0;           ///< lighter exposures, planned or not
    int ofVariation = 0;       ///< exposures since the variation last changed, however long ago
};

/// What is missing before a lift can be judged. Exposures that count for both the lever and the trend are the quickest way.
struct Shortage {
    int valid = 0;        ///< exposures that count for the lever, of kFigures.leverNeeds
    int used = 0;         ///< in the window of the trend, of kFigures.trendNeeds
    int toCome = 0;       ///< exposures that are missing at least
    int daysToCome = 0;   ///< days of training that the trend is short of, where exposures are enough
};

/// An exposure that did not count in full.
struct LeftOutExposure {
    std::size_t row = 0;  ///< its place in the log
    base::Date date;
    std::vector<EntryMark> marks;
};

/// Why a verdict is what it is, as numbers: what is shown of them, and in which words, is for others to say.
struct PlateauEvidence {
    std::optional<MissedTargets> missed;      ///< where the lever could be read
    std::optional<WeeklyChange> change;       ///< over the window of the trend, where it could be read
    std::optional<WeeklyChange> longChange;   ///< over kFigures.longTrendWeeks: shown beside it, part of no verdict
    std::optional<progression::Stage> stage;  ///< of the last exposure: whose lever it is
    bool followsPlan = false;                 ///< the last exposure was one of a plan of weeks: the lever is the single
    BestReading best;
    std::optional<OtherCauses> otherCauses;   ///< where the lift is judged
    std::optional<Shortage> shortage;         ///< of a lift with few exposures or a new variation
    std::optional<TrainingBreak> pause;       ///< what a lift is back from
    int toComeAfterPause = 0;                 ///< exposures before it is judged again
    std::vector<LeftOutExposure> leftOut;     ///< of the segment, by date
};

/// The evidence for a judgement that `judge` made of the same log on the same day.
[[nodiscard]] PlateauEvidence evidenceFor(const Judgement& judgement, std::span<const CleanExposure> log, const CheckDay& check);

}  // namespace chalk::plateau
