#include "ui/week/month_weeks.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using chalk::week::Closure;
using chalk::week::kDayMinutes;
using chalk::week::kWeekDays;

constexpr int kMonthHalfHour = clients::WeekHours::kSlotMinutes;

QString stripText(const char* text)
{
    return QCoreApplication::translate("MonthStrip", text);
}

int openMinutes(const clients::WeekHours& open, int weekday, int from, int to)
{
    int minutes = 0;
    for (int slot = 0; slot < clients::WeekHours::kSlotsPerDay; ++slot) {
        const int begin = slot * kMonthHalfHour;
        if (open.isSet(weekday, slot)) {
            minutes += std::max(0, std::min(to, begin + kMonthHalfHour) - std::max(from, begin));
        }
    }
    return minutes;
}

/// Where the opening hours of a day end or, of the first, begin.
int edgeOf(const clients::WeekHours& open, int weekday, bool isEnd)
{
    for (int i = 0; i < clients::WeekHours::kSlotsPerDay; ++i) {
        const int slot = isEnd ? clients::WeekHours::kSlotsPerDay - 1 - i : i;
        if (open.isSet(weekday, slot)) {
            return (slot + (isEnd ? 1 : 0)) * kMonthHalfHour;
        }
    }
    return isEnd ? kDayMinutes : 0;
}

StripNote noteOf(const Closure& closure, const clients::WeekHours& open)
{
    const int weekday = closure.first.weekday();
    const bool isWhole = closure.fromMinute <= edgeOf(open, weekday, false) && closure.toMinute >= edgeOf(open, weekday, true);
    const QString days = closure.first == closure.last ? common::dayText(closure.first)
                                                       : QStringLiteral("%1 – %2").arg(common::shortDayText(closure.first), common::shortDayText(closure.last));
    const auto clock = [](int minute) { return common::qstring(sessions::clockText(minute % kDayMinutes)); };
    const QString what = isWhole                                                    ? stripText("studio closed")
                         : closure.toMinute >= edgeOf(open, weekday, true)          ? stripText("closes %1").arg(clock(closure.fromMinute))
                         : closure.fromMinute <= edgeOf(open, weekday, false)       ? stripText("opens %1").arg(clock(closure.toMinute))
                                                                                    : stripText("closed %1 – %2").arg(clock(closure.fromMinute), clock(closure.toMinute));
    const QString why = common::qstring(closure.why);
    return {isWhole, why.isEmpty() ? QStringLiteral("%1: %2").arg(days, what) : QStringLiteral("%1: %2, %3").arg(days, what, why)};
}

QString labelOf(base::Date monday, bool isFirst)
{
    const auto day = monday.ymd();
    const bool hasMonth = isFirst || static_cast<unsigned>(day.day()) <= static_cast<unsigned>(kWeekDays);
    return hasMonth ? common::shortDayText(monday) : QString::number(static_cast<unsigned>(day.day()));
}

StripDay dayOf(base::Date date, int sessions, const clients::WeekHours& open, const std::vector<Closure>& closures)
{
    StripDay day;
    day.sessions = sessions;
    const int all = openMinutes(open, date.weekday(), 0, kDayMinutes);
    int closed = 0;
    for (const Closure& closure : closures) {
        if (closure.coach.isNone() && !closure.station && closure.first <= date && date <= closure.last) {
            closed = std::max(closed, openMinutes(open, date.weekday(), closure.fromMinute, closure.toMinute));
        }
    }
    day.isShown = all > 0 || sessions > 0;
    day.isClosed = all > 0 && closed >= all;
    day.isShort = closed > 0 && !day.isClosed;
    return day;
}

}  // namespace

int MonthWeeks::mostSessions() const
{
    int most = 1;
    for (const StripWeek& week : weeks) {
        for (const StripDay& day : week.days) {
            most = std::max(most, day.sessions);
        }
    }
    return most;
}

MonthWeeks monthWeeksOf(base::Date monday, const std::vector<int>& counts, const clients::WeekHours& open, const std::vector<Closure>& closures)
{
    MonthWeeks month;
    for (std::size_t i = 0; i + kWeekDays <= counts.size(); i += kWeekDays) {
        StripWeek week;
        week.monday = monday + static_cast<int>(i);
        week.label = labelOf(week.monday, i == 0);
        for (std::size_t day = 0; day < week.days.size(); ++day) {
            week.days[day] = dayOf(week.monday + static_cast<int>(day), counts[i + day], open, closures);
        }
        month.weeks.push_back(week);
    }
    for (const Closure& closure : closures) {
        const bool isInside = closure.first < monday + static_cast<int>(counts.size()) && monday <= closure.last;
        if (isInside && closure.coach.isNone() && !closure.station) {
            month.notes.push_back(noteOf(closure, open));
        }
    }
    return month;
}

}  // namespace chalk::ui::week
