#pragma once

#include "core/base/load.h"
#include "core/base/quantity.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace chalk::progression {

/// The figures that the rules work with. A studio has one, a client or a lift can override fields of it. Figures
/// without a source in the tests are common practice in the trade.
struct Policy {
    base::Reps repFloor{5};
    base::Reps hardReps{6};
    base::Reps repCeiling{10};
    base::Reps repGoal{12};          ///< 10 to 15
    base::Reps capacityMin{12};
    base::Reps capacityMax{15};
    int reserve = 2;                 ///< RIR that a set should stop at, 0 to 10
    base::Sets baseSets{2};
    base::Sets topSets{5};           ///< at most 6
    base::Sets leastSetsToPass{3};
    base::Seconds baseRest{180};
    std::vector<base::Seconds> restSteps{base::Seconds(150), base::Seconds(120), base::Seconds(90), base::Seconds(75), base::Seconds(60)};
    int pauseMs = 1000;              ///< the least pause in Control
    base::Reps controlReps{5};
    base::Load stepUpper;            ///< per exposure, in the lift's unit
    base::Load stepLower;
    base::Milli jumpCap{100};        ///< the largest rise of the effective load that is not bridged
    base::Milli backOff{100};
    int missLimit = 2;
    int repMissLimit = 3;
    base::Reps repTolerance{2};
    base::Seconds restTolerance{15};
    int painHold = 4;                ///< pain from which the lift goes on hold, 0 to 10
    std::array<int, 3> layoffDays{14, 28, 56};
    std::array<base::Milli, 3> layoffCuts{base::Milli(100), base::Milli(200), base::Milli(300)};
    int lighterDays = 7;             ///< of a lighter week, see lighter_week.h; 1 to 28
    base::Milli lighterSets{500};    ///< the part of the sets that is kept in it, above 0 and below 1
    base::Milli lighterCut{100};     ///< that the effective load is less by in it, above 0 and below 1
    base::Seconds secondsPerRep{3};
    base::Metres metresPerRep{4};

    bool operator==(const Policy&) const = default;

    /// The default policy for lifts written in `unit`: steps of 2.5 and 5 kg, or of 5 and 10 lb.
    [[nodiscard]] static Policy defaultsFor(base::MassUnit unit);
};

/// The field of a policy that makes no sense, by its name in files (`rep_floor`), and why.
struct PolicyFault {
    std::string field;
    std::string reason;
};

/// The first fault of a policy; nothing where it is sound.
[[nodiscard]] std::optional<PolicyFault> faultOf(const Policy& policy);

}  // namespace chalk::progression
