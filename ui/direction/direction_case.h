#pragma once

#include "core/base/date.h"
#include "core/checkin/check_in.h"
#include "core/clients/client.h"
#include "core/direction/client_plan.h"
#include "core/direction/direction_fit.h"
#include "core/direction/lift_for_plan.h"
#include "core/direction/plan_review.h"
#include "ui/direction/plan_chart_scene.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace chalk::ui::direction {

/// A lift of the client, as the tab names it.
struct DirectionLift {
    chalk::direction::LiftForPlan lift;
    std::string name;
    progression::Prescription next;   ///< on the day
};

/// One of the three directions, with the plan that would be begun. No weeks where no lift can be planned.
struct DirectionOffer {
    chalk::direction::DirectionFit fit;
    chalk::direction::BlockPlan plan;
    std::vector<chalk::direction::PlanSingle> singles;   ///< by lift of the plan
};

/// When the talk about what comes next is due.
struct TalkState {
    std::optional<base::Date> firstLoad;
    int days = 0;                        ///< since then
    int stalls = 0;                      ///< lifts that have stalled
    bool isDue = false;
    std::optional<base::Date> dueFrom;   ///< with the stalls of today; nothing without a first load
    std::optional<base::Date> dueEarly;  ///< from when two stalled lifts make it due
};

/// Everything that the tab shows of one client on one day.
struct DirectionCase {
    clients::Client client;
    clients::Clearance clearance;
    std::vector<clients::Caution> cautions;        ///< in force
    std::vector<DirectionLift> lifts;              ///< by pattern
    std::array<DirectionOffer, 3> offers;          ///< in the order of the directions
    std::vector<ClosedDays> closures;              ///< of the whole studio, from the day on or from the first week of the running plan
    std::vector<int> weekdays;                     ///< on which the client usually comes, 0 for Monday
    chalk::direction::FitFacts facts;              ///< that the offers were held against
    TalkState talk;
    std::optional<checkin::Decision> decided;      ///< the last one about the direction
    std::optional<chalk::direction::ClientPlan> running;
    std::optional<chalk::direction::ClientPlan> over;   ///< the last plan, where it is over and nothing was decided or begun since
    std::vector<std::vector<chalk::direction::DoneSet>> done;   ///< of `running`, else of `over`; by lift of the plan
    std::vector<int> painDays;                     ///< of `over`, by lift of the plan: its days with pain written down
    base::Date today;

    [[nodiscard]] bool isBlocked() const { return clients::isBlocked(clearance, today); }
    [[nodiscard]] const DirectionOffer& offer(chalk::direction::Direction direction) const { return offers[static_cast<std::size_t>(direction)]; }
    /// The suggested direction; nothing where none is.
    [[nodiscard]] std::optional<chalk::direction::Direction> suggested() const;
    /// Null where the client has no such lift.
    [[nodiscard]] const DirectionLift* lift(base::LiftId id) const;
};

/// Why a plan cannot be begun now.
enum class StartBar : std::uint8_t {
    Clearance,   ///< loaded work waits for it
    NothingLoaded, ///< no lift that is counted in repetitions was ever loaded
    AllOnHold,   ///< every lift that a plan could lead is on hold
    NoneLoaded,  ///< none of them is in a loaded stage now
    NoSingle     ///< no single is known of any lift that could follow: a test of three to five repetitions gives one
};

/// Nothing where it can.
[[nodiscard]] std::optional<StartBar> startBarOf(const DirectionCase& client, const DirectionOffer& offer);

/// Why a lift of a plan does not follow it now.
enum class AsideWhy : std::uint8_t { OnHold, NotLoaded, NoSingle, LeftThePlan };

/// A lift of a plan that stays on the ladder for now.
struct AsideLift {
    std::size_t lift = 0;   ///< of the plan
    AsideWhy why = AsideWhy::NoSingle;

    bool operator==(const AsideLift&) const = default;
};

/// The lifts of a plan that would not follow it at once, in its order. In a plan that runs also those that left it.
[[nodiscard]] std::vector<AsideLift> asideLifts(const DirectionCase& client, const chalk::direction::BlockPlan& plan,
                                                const std::vector<chalk::direction::PlanSingle>& singles, bool isRunning);

}  // namespace chalk::ui::direction
