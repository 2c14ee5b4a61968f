#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace chalk::direction {

/// Where a client goes after the beginner months. Staying in the cycle is a choice too, and has no plan.
enum class Direction : std::uint8_t {
    Strength,  ///< heavier, fewer repetitions, one main lift a day
    Physique,  ///< more sets for each muscle group, moderate loads
    Movement   ///< range, control and carries, with strength kept up at lighter loads
};

inline constexpr std::array kDirections{Direction::Strength, Direction::Physique, Direction::Movement};

/// `strength`, `physique`, `movement`.
[[nodiscard]] std::string_view keyOf(Direction direction);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<Direction> directionOf(std::string_view key);

/// What a direction asks of a client's week, for comparing the three: 1 (little) to 4 (much). Common practice.
struct Demands {
    int load = 1;
    int reps = 1;
    int variety = 1;
    int leastSessions = 2;   ///< a week, below which the direction is not offered without a word
    int goodSessions = 3;    ///< a week, from which it fits

    bool operator==(const Demands&) const = default;
};

/// Sessions a week: strength training of those past the first months is done on 3 to 4 days a week, of beginners on 2 to 3 (Haff and
/// Triplett (eds.), Essentials of Strength Training and Conditioning, 4th ed. 2016, table 17.4). Physique work wants 4, so that ten weekly
/// sets of a muscle group fit in sessions of usual length (common practice).
[[nodiscard]] Demands demandsOf(Direction direction);

}  // namespace chalk::direction
