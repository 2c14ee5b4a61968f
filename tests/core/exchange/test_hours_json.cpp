#include "core/exchange/hours_json.h"

#include <QJsonObject>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

QJsonObject withStretch(const char* day, const char* from, const char* to)
{
    return {{QStringLiteral("hours"), QJsonArray{QJsonObject{
        {QStringLiteral("day"), QLatin1String(day)}, {QStringLiteral("from"), QLatin1String(from)}, {QStringLiteral("to"), QLatin1String(to)}}}}};
}

}  // namespace

TEST(HoursJsonTest, HoursReadAsTheyWereWritten)
{
    clients::WeekHours hours;
    ASSERT_TRUE(hours.add({0, 7 * 60, 12 * 60 + 30}));
    ASSERT_TRUE(hours.add({6, 20 * 60, 24 * 60}));
    ObjectReader reader(QJsonObject{{QStringLiteral("hours"), toJson(hours)}}, {});
    EXPECT_EQ(hoursAt(reader, "hours"), hours);
    EXPECT_TRUE(reader.isSound());
}

TEST(HoursJsonTest, AStretchThatCannotBeIsNamed)
{
    for (const QJsonObject& wrong : {withStretch("fri", "09:00", "08:00"), withStretch("fri", "09:10", "10:00")}) {
        ObjectReader reader(wrong, {});
        EXPECT_TRUE(hoursAt(reader, "hours").isEmpty());
        EXPECT_EQ(reader.fault()->field, "hours[0].to");
    }
    ObjectReader day(withStretch("friday", "09:00", "10:00"), {});
    EXPECT_TRUE(hoursAt(day, "hours").isEmpty());
    EXPECT_EQ(day.fault()->field, "hours[0].day");
}

}  // namespace chalk::exchange
