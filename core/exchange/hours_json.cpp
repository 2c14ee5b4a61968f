#include "core/exchange/hours_json.h"

#include <QTime>

#include <algorithm>
#include <array>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using clients::DayHours;
using clients::WeekHours;

constexpr std::array<const char*, 7> kWeekdays{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};
constexpr int kMidnight = 24 * 60;

std::optional<int> minuteOf(const std::string& text)
{
    if (text == "24:00") {
        return kMidnight;
    }
    const QTime time = QTime::fromString(QString::fromStdString(text), QStringLiteral("HH:mm"));
    return time.isValid() ? std::optional(time.hour() * 60 + time.minute()) : std::nullopt;
}

}  // namespace

int minuteAt(ObjectReader& reader, const char* field)
{
    const auto minute = minuteOf(reader.text(field));
    if (!minute) {
        reader.fail(field, "must be a time, HH:MM");
    }
    return minute.value_or(0);
}

QString textOfMinute(int minute)
{
    return QString::fromStdString(fmt::format("{:02}:{:02}", minute / 60, minute % 60));
}

int weekdayAt(ObjectReader& reader, const char* field)
{
    const auto day = std::find(kWeekdays.begin(), kWeekdays.end(), reader.text(field));
    if (day == kWeekdays.end()) {
        reader.fail(field, "must be mon, tue, wed, thu, fri, sat or sun");
        return 0;
    }
    return static_cast<int>(day - kWeekdays.begin());
}

QString textOfWeekday(int weekday)
{
    return QLatin1String(kWeekdays.at(static_cast<std::size_t>(weekday)));
}

WeekHours hoursAt(ObjectReader& parent, const char* field)
{
    WeekHours hours;
    if (!parent.has(field)) {
        return hours;
    }
    const QJsonArray array = parent.array(field);
    for (qsizetype i = 0; i < array.size() && parent.isSound(); ++i) {
        ObjectReader reader(array[i], fmt::format("{}[{}]", parent.pathOf(field), i));
        reader.allowOnly({"day", "from", "to"});
        const DayHours stretch{weekdayAt(reader, "day"), minuteAt(reader, "from"), minuteAt(reader, "to")};
        if (reader.isSound() && !hours.add(stretch)) {
            reader.fail("to", "must be after from, and both whole half-hours");
        }
        if (reader.fault()) {
            parent.take(*reader.fault());
        }
    }
    return hours;
}

QJsonArray toJson(const WeekHours& hours)
{
    QJsonArray array;
    for (const DayHours& stretch : hours.stretches()) {
        array.append(QJsonObject{{QStringLiteral("day"), textOfWeekday(stretch.weekday)},
                                 {QStringLiteral("from"), textOfMinute(stretch.beginMinute)},
                                 {QStringLiteral("to"), textOfMinute(stretch.endMinute)}});
    }
    return array;
}

}  // namespace chalk::exchange
