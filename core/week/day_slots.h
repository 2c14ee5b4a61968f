#pragma once

#include <bit>
#include <cstdint>

namespace chalk::week {

/// A set of the slots of one day, a bit each: 96 of a quarter of an hour at most.
__extension__ typedef unsigned __int128 DaySlots;

/// `count` slots from `first` on; 1 <= count, first + count <= 128.
[[nodiscard]] constexpr DaySlots slotRun(int first, int count)
{
    return (~DaySlots{0} >> (128 - count)) << first;
}

[[nodiscard]] constexpr std::uint64_t lowHalf(DaySlots slots)
{
    return static_cast<std::uint64_t>(slots);
}

[[nodiscard]] constexpr std::uint64_t highHalf(DaySlots slots)
{
    return static_cast<std::uint64_t>(slots >> 64U);
}

[[nodiscard]] constexpr int countOf(DaySlots slots)
{
    return std::popcount(lowHalf(slots)) + std::popcount(highHalf(slots));
}

/// The first slot of a set that is not empty.
[[nodiscard]] constexpr int firstOf(DaySlots slots)
{
    return lowHalf(slots) != 0 ? std::countr_zero(lowHalf(slots)) : 64 + std::countr_zero(highHalf(slots));
}

/// The last slot of a set that is not empty.
[[nodiscard]] constexpr int lastOf(DaySlots slots)
{
    return highHalf(slots) != 0 ? 127 - std::countl_zero(highHalf(slots)) : 63 - std::countl_zero(lowHalf(slots));
}

/// The slots from which on `count` of the set follow each other.
[[nodiscard]] constexpr DaySlots startsOfRuns(DaySlots slots, int count)
{
    int done = 1;
    while (done < count) {
        const int step = done < count - done ? done : count - done;
        slots &= slots >> step;
        done += step;
    }
    return slots;
}

}  // namespace chalk::week
