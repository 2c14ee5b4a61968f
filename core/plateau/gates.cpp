#include "core/plateau/gates.h"

#include "core/plateau/detector_figures.h"

#include <algorithm>

namespace chalk::plateau {

namespace {

bool isPainful(std::span<const CleanExposure> segment)
{
    const auto last = segment.last(std::min(segment.size(), kFigures.painMemory));
    return std::count_if(last.begin(), last.end(), [](const CleanExposure& row) { return row.has(EntryMark::Pain); }) >= kFigures.painMost;
}

}  // namespace

std::optional<TrainingBreak> recentBreakOf(std::span<const CleanExposure> segment)
{
    for (std::size_t since = 1; since < kFigures.afterBreak && since < segment.size(); ++since) {
        const std::size_t row = segment.size() - since;
        const int days = segment[row].date - segment[row - 1].date;
        if (days >= kFigures.breakDays) {
            return TrainingBreak{days, static_cast<int>(since)};
        }
    }
    return std::nullopt;
}

PlateauReason shortageOf(std::span<const CleanExposure> segment)
{
    return segment.back().segment > 0 && segment.size() < kFigures.newVariation ? PlateauReason::NewVariation : PlateauReason::FewExposures;
}

PlateauReason gateOf(std::span<const CleanExposure> segment, const CheckDay& check)
{
    const CleanExposure& last = segment.back();
    if (check.date - last.date > kFigures.awayDays) {
        return PlateauReason::AwayNow;
    }
    if (recentBreakOf(segment)) {
        return PlateauReason::BackFromBreak;
    }
    if (last.has(EntryMark::LighterWeek) || last.has(EntryMark::Light)) {
        return PlateauReason::LighterWeek;
    }
    if (isPainful(segment)) {
        return PlateauReason::Pain;
    }
    if (check.attendedSessions < kFigures.attendance * check.plannedSessions) {
        return PlateauReason::Attendance;
    }
    return PlateauReason::None;
}

}  // namespace chalk::plateau
