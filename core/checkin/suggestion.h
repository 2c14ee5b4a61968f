#pragma once

#include "core/checkin/check_in.h"

#include <optional>
#include <vector>

namespace chalk::checkin {

/// The figures by which one choice is suggested. All of them are common practice in the trade, none is a published rule, and the coach decides.
struct SuggestionFigures {
    double lowAttendance = 0.75;   ///< of the planned sessions of 28 days: with less, coming is first
    int readinessDays = 14;        ///< that signs of fatigue are looked for in
    std::size_t readinessNeeds = 2;///< answers in them
    double badSleep = 2.5;         ///< mean of 1 bad to 5 good, or less
    double soreOrStressed = 3.5;   ///< mean of 1 none to 5 much, or more
    double hardReserve = 1;        ///< reps in reserve, or less
    int lighterWeekDays = 42;      ///< since the last lighter week: before that another one is not suggested
    int manyStalls = 2;            ///< lifts
    int manyStallsDays = 90;       ///< since the first load
    int learningDays = 42;         ///< in a learning stage without ever having been loaded
};

/// What is known of a client beside the lift.
struct ClientSigns {
    int plannedSessions = 0;       ///< of the 28 days up to the check-in
    int attendedSessions = 0;      ///< of those
    std::vector<ReadinessPoint> readiness;
    int stalledLifts = 0;          ///< the lift itself included
    std::optional<base::Date> firstLoad;
    bool isDirectionSettled = false;  ///< a plan runs, or the talk was had of late: see checkin::isDirectionSettled
    bool isPlanToReview = false;      ///< a plan is over and nothing was decided since: see checkin::planToReview
};

/// Which exercises could take the place of a lift's.
struct SwapsAtHand {
    bool hasEasier = false;
    bool hasHarder = false;
};

struct Suggestion {
    ChoiceKind kind = ChoiceKind::Hold;
    ChoiceReason why = ChoiceReason::OnCourse;
    bool isHarder = false;  ///< of a swap

    bool operator==(const Suggestion&) const = default;
};

/// What is suggested for a lift, the first that holds:
/// on hold because of pain: an unloaded screen. Who has pain that stays belongs to a physician or physiotherapist; no choice here is a treatment.
/// a layoff asks for a screen, or weeks in a learning stage without ever having been loaded: a screen.
/// a plan is over and waits for its review: the talk about the direction.
/// stalled, and too few sessions come to: hold, coming is first.
/// falling: a lighter week; where there was one of late, an easier exercise.
/// stalled, tired or next to nothing in reserve, no lighter week of late: a lighter week.
/// two lifts or more stalled after three months: the talk about the direction.
/// stalled after a lighter week, or with reps in reserve: on to the next stage; from the last stage to a harder exercise, where one is at hand.
/// else: carry on as it is.
[[nodiscard]] Suggestion suggestionFor(const LiftEvidence& lift, const ClientSigns& client, const SwapsAtHand& swaps, base::Date day,
                                       const SuggestionFigures& figures = {});

}  // namespace chalk::checkin
