#include "core/plateau/evidence.h"

#include "core/plateau/detector.h"
#include "core/plateau/detector_figures.h"

#include <algorithm>
#include <cmath>

namespace chalk::plateau {

namespace {

using Rows = std::span<const CleanExposure>;

template <class Condition>
int countIf(Rows rows, Condition&& condition)
{
    return static_cast<int>(std::count_if(rows.begin(), rows.end(), condition));
}

double percentOf(double slope)
{
    constexpr double kPerCent = 100;
    return kPerCent * std::expm1(slope);
}

std::optional<WeeklyChange> changeOf(const std::optional<TrendReading>& trend)
{
    if (!trend) {
        return std::nullopt;
    }
    const double reach = kFigures.fall * trend->error;
    return WeeklyChange{percentOf(trend->slope), percentOf(trend->slope - reach), percentOf(trend->slope + reach)};
}

/// The rows from the first that the trend looks at.
Rows sinceWindow(Rows segment, const std::vector<ClockedExposure>& window)
{
    return window.empty() ? segment : Rows(window.front().exposure, segment.data() + segment.size());
}

OtherCauses otherCausesOf(Rows segment, const std::vector<ClockedExposure>& window, const CheckDay& check)
{
    const Rows rows = sinceWindow(segment, window);
    OtherCauses causes;
    causes.plannedSessions = check.plannedSessions;
    causes.attendedSessions = check.attendedSessions;
    for (std::size_t i = 1; i < rows.size(); ++i) {
        causes.longestGapDays = std::max(causes.longestGapDays, rows[i].date - rows[i - 1].date);
    }
    const Rows last = segment.last(std::min(segment.size(), kFigures.painMemory));
    causes.painful = countIf(last, [](const CleanExposure& row) { return row.has(EntryMark::Pain); });
    causes.lighter = countIf(rows, [](const CleanExposure& row) { return row.has(EntryMark::LighterWeek) || row.has(EntryMark::Light); });
    causes.ofVariation = static_cast<int>(segment.size());
    return causes;
}

/// Days of training between the first and the last exposure of a window that are missing: one at least, since weeks are sums of sevenths.
int daysShortOf(const std::vector<ClockedExposure>& window)
{
    constexpr double kDaysOfAWeek = 7;
    const double weeks = window.back().week - window.front().week;
    return std::max(1, static_cast<int>(std::lround((kFigures.trendNeedsWeeks - weeks) * kDaysOfAWeek)));
}

Shortage shortageIn(Rows segment, const std::vector<ClockedExposure>& window)
{
    Shortage shortage;
    shortage.valid = countIf(segment, [](const CleanExposure& row) { return row.isValid; });
    shortage.used = static_cast<int>(window.size());
    const int forLever = static_cast<int>(kFigures.leverNeeds) - shortage.valid;
    const int forTrend = static_cast<int>(kFigures.trendNeeds) - shortage.used;
    shortage.toCome = std::max({0, forLever, forTrend});
    shortage.daysToCome = shortage.toCome == 0 ? daysShortOf(window) : 0;
    return shortage;
}

std::vector<LeftOutExposure> leftOutOf(Rows segment)
{
    std::vector<LeftOutExposure> leftOut;
    for (const CleanExposure& row : segment) {
        if (!row.marks.empty()) {
            leftOut.push_back({row.row, row.date, row.marks});
        }
    }
    return leftOut;
}

}  // namespace

PlateauEvidence evidenceFor(const Judgement& judgement, std::span<const CleanExposure> log, const CheckDay& check)
{
    PlateauEvidence evidence;
    const Rows segment = segmentOn(log, check.date);
    const auto used = trainingClockOf(segment);
    const auto window = trendWindowOf(used, check.date);
    if (judgement.lever) {
        evidence.missed = MissedTargets{judgement.lever->misses, static_cast<int>(kFigures.recent), judgement.lever->usualShare};
    }
    evidence.change = changeOf(judgement.trend);
    evidence.longChange = changeOf(trendReadingOf(lastWeeksOf(used, check.date, kFigures.longTrendWeeks)));
    if (!segment.empty()) {
        evidence.stage = segment.back().stage;
        evidence.followsPlan = segment.back().followsPlan;
    }
    evidence.best = bestReadingOf(segment, check.date);
    if (judgement.verdict != PlateauVerdict::NotEnoughData) {
        evidence.otherCauses = otherCausesOf(segment, window, check);
    } else if (!judgement.z) {
        evidence.shortage = shortageIn(segment, window);
    }
    if (judgement.reason == PlateauReason::BackFromBreak) {
        evidence.pause = recentBreakOf(segment);
        evidence.toComeAfterPause = static_cast<int>(kFigures.afterBreak) - evidence.pause->exposures;
    }
    evidence.leftOut = leftOutOf(segment);
    return evidence;
}

}  // namespace chalk::plateau
