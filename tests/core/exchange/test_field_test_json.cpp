#include "core/exchange/field_test_json.h"

#include <gtest/gtest.h>

#include <QJsonDocument>

namespace chalk::exchange {

namespace {

JsonResult<FieldTestResult> readTestOf(const QByteArray& text)
{
    return readFieldTest(QJsonDocument::fromJson(text).object());
}

std::string fieldTestFaultOf(const QByteArray& text)
{
    const auto read = readTestOf(text);
    return read ? std::string("none") : read.error().field;
}

}  // namespace

TEST(FieldTestJson, EveryTestHasItsOwnFields)
{
    const auto lunge = readTestOf(R"({"test": "weight_bearing_lunge", "age": 45, "left_cm": 11, "right_cm": 12.5})").value();
    EXPECT_EQ(std::get<screens::WeightBearingLunge>(lunge.test).rightMm, 125);
    EXPECT_EQ(lunge.person.sex, clients::NormSex::NotGiven);
    const auto stance = readTestOf(R"({"test": "single_leg_stance", "age": 61, "seconds": 24.125})").value();
    EXPECT_EQ(std::get<screens::SingleLegStance>(stance.test).heldMs, 24125);
    const auto reach = readTestOf(R"({"test": "sit_and_reach", "age": 36, "sex": "male", "reach_cm": -4.5, "zero_cm": 0})").value();
    EXPECT_EQ(std::get<screens::SitAndReach>(reach.test).reachMm, -45);
    EXPECT_EQ(reach.person.sex, clients::NormSex::Male);
    const auto chair = readTestOf(R"({"test": "chair_stand", "age": 67, "stands": 12, "arms_used": true})").value();
    EXPECT_TRUE(std::get<screens::ChairStand>(chair.test).areArmsUsed);
    EXPECT_EQ(std::get<screens::PushUps>(readTestOf(R"({"test": "push_ups", "age": 20, "reps": 9, "form": "knees"})")->test).form, screens::PushUpForm::Knees);
    EXPECT_EQ(std::get<screens::Plank>(readTestOf(R"({"test": "plank", "age": 20, "seconds": 90})")->test).heldMs, 90000);
}

TEST(FieldTestJson, FaultsNameTheField)
{
    EXPECT_EQ(fieldTestFaultOf("{}"), "test");
    EXPECT_EQ(fieldTestFaultOf(R"({"test": "sprint", "age": 30})"), "test");
    EXPECT_EQ(fieldTestFaultOf(R"({"test": "plank", "age": 30})"), "seconds");
    EXPECT_EQ(fieldTestFaultOf(R"({"test": "plank", "seconds": 30})"), "age");
    EXPECT_EQ(fieldTestFaultOf(R"({"test": "plank", "age": 121, "seconds": 30})"), "age");
    EXPECT_EQ(fieldTestFaultOf(R"({"test": "plank", "age": 30, "seconds": -1})"), "seconds");
    EXPECT_EQ(fieldTestFaultOf(R"({"test": "plank", "age": 30, "seconds": 30, "reps": 2})"), "reps");
    EXPECT_EQ(fieldTestFaultOf(R"({"test": "push_ups", "age": 30, "reps": 2, "form": "wall"})"), "form");
    EXPECT_EQ(fieldTestFaultOf(R"({"test": "plank", "age": 30, "seconds": 30, "sex": "F"})"), "sex");
    EXPECT_EQ(fieldTestFaultOf(R"({"test": "weight_bearing_lunge", "age": 30, "left_cm": 1.25, "right_cm": 1})"), "left_cm");
}

TEST(FieldTestJson, WritesInTheUnitThatIsMeasured)
{
    const auto stance = readTestOf(R"({"test": "single_leg_stance", "age": 61, "seconds": 24.5})").value();
    const QJsonObject object = toJson(stance.test, screens::normOf(stance.test, stance.person));
    EXPECT_EQ(object.value(QLatin1String("class")), QStringLiteral("below_mean"));
    EXPECT_EQ(object.value(QLatin1String("value")), 24.5);
    EXPECT_EQ(object.value(QLatin1String("unit")), QStringLiteral("s"));
    EXPECT_EQ(object.value(QLatin1String("range")).toObject().value(QLatin1String("to")), 26.999);
    EXPECT_TRUE(object.value(QLatin1String("range")).toObject().value(QLatin1String("from")).isNull());
    EXPECT_TRUE(object.value(QLatin1String("usual")).isNull());
    EXPECT_EQ(object.value(QLatin1String("ages")).toObject().value(QLatin1String("from")), 60);
}

TEST(FieldTestJson, ADayOfTestsReadsBack)
{
    screens::FieldTestDay day;
    day.date = *base::Date::parse("2026-11-24");
    day.tests = {screens::ChairStand{base::Reps(12), true}, screens::PushUps{base::Reps(9), screens::PushUpForm::Knees}, screens::SingleLegStance{24'125},
                 screens::Plank{62'500}, screens::WeightBearingLunge{110, 125}, screens::SitAndReach{-45, 230}};
    const QJsonObject json = toJson(day);
    const auto read = readFieldTestDay(json, {});
    ASSERT_TRUE(read) << read.error().field;
    EXPECT_EQ(toJson(*read), json);
    EXPECT_EQ(read->date, day.date);
    ASSERT_EQ(read->tests.size(), day.tests.size());
    EXPECT_EQ(std::get<screens::SitAndReach>(read->tests[5]).reachMm, -45);
    EXPECT_EQ(std::get<screens::SitAndReach>(read->tests[5]).zeroMm, 230);
    EXPECT_EQ(std::get<screens::SingleLegStance>(read->tests[2]).heldMs, 24'125);
}

TEST(FieldTestJson, FaultsOfADayNameTheirPlace)
{
    const auto fault = [](const QByteArray& text) {
        const auto read = readFieldTestDay(QJsonDocument::fromJson(text).object(), {});
        return read ? std::string("none") : read.error().field;
    };
    EXPECT_EQ(fault(R"({"date": "2026-02-30", "tests": []})"), "date");
    EXPECT_EQ(fault(R"({"date": "2026-11-24"})"), "tests");
    EXPECT_EQ(fault(R"({"date": "2026-11-24", "tests": [{"test": "plank", "seconds": 5}, {"test": "plank"}]})"), "tests[1].seconds");
    EXPECT_EQ(fault(R"({"date": "2026-11-24", "tests": [{"test": "plank", "seconds": 5}, {"test": "plank", "seconds": 6}]})"), "tests[1].test");
    EXPECT_EQ(fault(R"({"date": "2026-11-24", "tests": [{"test": "plank", "seconds": 5, "age": 40}]})"), "tests[0].age");
    EXPECT_EQ(fault(R"({"date": "2026-11-24", "tests": []})"), "none");
}

}  // namespace chalk::exchange
