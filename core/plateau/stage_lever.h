#pragma once

#include "core/plateau/logged_exposure.h"

#include <optional>

namespace chalk::plateau {

/// All sets of the target, all with its reps; in the rest stage also in its rest, with some grace.
[[nodiscard]] bool isComplete(const LoggedExposure& exposure);

/// What the stage moves, as targeted; more is better: the load in hundredths, reps, sets, or the rest in seconds below 0. The stage is a
/// loaded one. Of a lift that follows a plan the single in hundredths.
[[nodiscard]] int leverOf(const LoggedExposure& exposure);

/// What the stage's drive puts into strength, 0 to 1: the rest builds what later sets take. The stage is a loaded one.
[[nodiscard]] double strengthShareOf(progression::Stage stage);

/// The best of the lever in one block of a stage.
class LeverBest {
public:
    /// Whether a success at this lever is a new best: the first one of the block is.
    [[nodiscard]] bool take(int lever);

private:
    std::optional<int> m_best;
};

}  // namespace chalk::plateau
