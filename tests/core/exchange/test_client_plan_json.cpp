#include "core/exchange/client_plan_json.h"

#include <QJsonArray>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

const base::Date kPlansToday = base::Date::fromYmd(2026, 11, 25).value();

direction::ClientPlan documentPlan()
{
    direction::ClientPlan plan;
    plan.begunOn = kPlansToday - 20;
    plan.plan = direction::planFor({direction::Direction::Physique, direction::Wave::Linear, 8, 3, false, base::Date::fromYmd(2026, 11, 9).value(),
                                    {{base::LiftId(1), direction::LiftRole::Main, 2}, {base::LiftId(2), direction::LiftRole::Assistance, 1}}});
    plan.singles = {{base::Load::fromCenti(10250), true}, {}};
    plan.endedOn = kPlansToday;
    plan.note = "Back to rowing";
    return plan;
}

DocumentClient clientWithTwoLifts()
{
    DocumentClient client;
    client.lifts.resize(2);
    client.lifts[1].pattern = lifts::Pattern::Hinge;
    return client;
}

/// Where reading the plans and tests of a client fails; `none` where it does not.
std::string faultIn(const QJsonObject& object, DocumentClient client = clientWithTwoLifts())
{
    ObjectReader reader(object, {});
    readDirection(reader, client, kPlansToday);
    return reader.fault() ? reader.fault()->field : std::string("none");
}

std::string faultOfPlan(const direction::ClientPlan& plan)
{
    return faultIn({{QStringLiteral("plans"), QJsonArray{toJson(plan)}}});
}

}  // namespace

TEST(ClientPlanJson, ReadsBackWhatWasWritten)
{
    const DocumentTest test{lifts::Pattern::Hinge, kPlansToday - 3, base::Load::fromCenti(14250), base::Reps(3), direction::TestEnd::Stopped, "Belt"};
    const QJsonObject object{{QStringLiteral("plans"), QJsonArray{toJson(documentPlan())}}, {QStringLiteral("tested_maxima"), QJsonArray{toJson(test)}}};
    DocumentClient client = clientWithTwoLifts();
    ObjectReader reader(object, {});
    readDirection(reader, client, kPlansToday);
    ASSERT_FALSE(reader.fault()) << reader.fault()->field << ' ' << reader.fault()->reason;
    EXPECT_EQ(client.plans, std::vector{documentPlan()});
    EXPECT_EQ(client.tests, std::vector{test});
    const auto content = readPlanContent(planContentToJson(documentPlan()), "plan");
    ASSERT_TRUE(content);
    EXPECT_EQ(content->plan, documentPlan().plan);
    EXPECT_EQ(content->singles, documentPlan().singles);
}

TEST(ClientPlanJson, AFaultNamesTheField)
{
    EXPECT_EQ(faultIn({}), "none");
    direction::ClientPlan plan = documentPlan();
    plan.begunOn = kPlansToday + 1;
    EXPECT_EQ(faultOfPlan(plan), "plans[0].begun");
    plan = documentPlan();
    plan.plan.wishes.lifts[1].lift = base::LiftId(3);
    EXPECT_EQ(faultOfPlan(plan), "plans[0].plan");
    plan = documentPlan();
    plan.singles.pop_back();
    EXPECT_EQ(faultOfPlan(plan), "plans[0].singles");
    QJsonObject test = toJson(DocumentTest{lifts::Pattern::Squat, kPlansToday, base::Load::fromCenti(100), base::Reps(1), direction::TestEnd::Found, {}});
    test.insert(QStringLiteral("reps"), 6);
    EXPECT_EQ(faultIn({{QStringLiteral("tested_maxima"), QJsonArray{test}}}), "tested_maxima[0].reps");
    test.insert(QStringLiteral("reps"), 1);
    test.insert(QStringLiteral("lift"), QStringLiteral("single_leg"));
    EXPECT_EQ(faultIn({{QStringLiteral("tested_maxima"), QJsonArray{test}}}), "tested_maxima[0].lift");
}

}  // namespace chalk::exchange
