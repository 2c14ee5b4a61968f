#include "core/checkin/week_load.h"

#include "core/analysis/training_load.h"
#include "core/base/enum_keys.h"

#include <vector>

namespace chalk::checkin {

namespace {

constexpr std::array<std::string_view, 4> kNoMonotonyKeys{"not_over", "no_session", "unrated", "all_the_same"};
constexpr std::array<std::string_view, 2> kNoRatioKeys{"too_early", "unrated"};

constexpr int kLoadDays = 7;
constexpr int kRatioDays = 28;

/// The rated sessions of a span, and how many others took place in it.
struct RatedSpan {
    std::vector<analysis::DayLoad> loads;
    int unrated = 0;
};

RatedSpan ratedIn(std::span<const SessionEffort> sessions, base::Date from, int days)
{
    RatedSpan span;
    for (const SessionEffort& session : sessions) {
        if (session.date < from || session.date >= from + days) {
            continue;
        }
        if (session.load) {
            span.loads.push_back({session.date, *session.load});
        } else {
            ++span.unrated;
        }
    }
    return span;
}

std::optional<NoMonotony> whyNone(const WeekLoad& week, base::Date monday, base::Date day)
{
    if (day < monday + kLoadDays) {
        return NoMonotony::NotOver;
    }
    if (week.rated + week.unrated == 0) {
        return NoMonotony::NoSession;
    }
    return week.unrated > 0 || week.load == 0 ? std::optional(NoMonotony::Unrated) : std::nullopt;
}

}  // namespace

WeekLoad weekLoadOf(std::span<const SessionEffort> sessions, base::Date monday, base::Date day)
{
    const RatedSpan span = ratedIn(sessions, monday, kLoadDays);
    WeekLoad week;
    week.rated = static_cast<int>(span.loads.size());
    week.unrated = span.unrated;
    for (const analysis::DayLoad& one : span.loads) {
        week.load += one.load;
    }
    week.why = whyNone(week, monday, day);
    if (week.why) {
        return week;
    }
    const std::vector<double> days = analysis::dailyLoads(span.loads, monday, kLoadDays);
    const auto monotony = analysis::monotonyOf(days);
    if (monotony) {
        week.monotony = *monotony;
        week.strain = analysis::strainOf(days).value();
    } else {
        week.why = NoMonotony::AllTheSame;
    }
    return week;
}

tl::expected<LoadRatio, NoRatio> loadRatioOf(std::span<const SessionEffort> sessions, base::Date day)
{
    const base::Date from = mondayOf(day) - kRatioDays;
    const RatedSpan first = ratedIn(sessions, from, kLoadDays);
    const RatedSpan all = ratedIn(sessions, from, kRatioDays);
    if (first.loads.empty() && first.unrated == 0) {
        return tl::make_unexpected(NoRatio::TooEarly);
    }
    const std::vector<double> days = analysis::dailyLoads(all.loads, from, kRatioDays);
    const auto uncoupled = analysis::acuteToChronic(days, analysis::Coupling::Uncoupled);
    const auto coupled = analysis::acuteToChronic(days, analysis::Coupling::Coupled);
    if (all.unrated > 0 || !uncoupled || !coupled) {
        return tl::make_unexpected(NoRatio::Unrated);
    }
    return LoadRatio{from + (kRatioDays - kLoadDays), *uncoupled, *coupled};
}

std::string_view keyOf(NoMonotony why)
{
    return base::keyIn(kNoMonotonyKeys, why);
}

std::string_view keyOf(NoRatio why)
{
    return base::keyIn(kNoRatioKeys, why);
}

base::Date mondayOf(base::Date day)
{
    return day - day.weekday();
}

}  // namespace chalk::checkin
