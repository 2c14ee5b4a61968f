#pragma once

#include "core/base/date.h"
#include "core/store/backup_shelf.h"
#include "ui/common/clock.h"

#include <QString>

#include <optional>

namespace chalk::app {

/// The machine's clock, with the day pinned where one is given. The only thing that asks what time it is.
class SystemClock final : public ui::common::Clock {
public:
    explicit SystemClock(std::optional<base::Date> pinnedDay = std::nullopt) : m_pinnedDay(pinnedDay) {}

    [[nodiscard]] base::Date today() const override;
    [[nodiscard]] int minuteOfDay() const override;
    /// The moment, ISO 8601 in UTC, never pinned: for acts in the log.
    [[nodiscard]] static QString nowUtc();

    /// The moment by the clock on the wall, never pinned: for the names of backups.
    [[nodiscard]] static store::BackupShelf::Moment localMoment();

private:
    std::optional<base::Date> m_pinnedDay;
};

}  // namespace chalk::app
