#pragma once

#include "core/base/date.h"

#include <compare>
#include <cstddef>
#include <span>
#include <vector>

namespace chalk::studio {

/// When a backup was made, by the clock of the studio.
struct BackupMoment {
    base::Date day;
    int minute = 0;  ///< since midnight, 0 to 1439

    auto operator<=>(const BackupMoment&) const = default;
};

/// How many backups are kept: the latest of all, and the last one of each of the latest days, ISO weeks and months that have one. Common practice.
struct BackupRotation {
    int latest = 10;
    int days = 14;
    int weeks = 8;
    int months = 12;

    bool operator==(const BackupRotation&) const = default;
};

/// Which of the backups may go, by their index, in rising order; the moments come in any order. The latest one never goes. A backup with a moment after
/// `now` (a clock that was wrong) is kept and takes nobody's place.
[[nodiscard]] std::vector<std::size_t> spentBackups(std::span<const BackupMoment> backups, BackupMoment now, const BackupRotation& rotation = {});

}  // namespace chalk::studio
