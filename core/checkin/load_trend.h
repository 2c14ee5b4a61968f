#pragma once

#include <cstdint>
#include <span>

namespace chalk::checkin {

/// How the load of a client's weeks has changed.
struct LoadTrend {
    enum class Kind : std::uint8_t {
        None,    ///< nothing was lifted
        New,     ///< the first load is too recent to compare with
        Back,    ///< nothing in the earlier half, something in the later one
        Change   ///< `percent` says how much
    };
    Kind kind = Kind::None;
    int percent = 0;      ///< the later half against the earlier one
    bool isFall = false;  ///< down by kFallPercent or more

    bool operator==(const LoadTrend&) const = default;
};

/// A fall of the load that is worth a look, in per cent (common practice: less is the ordinary swing between weeks).
inline constexpr int kFallPercent = 10;

/// Compares the sum of the later half of `weeks` with that of the earlier half: load volumes of finished weeks, oldest first, an
/// even number of them, none negative. `isNew`: the client's first load lies in or after the first of them.
[[nodiscard]] LoadTrend loadTrendOf(std::span<const double> weeks, bool isNew);

}  // namespace chalk::checkin
