#pragma once

#include <chrono>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace chalk::base {

/// A week of the ISO 8601 calendar: it starts on Monday, and week 1 holds the year's first Thursday.
struct IsoWeek {
    int year = 1970;
    int week = 1;  ///< 1 to 53

    constexpr auto operator<=>(const IsoWeek&) const = default;
};

/// A day of the proleptic Gregorian calendar, without a time or a zone. Range: years 1 to 9999.
class Date {
public:
    constexpr Date() = default;
    [[nodiscard]] static constexpr Date fromDays(std::int32_t daysSince1970) { return Date(daysSince1970); }
    /// Nothing where there is no such day.
    [[nodiscard]] static std::optional<Date> fromYmd(int year, int month, int day);
    /// Reads exactly `YYYY-MM-DD` (ISO 8601, extended form). Nothing where the text is anything else.
    [[nodiscard]] static std::optional<Date> parse(std::string_view text);
    /// The Monday of an ISO week; nothing where the year has no such week.
    [[nodiscard]] static std::optional<Date> mondayOf(IsoWeek week);

    [[nodiscard]] constexpr std::int32_t daysSince1970() const { return m_days; }
    [[nodiscard]] std::chrono::year_month_day ymd() const;
    /// 0 for Monday to 6 for Sunday.
    [[nodiscard]] int weekday() const;
    [[nodiscard]] IsoWeek isoWeek() const;
    /// `YYYY-MM-DD`.
    [[nodiscard]] std::string toString() const;

    constexpr auto operator<=>(const Date&) const = default;
    friend constexpr Date operator+(Date date, int days) { return Date(date.m_days + days); }
    friend constexpr Date operator-(Date date, int days) { return Date(date.m_days - days); }
    /// Days from b to a.
    friend constexpr int operator-(Date a, Date b) { return a.m_days - b.m_days; }

private:
    constexpr explicit Date(std::int32_t days) : m_days(days) {}
    std::int32_t m_days = 0;
};

/// Whole years lived on `day` by somebody born on `birth`; a birthday on 29 February is kept on 1 March in common years.
[[nodiscard]] int ageOn(Date birth, Date day);

/// `2026-W09`.
[[nodiscard]] std::string toString(IsoWeek week);
/// Reads exactly `YYYY-Www`; nothing where the text is anything else or the year has no such week.
[[nodiscard]] std::optional<IsoWeek> parseIsoWeek(std::string_view text);

}  // namespace chalk::base
