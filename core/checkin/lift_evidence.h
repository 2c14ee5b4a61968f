#pragma once

#include "core/checkin/check_in.h"
#include "core/plateau/cleaning.h"
#include "core/progression/lift_machine.h"

#include <span>
#include <string>
#include <vector>

namespace chalk::checkin {

/// A lift with its history; the values are the caller's and only read.
struct LiftRecord {
    base::LiftId lift;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string name;                           ///< of its exercise, for people
    const progression::LiftMachine* fresh = nullptr;  ///< as it was set up, before the first event
    std::span<const progression::Event> events; ///< by date; those after the day of a check-in are not looked at
};

/// Whether a lift is stalled: judged so or regressing, or flagged by its rules; never one on hold.
[[nodiscard]] bool isStalled(const plateau::Judgement& judgement, progression::Flags flags, bool isOnHold);

/// Since the last new best in the lever of the stage, or since the variation began where there was none; nothing without an exposure up to the day.
[[nodiscard]] std::optional<DayRange> flatSinceBest(std::span<const plateau::CleanExposure> log, base::Date day);

/// Gaps of so many days and more between two exposures, or between the last one and the check-in, are layoffs. The rules of progression look at
/// the same (G-1).
inline constexpr int kLayoffDays = 14;

/// How many of the last exposures with reps in reserve say how hard a lift is done.
inline constexpr std::size_t kReserveMemory = 4;

/// Everything about one lift at a check-in but the choices. Estimates, volume, pain and spans are those of `checkInDays`; the judgement is made of the
/// whole log.
[[nodiscard]] LiftEvidence liftEvidenceOf(const LiftRecord& record, const plateau::CheckDay& check);

}  // namespace chalk::checkin
