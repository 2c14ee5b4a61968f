#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace chalk::base {

/// The enumerator whose key stands at the same place of `keys`, counted from `first`; nothing for an unknown key.
template <class Enum, std::size_t N>
[[nodiscard]] std::optional<Enum> enumOf(const std::array<std::string_view, N>& keys, std::string_view key, int first = 0)
{
    const auto found = std::find(keys.begin(), keys.end(), key);
    if (found == keys.end()) {
        return std::nullopt;
    }
    return static_cast<Enum>(found - keys.begin() + first);
}

/// The key of an enumerator of such a table.
template <class Enum, std::size_t N>
[[nodiscard]] constexpr std::string_view keyIn(const std::array<std::string_view, N>& keys, Enum value, int first = 0)
{
    return keys[static_cast<std::size_t>(static_cast<int>(value) - first)];
}

}  // namespace chalk::base
