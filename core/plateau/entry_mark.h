#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace chalk::plateau {

/// What is noted about an exposure on the way to the index.
enum class EntryMark : std::uint8_t {
    CheckReserve,  ///< reps in reserve that cannot be; taken as not recorded
    LighterWeek,   ///< planned; neither trend nor lever
    Pain,          ///< not for the lever
    Light,         ///< far below the usual target load; neither trend nor lever
    CheckLoad,     ///< the logged load is far from its target; not for the trend
    CheckReps,     ///< the reps cannot be, or are far beyond the target; not for the trend
    CheckJump,     ///< the index is far from the usual one; not for the trend
    NewLevel       ///< the third such jump in a row: the variation seems to have changed, and a segment starts
};

inline constexpr std::array kEntryMarks{EntryMark::CheckReserve, EntryMark::LighterWeek, EntryMark::Pain,      EntryMark::Light,
                                        EntryMark::CheckLoad,    EntryMark::CheckReps,   EntryMark::CheckJump, EntryMark::NewLevel};

/// The key in files: `check_load`, `deload` …
[[nodiscard]] std::string_view keyOf(EntryMark mark);

}  // namespace chalk::plateau
