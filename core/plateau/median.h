#pragma once

#include <span>
#include <vector>

namespace chalk::plateau {

/// The median; of an even number of values the mean of the middle two. There is at least one.
[[nodiscard]] double medianOf(std::span<const double> values);

/// The last `count` values, or all where there are fewer.
template <class Value>
[[nodiscard]] std::span<const Value> lastOf(const std::vector<Value>& values, std::size_t count)
{
    return std::span<const Value>(values).last(values.size() < count ? values.size() : count);
}

}  // namespace chalk::plateau
