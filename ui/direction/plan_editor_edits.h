#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/lift_for_plan.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::ui::direction {

// What a coach changes in a plan by hand, as plain functions: each answers the changed plan, or why it cannot be so.

inline constexpr int kMostPlanSets = 20;
inline constexpr int kMostPlanReps = 100;
inline constexpr int kWholeShare = 1000;
inline constexpr int kLongestPlanRest = 1800;  ///< seconds
inline constexpr int kMostPlanReserve = 10;

/// A number or a mark of an exposure.
enum class WorkField : std::uint8_t { Sets, Reps, Share, Rest, Reserve, Pause, Test };

/// One exposure of a plan; all count from 0.
struct WorkPlace {
    std::size_t week = 0;
    std::size_t lift = 0;
    std::size_t exposure = 0;

    bool operator==(const WorkPlace&) const = default;
};

/// What a field is to be: a number, thousandths of the single, seconds, or 1 and 0 for a mark.
struct WorkEdit {
    WorkField field = WorkField::Sets;
    int value = 0;
    int most = 0;  ///< of repetitions: the top of their range
};

enum class EditFault : std::uint8_t {
    SetsRange,
    RepsRange,
    RepsOrder,     ///< the top of the range is below its foot
    ShareRange,
    RestRange,
    ReserveRange,
    WeekIsOver,    ///< what was done stays as it was planned
    NotThere,      ///< no such week, lift or exposure
    TestWeek       ///< the test stays the test
};

using EditedPlan = tl::expected<chalk::direction::ClientPlan, EditFault>;

/// Whether the week's Sunday was before `today`.
[[nodiscard]] bool isWeekOver(const chalk::direction::BlockPlan& plan, std::size_t week, base::Date today);

[[nodiscard]] EditedPlan withEdit(chalk::direction::ClientPlan plan, const WorkPlace& place, const WorkEdit& edit, base::Date today);
/// Makes a week of work a lighter one, its exposures lightened (see direction::lightened), or a lighter one a week of work, with the work that a plan
/// made anew has there, else that of the week of work before it, else after it.
[[nodiscard]] EditedPlan withKind(chalk::direction::ClientPlan plan, std::size_t week, chalk::direction::WeekKind kind, base::Date today);
/// Gives the next week the work that a lift has in this one. What it is done for there stays.
[[nodiscard]] EditedPlan copiedDown(chalk::direction::ClientPlan plan, std::size_t week, std::size_t lift, base::Date today);

/// How many exposures and kinds of weeks differ from what the plan's wishes give by themselves.
[[nodiscard]] int handEdits(const chalk::direction::BlockPlan& plan);

/// The plan made anew for wishes without a fault. Weeks that are over stay as they were. `keepsEdits`: what was set by hand stays where the week, the
/// lift and the exposure are still there. Singles stay; new lifts bring theirs. Weeks that missed ones had squeezed out come back.
[[nodiscard]] chalk::direction::ClientPlan refitted(const chalk::direction::ClientPlan& plan, chalk::direction::PlanWishes wishes,
                                                    std::span<const chalk::direction::LiftForPlan> lifts, bool keepsEdits, base::Date today);

}  // namespace chalk::ui::direction
