#pragma once

#include <compare>
#include <cstdint>

namespace chalk::base {

/// A whole number of one thing. Two quantities of different tags neither mix nor compare, and a bare
/// number does not become one by itself.
template <class Tag>
class Quantity {
public:
    constexpr Quantity() = default;
    constexpr explicit Quantity(std::int32_t value) : m_value(value) {}

    [[nodiscard]] constexpr std::int32_t value() const { return m_value; }

    constexpr auto operator<=>(const Quantity&) const = default;

    constexpr Quantity& operator+=(Quantity other) { m_value += other.m_value; return *this; }
    constexpr Quantity& operator-=(Quantity other) { m_value -= other.m_value; return *this; }
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return a += b; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return a -= b; }

private:
    std::int32_t m_value = 0;
};

/// Repetitions of a lift.
using Reps = Quantity<struct RepsTag>;
/// Working sets of a lift.
using Sets = Quantity<struct SetsTag>;
/// A duration in whole seconds: a rest, a hold.
using Seconds = Quantity<struct SecondsTag>;
/// A distance in whole metres: a carry.
using Metres = Quantity<struct MetresTag>;
/// A fraction in thousandths: 100 is 0.100, or 10 per cent.
using Milli = Quantity<struct MilliTag>;

}  // namespace chalk::base
