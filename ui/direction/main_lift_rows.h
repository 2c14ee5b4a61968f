#pragma once

#include "core/direction/maximum_test.h"
#include "ui/direction/direction_case.h"

#include <QString>

#include <array>
#include <vector>

namespace chalk::ui::direction {

/// A main lift of a plan, phase by phase: what it does now, and what each phase asks at which loads.
struct MainLiftRow {
    QString lift;
    QString now;                    ///< `85 kg, 4 × 8`; `on hold`
    std::array<QString, 4> phases;  ///< base, build, peak, test week: `4–5 × 4 at 85–90`; `–` where the plan has no such week

    bool operator==(const MainLiftRow&) const = default;
};

/// The main lifts of a plan, in its order; all lifts where none is main. Loads are those that the lift's equipment gives; per cent where no single is known.
/// Of a strength plan that goes from week to week the heavy day of each week is shown.
[[nodiscard]] std::vector<MainLiftRow> mainLiftRows(const DirectionCase& client, const chalk::direction::BlockPlan& plan,
                                                    const std::vector<chalk::direction::PlanSingle>& singles);

/// What a lift does on the day of the case: `85 kg, 4 × 8`, `on hold`, `without load`.
[[nodiscard]] QString nowText(const DirectionLift& lift);

/// Why a lift is not tested by a single: the first reason; nothing where it may be.
[[nodiscard]] std::optional<chalk::direction::NoTest> noTestOf(const DirectionCase& client, const DirectionLift& lift);

}  // namespace chalk::ui::direction
