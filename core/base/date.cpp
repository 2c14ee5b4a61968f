#include "core/base/date.h"

#include <fmt/core.h>

namespace chalk::base {

namespace {

/// The number that `text` spells in digits only; nothing for anything else.
std::optional<int> digits(std::string_view text)
{
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9') {
            return std::nullopt;
        }
        value = value * 10 + (c - '0');
    }
    return value;
}

std::chrono::sys_days toSysDays(Date date)
{
    return std::chrono::sys_days(std::chrono::days(date.daysSince1970()));
}

}  // namespace

std::optional<Date> Date::fromYmd(int year, int month, int day)
{
    if (year < 1 || year > 9999 || month < 1 || day < 1) {
        return std::nullopt;
    }
    const std::chrono::year_month_day ymd{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                          std::chrono::day(static_cast<unsigned>(day))};
    if (!ymd.ok()) {
        return std::nullopt;
    }
    return fromDays(static_cast<std::int32_t>(std::chrono::sys_days(ymd).time_since_epoch().count()));
}

std::optional<Date> Date::parse(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return std::nullopt;
    }
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day) {
        return std::nullopt;
    }
    return fromYmd(*year, *month, *day);
}

std::optional<Date> Date::mondayOf(IsoWeek week)
{
    const auto fourth = fromYmd(week.year, 1, 4);  // always in week 1
    if (!fourth || week.week < 1) {
        return std::nullopt;
    }
    const Date monday = *fourth - fourth->weekday() + 7 * (week.week - 1);
    return monday.isoWeek() == week ? std::optional(monday) : std::nullopt;
}

std::chrono::year_month_day Date::ymd() const
{
    return std::chrono::year_month_day(toSysDays(*this));
}

int Date::weekday() const
{
    return static_cast<int>(std::chrono::weekday(toSysDays(*this)).iso_encoding()) - 1;
}

IsoWeek Date::isoWeek() const
{
    const Date thursday = *this - weekday() + 3;
    const int year = static_cast<int>(thursday.ymd().year());
    const Date newYear = *fromYmd(year, 1, 1);
    return {year, (thursday - newYear) / 7 + 1};
}

std::string Date::toString() const
{
    const auto day = ymd();
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()), static_cast<unsigned>(day.month()),
                       static_cast<unsigned>(day.day()));
}

int ageOn(Date birth, Date day)
{
    const auto born = birth.ymd();
    const auto now = day.ymd();
    const int years = static_cast<int>(now.year()) - static_cast<int>(born.year());
    const bool isBeforeBirthday = now.month() < born.month() || (now.month() == born.month() && now.day() < born.day());
    return years - (isBeforeBirthday ? 1 : 0);
}

std::string toString(IsoWeek week)
{
    return fmt::format("{:04}-W{:02}", week.year, week.week);
}

std::optional<IsoWeek> parseIsoWeek(std::string_view text)
{
    if (text.size() != 8 || text.substr(4, 2) != "-W") {
        return std::nullopt;
    }
    const auto year = digits(text.substr(0, 4));
    const auto week = digits(text.substr(6, 2));
    if (!year || !week || !Date::mondayOf({*year, *week})) {
        return std::nullopt;
    }
    return IsoWeek{*year, *week};
}

}  // namespace chalk::base
