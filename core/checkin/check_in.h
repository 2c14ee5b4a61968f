#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/base/load.h"
#include "core/checkin/choice_reason.h"
#include "core/lifts/exercise.h"
#include "core/plateau/evidence.h"
#include "core/plateau/judgement.h"
#include "core/progression/event.h"
#include "core/progression/prescription.h"
#include "core/progression/stage.h"
#include "core/sessions/session.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::checkin {

/// What a check-in finds about a client, the worst first: the order of the queue.
enum class FindingKind : std::uint8_t {
    Pain,        ///< a lift is on hold
    Clearance,   ///< loaded work waits for it, or will
    Plateau,     ///< a lift is judged stalled or regressing, or its rules say so
    Direction,   ///< the talk about what comes after the beginner months is due, or the review of a plan
    Attendance,  ///< too many sessions missed, or not seen for long
    Rescreen,    ///< a lift is to be screened again
    OnCourse
};

inline constexpr std::array kFindingKinds{FindingKind::Pain,       FindingKind::Clearance, FindingKind::Plateau, FindingKind::Direction,
                                          FindingKind::Attendance, FindingKind::Rescreen,  FindingKind::OnCourse};

/// A span of days, both of them in it.
struct DayRange {
    base::Date from;
    base::Date to;

    bool operator==(const DayRange&) const = default;
};

/// The worst that is found about one client.
struct Finding {
    FindingKind kind = FindingKind::OnCourse;
    std::optional<base::LiftId> lift;  ///< that it is about
    /// Of a plateau: since when there is no new best in the lever of the stage, in whole weeks.
    int flatWeeks = 0;
    std::optional<base::Date> planEnd{};  ///< of a direction: the last day of the plan that is to be reviewed

    bool operator==(const Finding&) const = default;
};

/// What a coach can decide about a finding.
enum class ChoiceKind : std::uint8_t {
    LighterWeek,  ///< fewer sets and less load for a week
    Hold,         ///< the same once more
    MoveOn,       ///< to the next stage as things are
    Swap,         ///< an easier or harder neighbour of the exercise
    ByHand,       ///< numbers of the coach's own
    Rescreen,     ///< back to an unloaded screen
    Direction     ///< the talk about what comes next
};

inline constexpr std::array kChoiceKinds{ChoiceKind::LighterWeek, ChoiceKind::Hold,     ChoiceKind::MoveOn,   ChoiceKind::Swap,
                                         ChoiceKind::ByHand,      ChoiceKind::Rescreen, ChoiceKind::Direction};

/// One thing that may be decided about a lift, with what it would lead to.
struct Choice {
    ChoiceKind kind = ChoiceKind::Hold;
    bool isSuggested = false;
    ChoiceReason why = ChoiceReason::None;                 ///< of the suggested one
    std::optional<progression::EventBody> event;      ///< what is written to the lift's log; nothing where nothing is
    std::optional<progression::Prescription> next;    ///< after it, for the next exposure
    std::optional<progression::Prescription> later;   ///< of a lighter week: when the week is over
    std::string exerciseKey;                          ///< of a swap: the other exercise
    /// The lift follows a plan of weeks: holding keeps to it, the direction opens it, a swap and numbers by hand end it for the lift.
    bool followsPlan = false;

    bool operator==(const Choice&) const = default;
};

/// What was decided at a check-in.
struct Decision {
    base::ActId act;  ///< none: not on file yet
    base::ClientId client;
    std::optional<base::LiftId> lift;
    base::Date day;
    FindingKind about = FindingKind::OnCourse;
    ChoiceKind choice = ChoiceKind::Hold;
    std::string note;
    base::Date nextReview;

    bool operator==(const Decision&) const = default;
};

/// A client in the queue of a week.
struct QueueEntry {
    base::ClientId client;
    std::string name;
    Finding finding;
    std::string exerciseKey;            ///< of the lift that it is about; may be empty
    int came = 0;                       ///< to so many of the last `of` sessions
    int of = 0;
    std::optional<Decision> decided;    ///< at this check-in

    bool operator==(const QueueEntry&) const = default;
};

