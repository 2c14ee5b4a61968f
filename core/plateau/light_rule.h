#pragma once

#include "core/plateau/logged_exposure.h"

#include <vector>

namespace chalk::plateau {

/// Tells sessions that are lighter than usual though nobody said so. Knows one block of a stage; a new block starts with a new rule.
class LightRule {
public:
    /// Whether the exposure, which is no planned lighter one, is light. The third in a row no longer is: it is the new level, and so are
    /// those that follow it.
    [[nodiscard]] bool isLight(const LoggedExposure& exposure);
    /// A planned lighter session came between: a run of light ones ends.
    void passLighterWeek() { m_run = 0; }
    /// The exposure counts for the trend: its target load is of the usual ones.
    void take(const LoggedExposure& exposure);

private:
    std::vector<double> m_targets;
    int m_run = 0;
};

}  // namespace chalk::plateau
