#include "core/exchange/block_plan_json.h"

#include "core/direction/plan_calendar.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::exchange {

namespace {

using direction::BlockPlan;

const base::Date kPlanStart = base::Date::fromYmd(2026, 11, 30).value();

rc::Gen<BlockPlan> anyPlan()
{
    return rc::gen::exec([] {
        direction::PlanWishes wishes;
        wishes.direction = *rc::gen::elementOf(std::vector(direction::kDirections.begin(), direction::kDirections.end()));
        wishes.wave = *rc::gen::element(direction::Wave::Linear, direction::Wave::Undulating);
        wishes.weeks = *rc::gen::inRange(direction::kLeastWeeks, direction::kMostWeeks + 1);
        wishes.sessionsAWeek = *rc::gen::inRange(1, 8);
        wishes.endsWithTest = *rc::gen::arbitrary<bool>();
        wishes.start = kPlanStart + 7 * *rc::gen::inRange(0, 200);
        const int lifts = *rc::gen::inRange(1, 9);
        for (int i = 0; i < lifts; ++i) {
            wishes.lifts.push_back({base::LiftId(i + 1), *rc::gen::element(direction::LiftRole::Main, direction::LiftRole::Assistance, direction::LiftRole::Upkeep),
                                    *rc::gen::inRange(1, wishes.sessionsAWeek + 1)});
        }
        const std::vector<base::Date> missed{wishes.start + 14, wishes.start + 21};
        return withMissedWeeks(planFor(wishes), missed, direction::MissedWeeks::Shift);
    });
}

/// Where reading fails after `change`; `none` where it does not.
template <class Change>
std::string faultAfter(Change change)
{
    QJsonObject object = toJson(direction::planFor({direction::Direction::Strength, direction::Wave::Linear, 8, 2, true, kPlanStart, {{base::LiftId(3), {}, 2}}}));
    change(object);
    const auto read = readBlockPlan(object, "block");
    return read ? "none" : read.error().field;
}

/// Sets a field of the first exposure of the first lift of the second week.
auto withWork(const char* field, const QJsonValue& value)
{
    return [field, value](QJsonObject& plan) {
        QJsonArray weeks = plan[QLatin1String("plan")].toArray();
        QJsonObject week = weeks[1].toObject();
        QJsonArray lifts = week[QLatin1String("work")].toArray();
        QJsonArray exposures = lifts[0].toArray();
        QJsonObject work = exposures[0].toObject();
        work[QLatin1String(field)] = value;
        exposures[0] = work;
        lifts[0] = exposures;
        week[QLatin1String("work")] = lifts;
        weeks[1] = week;
        plan[QLatin1String("plan")] = weeks;
    };
}

auto withWeek(const char* field, const QJsonValue& value)
{
    return [field, value](QJsonObject& plan) {
        QJsonArray weeks = plan[QLatin1String("plan")].toArray();
        QJsonObject week = weeks[1].toObject();
        week[QLatin1String(field)] = value;
        weeks[1] = week;
        plan[QLatin1String("plan")] = weeks;
    };
}

}  // namespace

RC_GTEST_PROP(BlockPlanJson, ReadsBackWhatItWrites, ())
{
    const BlockPlan plan = *anyPlan();
    const auto text = QJsonDocument(toJson(plan)).toJson();
    const auto read = readBlockPlan(QJsonDocument::fromJson(text).object(), {});
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == plan);
}

TEST(BlockPlanJson, FaultsNameTheirPlace)
{
    EXPECT_EQ(faultAfter([](QJsonObject&) {}), "none");
    EXPECT_EQ(faultAfter([](QJsonObject& o) { o[QLatin1String("wave")] = QStringLiteral("flat"); }), "block.wave");
    EXPECT_EQ(faultAfter([](QJsonObject& o) { o[QLatin1String("weeks")] = 17; }), "block.weeks");
    EXPECT_EQ(faultAfter([](QJsonObject& o) { o[QLatin1String("start")] = QStringLiteral("2026-12-01"); }), "block.start");
    EXPECT_EQ(faultAfter([](QJsonObject& o) { o[QLatin1String("colour")] = 1; }), "block.colour");
    EXPECT_EQ(faultAfter([](QJsonObject& o) { o.remove(QLatin1String("plan")); }), "block.plan");
    EXPECT_EQ(faultAfter(withWeek("monday", QStringLiteral("2026-12-08"))), "block.plan[1].monday");
    EXPECT_EQ(faultAfter(withWeek("monday", QStringLiteral("2026-11-30"))), "block.plan[1].monday");
    EXPECT_EQ(faultAfter(withWeek("work", QJsonArray())), "block.plan[1].work");
    EXPECT_EQ(faultAfter(withWeek("work", QJsonArray{1})), "block.plan[1].work[0]");
    EXPECT_EQ(faultAfter(withWork("percent", 100.1)), "block.plan[1].work[0][0].percent");
    EXPECT_EQ(faultAfter(withWork("percent", 80.25)), "block.plan[1].work[0][0].percent");
    EXPECT_EQ(faultAfter(withWork("reps_most", 1)), "block.plan[1].work[0][0].reps_most");
    EXPECT_EQ(faultAfter(withWork("sets", 0)), "block.plan[1].work[0][0].sets");
}

}  // namespace chalk::exchange
