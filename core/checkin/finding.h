#pragma once

#include "core/checkin/attention.h"
#include "core/checkin/check_in.h"
#include "core/plateau/logged_exposure.h"

#include <span>
#include <vector>

namespace chalk::checkin {

/// What a check-in knows of one lift before it looks closer.
struct JudgedLift {
    base::LiftId lift;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    bool isStalled = false;        ///< see isStalled
    bool isRegressing = false;
    int flatWeeks = 0;             ///< whole weeks since its last new best
    double z = 0;                  ///< of the judgement; 0 where it has none
};

/// Judges a lift by its log, whose rows up to the day count.
[[nodiscard]] JudgedLift judgedLiftOf(base::LiftId lift, const LiftFacts& facts, std::span<const plateau::LoggedExposure> log,
                                      const plateau::CheckDay& check);
/// The same of what is known already.
[[nodiscard]] JudgedLift judgedLiftOf(const LiftEvidence& evidence);

/// The worst finding about a client, of the reasons for attention on the day and of the lifts as they were judged. Of stalled lifts the one that has been flat
/// for longest, of those the one that the witnesses speak against most strongly. `mayTrain`: neither away nor
/// blocked by clearance; else stalls are no finding, as in `attentionFor`.
[[nodiscard]] Finding findingOf(std::span<const AttentionReason> reasons, std::span<const JudgedLift> lifts, bool mayTrain);

/// Whether a client stands in the queue of `day`: nobody does before the review that was last agreed on, but for pain and clearance.
[[nodiscard]] bool isDue(const Finding& finding, std::optional<base::Date> nextReview, base::Date day);

/// Whether `a` stands before `b` in the queue: by the finding in the order of kFindingKinds, the longest flat first, then by name and by client.
[[nodiscard]] bool isBefore(const QueueEntry& a, const QueueEntry& b);

/// Days to the next review that is suggested after a finding: one week where something is to be looked at again soon, two after a plateau, four where
/// all is on course. Common practice.
[[nodiscard]] int reviewDaysAfter(FindingKind kind);

}  // namespace chalk::checkin
