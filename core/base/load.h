#pragma once

#include <compare>
#include <cstdint>

namespace chalk::base {

/// The unit that a lift is loaded and written in.
enum class MassUnit : std::uint8_t { Kilogram, Pound };

/// A load on a lift: a whole number of hundredths of the lift's own unit (kg or lb; the lift knows which).
/// Negative loads are assistance. Integer, so that no load drifts by rounding.
class Load {
public:
    constexpr Load() = default;
    [[nodiscard]] static constexpr Load fromCenti(std::int32_t centi) { return Load(centi); }

    /// Hundredths of the lift's own unit.
    [[nodiscard]] constexpr std::int32_t centi() const { return m_centi; }

    constexpr auto operator<=>(const Load&) const = default;

    constexpr Load& operator+=(Load other) { m_centi += other.m_centi; return *this; }
    constexpr Load& operator-=(Load other) { m_centi -= other.m_centi; return *this; }
    friend constexpr Load operator+(Load a, Load b) { return a += b; }
    friend constexpr Load operator-(Load a, Load b) { return a -= b; }
    friend constexpr Load operator*(int n, Load a) { return Load(n * a.m_centi); }

private:
    constexpr explicit Load(std::int32_t centi) : m_centi(centi) {}
    std::int32_t m_centi = 0;
};

/// A physical mass, exact in both units: tenths of a microgram. Loads of different units are summed or shown
/// through it. Range: about ±9.2e8 kg.
/// 1 lb is exactly 0.45359237 kg (international yard and pound agreement, 1959).
class Mass {
public:
    constexpr Mass() = default;

    /// The mass of a load written in `unit`.
    [[nodiscard]] static constexpr Mass of(Load load, MassUnit unit)
    {
        return Mass(std::int64_t{load.centi()} * (unit == MassUnit::Kilogram ? kPerCentiKilogram : kPerCentiPound));
    }

    /// Kilograms, for showing and charting.
    [[nodiscard]] constexpr double kilograms() const { return static_cast<double>(m_tenthMicrograms) / 1e10; }
    /// Tenths of a microgram.
    [[nodiscard]] constexpr std::int64_t raw() const { return m_tenthMicrograms; }
    [[nodiscard]] static constexpr Mass fromRaw(std::int64_t raw) { return Mass(raw); }
    /// The nearest load in `unit`, in hundredths; a half rounds away from zero.
    [[nodiscard]] constexpr Load in(MassUnit unit) const
    {
        const std::int64_t per = unit == MassUnit::Kilogram ? kPerCentiKilogram : kPerCentiPound;
        const std::int64_t half = m_tenthMicrograms < 0 ? -per / 2 : per / 2;
        return Load::fromCenti(static_cast<std::int32_t>((m_tenthMicrograms + half) / per));
    }

    constexpr auto operator<=>(const Mass&) const = default;

    constexpr Mass& operator+=(Mass other) { m_tenthMicrograms += other.m_tenthMicrograms; return *this; }
    friend constexpr Mass operator+(Mass a, Mass b) { return a += b; }
    friend constexpr Mass operator*(std::int64_t n, Mass a) { return Mass(n * a.m_tenthMicrograms); }

private:
    static constexpr std::int64_t kPerCentiKilogram = 100'000'000;
    static constexpr std::int64_t kPerCentiPound = 45'359'237;

    constexpr explicit Mass(std::int64_t raw) : m_tenthMicrograms(raw) {}
    std::int64_t m_tenthMicrograms = 0;
};

}  // namespace chalk::base
