#pragma once

#include "ui/direction/direction_case.h"

#include <QString>

#include <vector>

namespace chalk::ui::direction {

/// One thing that a plan changes for the client, with the icon before it.
struct ChangeLine {
    QString icon;
    QString text;

    bool operator==(const ChangeLine&) const = default;
};

/// The client's first name.
[[nodiscard]] QString firstNameOf(const clients::Client& client);
/// `back squat, trap-bar deadlift and bench press`; of lifts of a plan.
[[nodiscard]] QString liftListText(const DirectionCase& client, const chalk::direction::BlockPlan& plan, const std::vector<std::size_t>& lifts);
/// `1, 5 and 9`.
[[nodiscard]] QString numberListText(const std::vector<int>& numbers);
/// `week 4`, `weeks 4 and 5`.
[[nodiscard]] QString weekListText(const std::vector<int>& weeks);

/// Who leads, what stays on the ladder and why, sessions a week, rests, closures, check-ins, cautions.
[[nodiscard]] std::vector<ChangeLine> changeLines(const DirectionCase& client, const DirectionOffer& offer);

/// Why a lift of a plan stays on the ladder for now, and when it joins: `Trap-bar deadlift is on hold. It joins when it is released.`
[[nodiscard]] QString asideText(const DirectionCase& client, const chalk::direction::BlockPlan& plan, const AsideLift& aside);
/// When the talk is due, since when and why; else what is missing until then.
[[nodiscard]] QString talkText(const DirectionCase& client);
/// Why a plan cannot be begun, and what to do.
[[nodiscard]] QString startBarText(const DirectionCase& client, StartBar bar);

}  // namespace chalk::ui::direction
