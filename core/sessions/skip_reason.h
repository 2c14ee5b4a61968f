#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace chalk::sessions {

/// Why a lift that is planned is left out of a session. What is kept is the reason's key, or the coach's own words.
enum class SkipReason : std::uint8_t { NoTime, EquipmentTaken, ClientsWish, Pain, Other };

inline constexpr std::array<SkipReason, 5> kSkipReasons{SkipReason::NoTime, SkipReason::EquipmentTaken, SkipReason::ClientsWish, SkipReason::Pain,
                                                        SkipReason::Other};

/// `no_time`.
[[nodiscard]] std::string_view keyOf(SkipReason reason);
/// Nothing where it is no key: then they are somebody's own words.
[[nodiscard]] std::optional<SkipReason> skipReasonOf(std::string_view kept);

}  // namespace chalk::sessions
