#include "core/clients/availability.h"

#include <algorithm>

namespace chalk::clients {

namespace {

constexpr int kSlot = WeekHours::kSlotMinutes;

bool isStretch(const DayHours& stretch)
{
    return stretch.weekday >= 0 && stretch.weekday <= 6 && stretch.beginMinute >= 0 && stretch.beginMinute < stretch.endMinute &&
           stretch.endMinute <= 24 * 60 && stretch.beginMinute % kSlot == 0 && stretch.endMinute % kSlot == 0;
}

}  // namespace

bool WeekHours::isEmpty() const
{
    return std::none_of(m_days.begin(), m_days.end(), [](const auto& day) { return day.any(); });
}

bool WeekHours::covers(int weekday, int beginMinute, int minutes) const
{
    if (beginMinute < 0 || minutes <= 0 || beginMinute + minutes > 24 * 60) {
        return false;
    }
    for (int slot = beginMinute / kSlot; slot * kSlot < beginMinute + minutes; ++slot) {
        if (!isSet(weekday, slot)) {
            return false;
        }
    }
    return true;
}

std::vector<DayHours> WeekHours::stretches() const
{
    std::vector<DayHours> found;
    for (int weekday = 0; weekday < 7; ++weekday) {
        for (int slot = 0; slot < kSlotsPerDay; ++slot) {
            if (!isSet(weekday, slot)) {
                continue;
            }
            const bool isGoingOn = slot > 0 && isSet(weekday, slot - 1);
            if (!isGoingOn) {
                found.push_back({weekday, slot * kSlot, slot * kSlot});
            }
            found.back().endMinute = (slot + 1) * kSlot;
        }
    }
    return found;
}

bool WeekHours::add(const DayHours& stretch)
{
    if (!isStretch(stretch)) {
        return false;
    }
    for (int slot = stretch.beginMinute / kSlot; slot < stretch.endMinute / kSlot; ++slot) {
        set(stretch.weekday, slot, true);
    }
    return true;
}

}  // namespace chalk::clients
