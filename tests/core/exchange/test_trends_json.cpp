#include "core/exchange/trends_json.h"

#include <QJsonArray>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

const base::Date kJsonMonday = *base::Date::fromYmd(2026, 11, 16);

base::Mass jsonMass(int kilograms)
{
    return base::Mass::of(base::Load::fromCenti(kilograms * 100), base::MassUnit::Kilogram);
}

checkin::TrendWeek jsonWeek()
{
    checkin::TrendWeek week;
    week.monday = kJsonMonday;
    week.isOver = true;
    week.work[1].volume = jsonMass(1575);
    week.attendance = {2, 1, 0, 4};
    week.load = {700, 2, 0, 1.5, 1050, {}};
    return week;
}

QJsonValue trendField(const QJsonObject& object, const char* name)
{
    return object.value(QLatin1String(name));
}

}  // namespace

TEST(TrendsJson, AClientsWeeks)
{
    checkin::Trends trends;
    trends.ratio = tl::make_unexpected(checkin::NoRatio::TooEarly);
    trends.weeks = {jsonWeek()};
    const QJsonObject object = toJson(trends, "Maya Lind", base::MassUnit::Kilogram);
    EXPECT_EQ(trendField(object, "client"), QJsonValue(QStringLiteral("Maya Lind")));
    const QJsonObject week = trendField(object, "weeks").toArray().first().toObject();
    EXPECT_EQ(trendField(week, "week"), QJsonValue(QStringLiteral("2026-W47")));
    EXPECT_EQ(trendField(trendField(week, "load_volume").toObject(), "hinge"), QJsonValue(1575.0));
    EXPECT_EQ(trendField(trendField(week, "load_volume").toObject(), "total"), QJsonValue(1575.0));
    EXPECT_EQ(trendField(week, "counted"), QJsonValue(3));
    EXPECT_EQ(trendField(week, "cancelled_in_time"), QJsonValue(4));
    EXPECT_EQ(trendField(week, "monotony"), QJsonValue(1.5));
    EXPECT_TRUE(trendField(week, "no_monotony").isNull());
    EXPECT_EQ(trendField(trendField(object, "load_ratio").toObject(), "none"), QJsonValue(QStringLiteral("too_early")));
    EXPECT_TRUE(trendField(trendField(object, "missing").toObject(), "monotony").isNull());
}

TEST(TrendsJson, AClientsLiftsAndWhatIsMissing)
{
    checkin::Trends trends;
    trends.ratio = checkin::LoadRatio{kJsonMonday, 2, 1.6};
    trends.lifts.resize(1);
    trends.lifts[0].name = "Back squat";
    trends.lifts[0].singles = {{kJsonMonday, jsonMass(90), jsonMass(95), jsonMass(101)}};
    trends.lifts[0].targets = {{kJsonMonday, base::Sets(3), base::Reps(5), base::Reps(8), base::Seconds(150)}};
    trends.singlesGap = checkin::FigureGap{1, 3, kJsonMonday, 0};
    const QJsonObject object = toJson(trends, "Maya Lind", base::MassUnit::Kilogram);
    const QJsonObject lift = trendField(object, "lifts").toArray().first().toObject();
    EXPECT_EQ(trendField(trendField(lift, "estimated_singles").toArray().first().toObject(), "median"), QJsonValue(95.0));
    EXPECT_EQ(trendField(trendField(lift, "targets").toArray().first().toObject(), "rest"), QJsonValue(150));
    const QJsonObject gap = trendField(trendField(object, "missing").toObject(), "estimated_singles").toObject();
    EXPECT_EQ(trendField(gap, "have"), QJsonValue(1));
    EXPECT_EQ(trendField(gap, "lift"), QJsonValue(QStringLiteral("Back squat")));
    EXPECT_EQ(trendField(gap, "first_on"), QJsonValue(QStringLiteral("2026-11-16")));
    EXPECT_EQ(trendField(trendField(object, "load_ratio").toObject(), "criticism").toArray().size(), 2) << "never without it";
}

TEST(TrendsJson, EverybodyByClient)
{
    checkin::StudioTrends trends;
    trends.weeks = {jsonWeek()};
    trends.clients = {{base::ClientId(1), "Tove", {checkin::LoadTrend::Kind::Change, -20, true}, jsonMass(2800), {2, 1, 0, 0}, {}},
                      {base::ClientId(2), "Ferro", {checkin::LoadTrend::Kind::New}, {}, {}, 2.5}};
    const QJsonArray clients = trendField(toJson(trends), "clients").toArray();
    EXPECT_EQ(trendField(clients[0].toObject(), "load_change"), QJsonValue(-20));
    EXPECT_EQ(trendField(clients[0].toObject(), "load_volume"), QJsonValue(2800.0));
    EXPECT_TRUE(trendField(clients[0].toObject(), "monotony").isNull());
    EXPECT_TRUE(trendField(clients[1].toObject(), "load_change").isNull());
    EXPECT_EQ(trendField(clients[1].toObject(), "monotony"), QJsonValue(2.5));
}

}  // namespace chalk::exchange
