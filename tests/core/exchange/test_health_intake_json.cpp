#include "core/exchange/health_intake_json.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::exchange {

namespace {

using clients::HealthIntake;
using clients::HealthMark;
using clients::HealthQuestion;

JsonResult<HealthIntake> readIntakeText(const char* text)
{
    const auto value = parseJson(text);
    return value ? readHealthIntake(*value, {}) : tl::make_unexpected(value.error());
}

std::string intakeFault(const char* text)
{
    const auto read = readIntakeText(text);
    return read ? std::string() : read.error().field + " " + read.error().reason;
}

std::optional<int> anyReading(int low, int high)
{
    return *rc::gen::arbitrary<bool>() ? std::optional(*rc::gen::inRange(low, high)) : std::nullopt;
}

HealthIntake anyWrittenIntake()
{
    HealthIntake intake;
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        clients::HealthAnswer& answer = intake.answerTo(static_cast<HealthQuestion>(i));
        answer.isYes = *rc::gen::element(std::optional<bool>(), std::optional(true), std::optional(false));
        for (const HealthMark mark : clients::marksOf(static_cast<HealthQuestion>(i))) {
            if (*rc::gen::arbitrary<bool>()) {
                answer.marks.push_back(mark);
            }
        }
        answer.detail = *rc::gen::element(std::string(), std::string("since the spring — \"bad\""));
    }
    intake.isRegularExerciser = *rc::gen::element(std::optional<bool>(), std::optional(true), std::optional(false));
    intake.intended = *rc::gen::element(clients::Intensity::Light, clients::Intensity::Vigorous);
    intake.resting = {anyReading(20, 251), anyReading(201, 301), anyReading(20, 201)};
    intake.note = *rc::gen::element(std::string(), std::string("prefers mornings"));
    intake.agreedOn = *rc::gen::element(std::optional<base::Date>(), std::optional(base::Date::fromDays(20'000)));
    return intake;
}

}  // namespace

TEST(HealthIntakeJson, ReadsBareAndFullAnswers)
{
    const auto intake = readIntakeText(R"({"answers": {"chest_pain": false, "joint_bone_back": {"yes": true, "marks": ["hip"], "detail": "Stiff"}},
                                           "regular_exerciser": true, "intended": "vigorous", "resting": {"systolic": 148, "diastolic": 88}})");
    ASSERT_TRUE(intake) << intake.error().field;
    EXPECT_EQ(intake->answerTo(HealthQuestion::ChestPain).isYes, false);
    EXPECT_EQ(intake->answerTo(HealthQuestion::JointBoneBack), (clients::HealthAnswer{true, {HealthMark::Hip}, "Stiff"}));
    EXPECT_EQ(intake->isRegularExerciser, true);
    EXPECT_EQ(intake->intended, clients::Intensity::Vigorous);
    EXPECT_EQ(intake->resting, (clients::RestingReading{{}, 148, 88}));
    EXPECT_FALSE(intake->answerTo(HealthQuestion::Smoking).isYes);
}

TEST(HealthIntakeJson, NamesTheFault)
{
    EXPECT_EQ(intakeFault(R"({"answers": {"headache": true}})"), "answers.headache is no question of the intake");
    EXPECT_EQ(intakeFault(R"({"answers": {"chest_pain": "yes"}})"), "answers.chest_pain must be an object");
    EXPECT_EQ(intakeFault(R"({"answers": {"chest_pain": {"yes": true, "marks": ["hip"]}}})"), "answers.chest_pain.marks[0] is no mark of this question");
    EXPECT_EQ(intakeFault(R"({"answers": {"joint_bone_back": {"yes": true, "marks": ["hip", "hip"]}}})"), "answers.joint_bone_back.marks[1] is there twice");
    EXPECT_EQ(intakeFault(R"({"answers": 7})"), "answers must be an object");
    EXPECT_EQ(intakeFault(R"({"intended": "brutal"})"), "intended must be light, moderate or vigorous");
    EXPECT_EQ(intakeFault(R"({"resting": {"systolic": 400}})"), "resting.systolic must be 50 to 300");
    EXPECT_EQ(intakeFault(R"({"resting": {"systolic": 80, "diastolic": 90}})"), "resting.diastolic must be below systolic");
    EXPECT_EQ(intakeFault(R"({"agreed": "yesterday"})"), "agreed must be a day, YYYY-MM-DD");
    EXPECT_EQ(intakeFault(R"({"shoe_size": 43})"), "shoe_size is not a field that is known here");
}

RC_GTEST_PROP(HealthIntakeJson, WhatIsWrittenReadsTheSame, ())
{
    const HealthIntake intake = anyWrittenIntake();
    const auto read = readHealthIntake(toJson(intake), {});
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == intake);
}

}  // namespace chalk::exchange
