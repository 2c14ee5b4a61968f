#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/direction/direction.h"
#include "core/direction/published_range.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::direction {

inline constexpr int kLeastWeeks = 8;
inline constexpr int kMostWeeks = 16;
inline constexpr int kUsualWeeks = 12;
/// Every week of this number and its multiples is a lighter one (mesocycles of 4 weeks are usual: Haff and Triplett 2016, table 21.1).
inline constexpr int kLighterEvery = 4;

/// How loads change through a strength plan. Neither is better as far as reviews can tell (Harries 2015: 17 studies, 510 people).
enum class Wave : std::uint8_t {
    Linear,      ///< from week to week
    Undulating   ///< from session to session of a week
};

enum class Phase : std::uint8_t { Base, Build, Peak, Test };

enum class WeekKind : std::uint8_t { Work, Lighter, Test };

/// What a lift is in a plan.
enum class LiftRole : std::uint8_t {
    Main,        ///< leads its day
    Assistance,  ///< beside it
    Upkeep       ///< kept up at lighter loads
};

/// A lift as a plan is made from it.
struct PlannedLift {
    base::LiftId lift;
    LiftRole role = LiftRole::Main;
    int exposures = 2;   ///< a week, 1 to the sessions of a week

    bool operator==(const PlannedLift&) const = default;
};

/// What a plan is made from.
struct PlanWishes {
    Direction direction = Direction::Strength;
    Wave wave = Wave::Linear;         ///< of a strength plan
    int weeks = kUsualWeeks;          ///< kLeastWeeks to kMostWeeks
    int sessionsAWeek = 3;            ///< 1 to 7
    bool endsWithTest = true;         ///< of a strength plan: the last week tests; else it is a week of work
    base::Date start;                 ///< a Monday
    std::vector<PlannedLift> lifts;   ///< at least one

    bool operator==(const PlanWishes&) const = default;
};

/// One exposure of a lift.
struct PlannedWork {
    Aim aim = Aim::Strength;
    SetScheme scheme;
    base::Reps repsMost;   ///< the top of the range that is worked through; scheme.reps where there is no range
    bool isPauseAsked = false;   ///< a pause at the bottom of each repetition: control before load
    bool isTest = false;         ///< in place of it, a test is made

    bool operator==(const PlannedWork&) const = default;
};

/// A week of a plan. Weeks follow each other by their Mondays, with holes where the client is away and the plan was shifted.
struct PlanWeek {
    base::Date monday;
    Phase phase = Phase::Base;
    WeekKind kind = WeekKind::Work;
    /// By lift, in the order of the plan's lifts; for each the exposures of the week in their order.
    std::vector<std::vector<PlannedWork>> work;

    bool operator==(const PlanWeek&) const = default;
};

/// What is planned after the beginner months, for one client.
struct BlockPlan {
    PlanWishes wishes;
    std::vector<PlanWeek> weeks;

    bool operator==(const BlockPlan&) const = default;
};

/// Why no plan can be made.
struct WishFault {
    std::string_view field;   ///< `weeks`, `sessions`, `start`, `lifts`, `exposures`
    std::string_view reason;
};

[[nodiscard]] std::optional<WishFault> faultOf(const PlanWishes& wishes);

/// The phase and the kind of every week of a plan: every fourth a lighter one, but not the one before the last of a plan that ends with a
/// test, so that the peak is not cut in two; the last one the test. The weeks of work are shared out among base, build and peak as 3 : 3 : 2.
struct WeekFrame {
    Phase phase = Phase::Base;
    WeekKind kind = WeekKind::Work;
    int step = 0;    ///< of the weeks of work in its phase, counted from 0
    int steps = 1;   ///< weeks of work in its phase

    bool operator==(const WeekFrame&) const = default;
};
[[nodiscard]] std::vector<WeekFrame> weekFrames(int weeks, bool endsWithTest);

/// The plan for wishes without a fault.
[[nodiscard]] BlockPlan planFor(const PlanWishes& wishes);

[[nodiscard]] std::string_view keyOf(Wave wave);
[[nodiscard]] std::string_view keyOf(Phase phase);
[[nodiscard]] std::string_view keyOf(WeekKind kind);
[[nodiscard]] std::string_view keyOf(LiftRole role);
[[nodiscard]] std::optional<Wave> waveOf(std::string_view key);
[[nodiscard]] std::optional<Phase> phaseOf(std::string_view key);
[[nodiscard]] std::optional<WeekKind> weekKindOf(std::string_view key);
[[nodiscard]] std::optional<LiftRole> liftRoleOf(std::string_view key);

}  // namespace chalk::direction
