#pragma once

#include "ui/board/client_case.h"

#include <QString>

#include <vector>

namespace chalk::ui::board {

/// One check in words: what is asked, and the fact behind it.
struct EvidenceLine {
    bool isMet = false;
    QString text;  ///< `2 × 12 at 77.5 kg, all steady`
    QString fact;  ///< `6 sessions`, `19 Nov`, `best 7`
    bool isTarget = false;

    bool operator==(const EvidenceLine&) const = default;
};

/// `Before Set build`, or what stands in the way of any stage.
[[nodiscard]] QString evidenceTitleOf(const LiftCase& lift);
[[nodiscard]] std::vector<EvidenceLine> evidenceLinesOf(const LiftCase& lift);
/// What happens if the lift goes on falling short, or that a plan leads; empty where neither is so.
[[nodiscard]] QString shortfallTextOf(const LiftCase& lift);

/// A key of a criterion as words: `knees_track` is `Knees track`.
[[nodiscard]] QString criterionText(const std::string& key);

}  // namespace chalk::ui::board
