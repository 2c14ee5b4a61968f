#pragma once

#include "core/base/date.h"

#include <array>
#include <bitset>
#include <vector>

namespace chalk::clients {

/// A stretch of a weekday, in minutes after midnight, whole half-hours; 0 <= begin < end <= 1440.
struct DayHours {
    int weekday = 0;  ///< 0 Monday to 6 Sunday
    int beginMinute = 0;
    int endMinute = 0;

    bool operator==(const DayHours&) const = default;
};

/// The hours of a week, kept by the half-hour: when a client can come, or prefers to.
class WeekHours {
public:
    static constexpr int kSlotMinutes = 30;
    static constexpr int kSlotsPerDay = 24 * 60 / kSlotMinutes;

    /// `weekday` 0 to 6, `slot` 0 to 47: the half-hour that begins at slot × 30 minutes.
    [[nodiscard]] bool isSet(int weekday, int slot) const { return m_days.at(static_cast<std::size_t>(weekday)).test(static_cast<std::size_t>(slot)); }
    void set(int weekday, int slot, bool isOn) { m_days.at(static_cast<std::size_t>(weekday)).set(static_cast<std::size_t>(slot), isOn); }
    [[nodiscard]] bool isEmpty() const;
    /// Whether a session of `minutes` from `beginMinute` lies within the hours.
    [[nodiscard]] bool covers(int weekday, int beginMinute, int minutes) const;

    /// The stretches, by weekday and time; stretches that touch are one.
    [[nodiscard]] std::vector<DayHours> stretches() const;
    /// Adds a stretch. False, and nothing is added, where it breaks the ranges of DayHours.
    [[nodiscard]] bool add(const DayHours& stretch);

    bool operator==(const WeekHours&) const = default;

private:
    std::array<std::bitset<kSlotsPerDay>, 7> m_days;
};

}  // namespace chalk::clients
