#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace chalk::lifts {

/// The eight movement patterns, in the order in which they are always shown.
enum class Pattern : std::uint8_t {
    Squat,
    Hinge,
    HorizontalPush,
    HorizontalPull,
    VerticalPush,
    VerticalPull,
    SingleLeg,
    CarryBrace
};

inline constexpr std::array kPatterns{Pattern::Squat,        Pattern::Hinge,        Pattern::HorizontalPush,
                                      Pattern::HorizontalPull, Pattern::VerticalPush, Pattern::VerticalPull,
                                      Pattern::SingleLeg,    Pattern::CarryBrace};

/// Picks the load step of a lift.
enum class Region : std::uint8_t { Upper, Lower };

/// What a set of the lift is counted in: repetitions, seconds of a hold, metres of a carry.
enum class Measure : std::uint8_t { Reps, Seconds, Metres };

/// The key in files and on the command line (`squat`, `horizontal_push` …).
[[nodiscard]] std::string_view keyOf(Pattern pattern);
[[nodiscard]] std::string_view keyOf(Region region);
[[nodiscard]] std::string_view keyOf(Measure measure);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<Pattern> patternOf(std::string_view key);
[[nodiscard]] std::optional<Region> regionOf(std::string_view key);
[[nodiscard]] std::optional<Measure> measureOf(std::string_view key);

}  // namespace chalk::lifts
