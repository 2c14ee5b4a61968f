#pragma once

#include "core/base/date.h"
#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/progression/stage.h"

#include <optional>
#include <string>
#include <vector>

namespace chalk::plateau {

/// What was asked of a lift in one session and what came of it: the detector's view of a log. Loads are in one unit throughout a lift; a
/// lift that uses body mass has its effective load.
struct LoggedExposure {
    base::Date date;
    std::string variation;  ///< exercise and equipment; another text is another variation
    progression::Stage stage = progression::Stage::BaseLoad;  ///< a loaded one
    base::Load targetLoad;  ///< more than 0
    base::Sets targetSets;
    base::Reps targetReps;
    base::Seconds targetRest;
    base::Load load;                    ///< as logged, 0 or more
    std::vector<base::Reps> reps;       ///< of each set, in order; at least one
    std::optional<int> reserve;         ///< reps in reserve of the first set; nothing where none are recorded
    std::optional<base::Seconds> rest;  ///< nothing where it is not recorded: then it counts as kept
    bool isSteady = true;               ///< moved under control
    bool hasPain = false;
    bool isLighterWeek = false;  ///< a planned lighter session
    std::optional<base::Load> planSingle = {};  ///< of a lift that follows a plan: the single that its loads are shares of, as results had moved it
};

/// A day on which a lift is judged.
struct CheckDay {
    base::Date date;           ///< exposures of this day count
    int plannedSessions = 0;   ///< of the client in the 28 days up to it
    int attendedSessions = 0;  ///< of those; 0 or more
};

}  // namespace chalk::plateau
