#include "core/exchange/week_plan_json.h"

#include <QJsonArray>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

using week::WeekPlan;
using week::WeekProblem;

/// Two coaches and three sessions of one client; what else is there to say of them does not matter.
WeekProblem threeSessions()
{
    WeekProblem problem;
    problem.name = "three";
    problem.coaches.resize(2);
    problem.coaches[0].id = "Mia";
    problem.coaches[1].id = "Noa";
    problem.clients.resize(1);
    problem.sessions.resize(3);
    for (std::size_t i = 0; i < 3; ++i) {
        problem.sessions[i].id = "S" + std::to_string(i + 1);
    }
    return problem;
}

std::string faultOfPlan(const QByteArray& text)
{
    const auto plan = parseJson(text).and_then([](const QJsonValue& value) { return readWeekPlan(value, threeSessions()); });
    return plan ? "none" : plan.error().field + ": " + plan.error().reason;
}

}  // namespace

TEST(WeekPlanJson, WritesEverySessionInOrder)
{
    const QJsonObject object = toJson(WeekPlan{week::Slot{1, 480}, std::nullopt, week::Slot{0, 0}}, threeSessions(), 1234);
    EXPECT_EQ(object.value(QStringLiteral("instance")).toString(), QStringLiteral("three"));
    EXPECT_EQ(object.value(QStringLiteral("objective")).toInt(), 1234);
    const auto expected = parseJson(R"([{"session": "S1", "coach": "Noa", "start": 480}, {"session": "S2", "coach": null, "start": null},
                                        {"session": "S3", "coach": "Mia", "start": 0}])");
    ASSERT_TRUE(expected);
    EXPECT_EQ(object.value(QStringLiteral("plan")).toArray(), expected->toArray());
}

TEST(WeekPlanJson, ReadsBackWhatItWrites)
{
    const WeekPlan plan{week::Slot{1, 480}, std::nullopt, week::Slot{0, 10'079}};
    const auto read = readWeekPlan(toJson(plan, threeSessions(), 0), threeSessions());
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, plan);
}

TEST(WeekPlanJson, TakesAnyOrderAndLeavesOverWhoIsNotThere)
{
    const auto read = parseJson(R"({"plan": [{"session": "S3", "coach": "Noa", "start": 60}, {"session": "S1", "coach": "Mia", "start": 15}]})")
                          .and_then([](const QJsonValue& value) { return readWeekPlan(value, threeSessions()); });
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, (WeekPlan{week::Slot{0, 15}, std::nullopt, week::Slot{1, 60}}));
}

TEST(WeekPlanJson, NamesTheFieldThatIsWrong)
{
    EXPECT_EQ(faultOfPlan(R"({"plans": []})"), "plans: is not a field that is known here");
    EXPECT_EQ(faultOfPlan(R"({"plan": [{"session": "S4", "coach": "Mia", "start": 0}]})"), "plan[0].session: S4 is not among the sessions");
    EXPECT_EQ(faultOfPlan(R"({"plan": [{"session": "S1", "coach": "Zoe", "start": 0}]})"), "plan[0].coach: Zoe is not among the coaches");
    EXPECT_EQ(faultOfPlan(R"({"plan": [{"session": "S1", "coach": "Mia", "start": 10080}]})"), "plan[0].start: must be 0 to 10079");
    EXPECT_EQ(faultOfPlan(R"({"plan": [{"session": "S1", "coach": null, "start": 0}]})"), "plan[0].coach: must be a text");
    EXPECT_EQ(faultOfPlan(R"({"plan": [{"session": "S1", "coach": "Mia", "start": null}]})"), "plan[0].start: must be a number");
    EXPECT_EQ(faultOfPlan(R"({"plan": [{"session": "S1", "coach": "Mia", "start": 0}, {"session": "S1", "coach": null, "start": null}]})"),
              "plan[1].session: S1 is there twice");
}

}  // namespace chalk::exchange
