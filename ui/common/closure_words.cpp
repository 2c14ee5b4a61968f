#include "ui/common/closure_words.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::common {

namespace {

QString closureWord(const char* text)
{
    return QCoreApplication::translate("Week", text);
}

/// `all day`, `from 12:00`, `until 10:00`, `10:00 – 12:00`.
QString hoursText(const week::Closure& closure)
{
    const QString from = qstring(sessions::clockText(closure.fromMinute));
    if (closure.toMinute == week::kDayMinutes) {
        return closure.fromMinute == 0 ? closureWord(QT_TRANSLATE_NOOP("Week", "all day")) : closureWord(QT_TRANSLATE_NOOP("Week", "from %1")).arg(from);
    }
    const QString to = qstring(sessions::clockText(closure.toMinute));
    return closure.fromMinute == 0 ? closureWord(QT_TRANSLATE_NOOP("Week", "until %1")).arg(to) : QStringLiteral("%1 – %2").arg(from, to);
}

QString nameOf(base::CoachId id, const std::vector<week::CoachOfWeek>& coaches)
{
    const auto at = std::find_if(coaches.begin(), coaches.end(), [id](const week::CoachOfWeek& one) { return one.coach.id == id; });
    return at == coaches.end() ? QString() : qstring(at->coach.name);
}

QString stationWord(lifts::Station station)
{
    switch (station) {
    case lifts::Station::Floor: return closureWord(QT_TRANSLATE_NOOP("Week", "floor places"));
    case lifts::Station::Rack: return closureWord(QT_TRANSLATE_NOOP("Week", "racks"));
    case lifts::Station::Bench: return closureWord(QT_TRANSLATE_NOOP("Week", "benches"));
    case lifts::Station::Machine: return closureWord(QT_TRANSLATE_NOOP("Week", "machines"));
    case lifts::Station::PullUpBar: return closureWord(QT_TRANSLATE_NOOP("Week", "pull-up bars"));
    case lifts::Station::Lane: return closureWord(QT_TRANSLATE_NOOP("Week", "lanes"));
    }
    return {};
}

}  // namespace

QString closureText(const week::Closure& closure, const std::vector<week::CoachOfWeek>& coaches)
{
    QString text;
    if (closure.station) {
        text = closureWord(QT_TRANSLATE_NOOP("Week", "Of the %1 there are %2, %3")).arg(stationWord(*closure.station)).arg(closure.units).arg(hoursText(closure));
    } else if (!closure.coach.isNone()) {
        text = closureWord(QT_TRANSLATE_NOOP("Week", "%1 away %2")).arg(nameOf(closure.coach, coaches), hoursText(closure));
    } else {
        text = closureWord(QT_TRANSLATE_NOOP("Week", "Closed %1")).arg(hoursText(closure));
    }
    return closure.why.empty() ? text : QStringLiteral("%1: %2").arg(text, qstring(closure.why));
}

std::array<QString, week::kWeekDays> closureNotes(const week::WeekFacts& facts)
{
    std::array<QString, week::kWeekDays> notes;
    for (const week::Closure& closure : facts.closures) {
        for (int day = 0; day < week::kWeekDays; ++day) {
            const base::Date date = facts.monday + day;
            if (closure.first <= date && date <= closure.last) {
                QString& note = notes.at(static_cast<std::size_t>(day));
                note += (note.isEmpty() ? QString() : QStringLiteral("; ")) + closureText(closure, facts.coaches);
            }
        }
    }
    return notes;
}

}  // namespace chalk::ui::common
