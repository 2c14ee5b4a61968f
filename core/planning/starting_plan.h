#pragma once

#include "core/base/date.h"
#include "core/lifts/equipment.h"
#include "core/planning/session_days.h"
#include "core/progression/screen_start.h"

#include <functional>

namespace chalk::planning {

/// One thing on hand that lifts are loaded with, in the client's unit. Of two of one kind the first is suggested.
struct EquipmentOnHand {
    std::string key;  ///< of the studio's equipment
    lifts::EquipmentKind kind = lifts::EquipmentKind::Barbell;
    lifts::Equipment equipment;
};

/// Where a pattern stands when the plan is made.
struct PatternStanding {
    progression::StartState state = progression::StartState::NotScreened;
    progression::Stage stage = progression::Stage::Pattern;  ///< as chosen by the coach; means something for Starts alone
    std::optional<base::Load> startLoad;                     ///< a first load that the coach wants
};

/// What a plan is made from.
struct PlanRequest {
    base::Date firstDay;  ///< the first session is on this day or later
    SessionHours hours;
    std::vector<EquipmentOnHand> equipment;
    std::vector<lifts::CautionTag> cautions;
    std::array<PatternStanding, lifts::kPatterns.size()> standings;  ///< by pattern
    bool isLoadBlocked = false;                                      ///< clearance is awaited: unloaded work alone
};

enum class PlannedKind : std::uint8_t { Rehearse, Work };

/// Why an exercise was passed over.
enum class PassReason : std::uint8_t {
    NotOnHand,  ///< `kind` is not there
    RuledOut    ///< by `caution`
};

struct PassedOver {
    std::string exerciseKey;
    PassReason reason = PassReason::NotOnHand;
    lifts::EquipmentKind kind = lifts::EquipmentKind::None;       ///< of NotOnHand
    lifts::CautionTag caution = lifts::CautionTag::LowerBack;     ///< of RuledOut

    bool operator==(const PassedOver&) const = default;
};

/// Why this exercise.
enum class ExerciseReason : std::uint8_t {
    FirstChoice,  ///< of the template
    NextChoice,   ///< of the template, after those in passedOver
    NearestFit,   ///< nothing of the template's fits; the nearest of the pattern that does
    Unloaded      ///< no loaded exercise fits: the unloaded one itself
};

/// Why a lift is rehearsed without load.
enum class RehearseReason : std::uint8_t {
    None,         ///< it is not
    NotScreened,
    PatternOpen,  ///< the pattern is not earned
    ControlOpen,  ///< the pauses are not
    LoadBlocked   ///< clearance is awaited
};

enum class FirstLoadReason : std::uint8_t {
    None,             ///< rehearsed
    Lightest,         ///< available
    StartLoad,        ///< as the coach wants it
    NearestUnderStart ///< the equipment cannot give the coach's load: the heaviest under it, or the lightest
};

/// One lift of the plan. It is the same in every session that trains its pattern.
struct PlannedLift {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    PlannedKind kind = PlannedKind::Rehearse;
    progression::Stage stage = progression::Stage::Pattern;
    std::string exerciseKey;                ///< the lift's exercise, loaded once it is earned
    std::string equipmentKey;               ///< of the request; empty for none
    std::string rehearsalKey;               ///< the unloaded exercise that is done meanwhile; empty for Work
    std::optional<base::Load> firstLoad;    ///< for Work alone
    ExerciseReason exerciseReason = ExerciseReason::FirstChoice;
    RehearseReason rehearseReason = RehearseReason::None;
    FirstLoadReason loadReason = FirstLoadReason::None;
    std::vector<PassedOver> passedOver;     ///< better choices of the template, in its order
    std::vector<lifts::CautionTag> cares;   ///< cautions to be minded in what is done now
};

/// Why a pattern is not in the plan.
enum class GapReason : std::uint8_t {
    OnHold,         ///< pain in the screen
    NothingAllowed, ///< `passedOver` names for each exercise the caution or the equipment that takes it away
    NotInTemplate,
    NoDay           ///< only in sessions for which the hours leave no day
};

struct PatternGap {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    GapReason reason = GapReason::OnHold;
    std::vector<PassedOver> passedOver;
};

struct PlannedSession {
    base::Date date;
    int startMinute = 0;                   ///< of the day
    std::size_t session = 0;               ///< of the template
    std::vector<lifts::Pattern> patterns;  ///< in the order in which they are done; those with a gap are left out
};

/// The first two weeks.
struct StartingPlan {
    std::vector<PlannedLift> lifts;      ///< in the order of lifts::kPatterns
    std::vector<PatternGap> gaps;        ///< the same
    std::vector<PlannedSession> sessions;
    WeekOfSessions week;                 ///< the days, what was too close and what found no day

    /// Nothing where the pattern has a gap.
    [[nodiscard]] const PlannedLift* find(lifts::Pattern pattern) const;
};

inline constexpr int kPlanDays = 14;

/// Suggests the first two weeks. The template is sound for the catalogue, and every equipment of the request gives a load.
[[nodiscard]] StartingPlan startingPlanOf(const PlanTemplate& plan, const PlanRequest& request, const lifts::Catalogue& catalogue);

/// Gives the lift of a pattern, or why there is none.
using LiftSource = std::function<tl::expected<PlannedLift, PatternGap>(lifts::Pattern pattern)>;

/// The first two weeks from `firstDay` on, with lifts and days that were chosen already.
[[nodiscard]] StartingPlan planOn(const PlanTemplate& plan, WeekOfSessions week, base::Date firstDay, const LiftSource& liftOf, const lifts::Catalogue& catalogue);

/// What one lift could be done with: every exercise of the pattern that equipment and cautions allow, easiest first. `isUnloaded`
/// asks for the unloaded ones alone.
[[nodiscard]] std::vector<const lifts::Exercise*> allowedExercises(lifts::Pattern pattern, const PlanRequest& request,
                                                                   const lifts::Catalogue& catalogue, bool isUnloaded);

[[nodiscard]] std::string_view keyOf(GapReason reason);
[[nodiscard]] std::string_view keyOf(ExerciseReason reason);
[[nodiscard]] std::string_view keyOf(RehearseReason reason);
[[nodiscard]] std::string_view keyOf(FirstLoadReason reason);

}  // namespace chalk::planning