/// An estimated single with its band; an estimate, never a tested maximum.
struct EstimatePoint {
    base::Date date;
    base::Mass lowest;
    base::Mass median;
    base::Mass highest;

    bool operator==(const EstimatePoint&) const = default;
};

struct WeekVolume {
    base::Date monday;
    double volume = 0;  ///< kilograms × repetitions
    int sets = 0;

    bool operator==(const WeekVolume&) const = default;
};

/// A lift in one stage of one cycle.
struct StageStretch {
    DayRange days;
    progression::Stage stage = progression::Stage::Pattern;
    int cycle = 1;

    bool operator==(const StageStretch&) const = default;
};

struct PainMark {
    base::Date date;
    int pain = 0;  ///< 1 to 10

    bool operator==(const PainMark&) const = default;
};

/// All that is known of one lift at a check-in, over the weeks that it looks back on.
struct LiftEvidence {
    base::LiftId lift;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string exerciseKey;
    std::string name;
    base::MassUnit unit = base::MassUnit::Kilogram;
    lifts::Measure measure = lifts::Measure::Reps;
    int pieces = 1;
    progression::Stage stage = progression::Stage::Pattern;
    int cycle = 1;
    bool isOnHold = false;
    progression::Flags flags;
    std::optional<progression::Prescription> next;  ///< for the day of the check-in
    std::vector<EstimatePoint> estimates;           ///< by date
    std::vector<WeekVolume> volume;                 ///< every week, oldest first
    std::vector<StageStretch> stages;               ///< by date, without gaps from the first record on
    std::vector<PainMark> pain;
    std::vector<DayRange> lighterWeeks;             ///< one that runs goes on past the check-in
    std::vector<DayRange> layoffs;                  ///< gaps of 14 days and more between exposures
    std::optional<DayRange> flat;                   ///< from the last new best of the lever to the check-in, of a lift that is stalled
    plateau::Judgement judgement;
    plateau::PlateauEvidence evidence;
    std::optional<double> reserve;                  ///< median of the reps in reserve of the last first sets that have them, see kReserveMemory
    std::optional<double> weeksPerStep;             ///< that the next load step is expected to take with the loads on hand
    std::vector<Choice> choices;                    ///< the suggested one first
};

/// How a client came to a session, 1 to 5 each; nothing where it was not asked.
struct ReadinessPoint {
    base::Date date;
    std::optional<int> sleep;
    std::optional<int> soreness;
    std::optional<int> stress;

    bool operator==(const ReadinessPoint&) const = default;
};

struct AttendanceMark {
    base::Date date;
    sessions::SessionState state = sessions::SessionState::Planned;

    bool operator==(const AttendanceMark&) const = default;
};

inline constexpr int kCheckInWeeks = 12;  ///< that a check-in looks back on
/// Those weeks, whole ones from Monday to Sunday; `day` lies in the last one.
[[nodiscard]] DayRange checkInDays(base::Date day);

/// The page of one client at a check-in.
struct ClientEvidence {
    base::ClientId client;
    std::string name;
    std::optional<int> age;
    std::string goal;
    std::string coachName;
    DayRange days;  ///< that are looked back on: whole weeks, the last one that of the check-in
    std::vector<LiftEvidence> lifts;          ///< in the order shown on the board
    std::vector<ReadinessPoint> readiness;
    std::vector<AttendanceMark> attendance;   ///< by date, of sessions that are over
    Finding finding;
    std::vector<Decision> history;            ///< the latest first
    base::Date nextReview;                    ///< that is suggested
};

/// `pain`, `clearance`, `plateau`, `direction`, `attendance`, `rescreen`, `on_course`.
[[nodiscard]] std::string_view keyOf(FindingKind kind);
[[nodiscard]] std::optional<FindingKind> findingKindOf(std::string_view key);
/// `lighter_week`, `hold`, `move_on`, `swap`, `by_hand`, `rescreen`, `direction`.
[[nodiscard]] std::string_view keyOf(ChoiceKind kind);
[[nodiscard]] std::optional<ChoiceKind> choiceKindOf(std::string_view key);

}  // namespace chalk::checkin
