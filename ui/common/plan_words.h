#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/lift_for_plan.h"

#include <QString>

namespace chalk::ui::common {

// What a plan of weeks says, in words: on the page, on paper and on the command line alike. A single is effective and 0 where none is
// known.

/// `80 %`, `82.5 %`.
[[nodiscard]] QString planShareText(base::Milli share);
/// `4 × 4`, `3 × 8–12`, `test`.
[[nodiscard]] QString planSetsText(const chalk::direction::PlannedWork& work);
/// A load of the lift: `85 kg`, `2 × 12 kg`, `+10 kg`.
[[nodiscard]] QString planLoadText(const chalk::direction::LiftForPlan& lift, base::Load load);
/// What a share of a single gives on the lift's equipment: `85 kg`; `80 %` where no single is known.
[[nodiscard]] QString planLoadText(const chalk::direction::LiftForPlan& lift, base::Load single, base::Milli share);
/// One exposure: `4 × 4 at 85 kg, rest 3:00, 2 left`, with `, with a pause` where one is asked; `test, about 112.5 kg`, `test`.
[[nodiscard]] QString planWorkText(const chalk::direction::PlannedWork& work, const chalk::direction::LiftForPlan& lift, base::Load single);
/// An estimated single as it is shown: to the nearest half.
[[nodiscard]] base::Load estimateShown(base::Load single);
/// A single and where it comes from: `104 kg, estimated` (to the nearest half), `105 kg, tested`, `not known yet`.
[[nodiscard]] QString planSingleText(const chalk::direction::PlanSingle& single, base::MassUnit unit);

/// Why a lift does not follow a plan that asks it to: `on hold, joins once it is released`, `joins once it is loaded`, `joins once a single
/// is known`, and in a plan that runs already `off the plan`. Empty where it follows, or would at once.
[[nodiscard]] QString planWaitText(const chalk::direction::LiftForPlan& lift, base::Load single, bool isRunning);
/// Where a day lies in a plan: `week 5 of 12`, `begins on Mon 30 Nov`, `away, goes on on Mon 4 Jan`, `over since Sun 21 Feb`.
[[nodiscard]] QString planPlaceText(const chalk::direction::ClientPlan& plan, base::Date day);

}  // namespace chalk::ui::common
