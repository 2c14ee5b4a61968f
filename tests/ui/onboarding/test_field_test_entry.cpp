#include "ui/onboarding/field_test_entry.h"

#include <gtest/gtest.h>

namespace chalk::ui::onboarding {

namespace {

using clients::NormSex;
using screens::FieldTest;

FieldTest readAs(const FieldTest& test, const FieldTestTyped& typed)
{
    return fieldTestOf(test, typed).value().value();
}

QString faultIn(const FieldTest& test, const QString& first, const QString& second = {})
{
    const auto read = fieldTestOf(test, {first, second, false});
    return read ? QString() : read.error().reason;
}

}  // namespace

TEST(FieldTestEntry, NothingTypedIsNoResult)
{
    for (const FieldTest& test : {FieldTest(screens::ChairStand{}), FieldTest(screens::WeightBearingLunge{}), FieldTest(screens::Plank{})}) {
        EXPECT_EQ(fieldTestOf(test, {QStringLiteral("  "), {}, true}).value(), std::nullopt);
    }
    EXPECT_EQ(fieldTestOf(screens::SitAndReach{}, {{}, QStringLiteral("38"), false}).value(), std::nullopt);
}

TEST(FieldTestEntry, ReadsWhatPeopleType)
{
    EXPECT_TRUE(std::get<screens::ChairStand>(readAs(screens::ChairStand{}, {QStringLiteral("12"), {}, true})).areArmsUsed);
    EXPECT_EQ(std::get<screens::PushUps>(readAs(screens::PushUps{}, {QStringLiteral("12"), {}, true})).form, screens::PushUpForm::Knees);
    EXPECT_EQ(std::get<screens::Plank>(readAs(screens::Plank{}, {QStringLiteral("62,5"), {}, false})).heldMs, 62'500);
    EXPECT_EQ(std::get<screens::Plank>(readAs(screens::Plank{}, {QStringLiteral("1:02.5"), {}, false})).heldMs, 62'500);
    EXPECT_EQ(std::get<screens::SingleLegStance>(readAs(screens::SingleLegStance{}, {QStringLiteral("9.05"), {}, false})).heldMs, 9'050);
    const auto reach = std::get<screens::SitAndReach>(readAs(screens::SitAndReach{}, {QStringLiteral("−4.5"), QStringLiteral("23"), false}));
    EXPECT_EQ(reach.reachMm, -45);
    EXPECT_EQ(reach.zeroMm, 230);
    EXPECT_EQ(std::get<screens::WeightBearingLunge>(readAs(screens::WeightBearingLunge{}, {QStringLiteral("11 cm"), QStringLiteral("12.5"), false})).rightMm, 125);
}

TEST(FieldTestEntry, WhatIsReadIsTypedTheSameAgain)
{
    const FieldTest tests[] = {screens::ChairStand{base::Reps(12), true}, screens::PushUps{base::Reps(9), screens::PushUpForm::Toes}, screens::SingleLegStance{24'125},
                               screens::Plank{62'500}, screens::WeightBearingLunge{110, 125}, screens::SitAndReach{-45, 230}};
    for (const FieldTest& test : tests) {
        EXPECT_EQ(typedOf(readAs(test, typedOf(test))), typedOf(test));
    }
    EXPECT_EQ(fieldTestResultText(tests[0]), QStringLiteral("12 with the arms"));
    EXPECT_EQ(fieldTestResultText(tests[4]), QStringLiteral("left 11, right 12.5 cm"));
    EXPECT_EQ(fieldTestResultText(tests[5]), QStringLiteral("-4.5 cm, zero at 23 cm"));
}

TEST(FieldTestEntry, FaultsQuoteWhatWasTyped)
{
    for (const char* text : {"x", "-1", "1001", "2.5"}) {
        EXPECT_TRUE(faultIn(screens::ChairStand{}, QString::fromUtf8(text)).contains(QString::fromUtf8(text))) << text;
    }
    for (const char* text : {"one", "-1", "3601", "1:60", "1.2345", "61:00"}) {
        EXPECT_TRUE(faultIn(screens::Plank{}, QString::fromUtf8(text)).contains(QString::fromUtf8(text))) << text;
    }
    for (const char* text : {"-1", "200.1", "1.25", "far"}) {
        EXPECT_TRUE(faultIn(screens::WeightBearingLunge{}, QString::fromUtf8(text), QStringLiteral("10")).contains(QString::fromUtf8(text))) << text;
        EXPECT_TRUE(faultIn(screens::SitAndReach{}, QStringLiteral("10"), QString::fromUtf8(text)).contains(QString::fromUtf8(text))) << text;
    }
}

TEST(FieldTestEntry, AHalfIsIncompleteAndNotWrong)
{
    EXPECT_TRUE(fieldTestOf(screens::WeightBearingLunge{}, {QStringLiteral("10"), {}, false}).error().isIncomplete);
    EXPECT_EQ(fieldTestOf(screens::WeightBearingLunge{}, {{}, QStringLiteral("10"), false}).error().field, 0);
    EXPECT_TRUE(fieldTestOf(screens::SitAndReach{}, {QStringLiteral("10"), {}, false}).error().isIncomplete);
    EXPECT_FALSE(fieldTestOf(screens::SitAndReach{}, {QStringLiteral("10"), QStringLiteral("?"), false}).error().isIncomplete);
}

// The average range of the chair stand for women of 65 to 69 is 11 to 16 (Rikli and Jones).
TEST(FieldTestEntry, TheVerdictChangesAtTheEdgesOfAClass)
{
    const auto verdict = [](int stands, int age) { return verdictOf(screens::ChairStand{base::Reps(stands), false}, {age, NormSex::Female}).headline; };
    EXPECT_EQ(verdict(10, 67), QStringLiteral("Below average: up to 10."));
    EXPECT_EQ(verdict(11, 67), QStringLiteral("Average: 11 to 16."));
    EXPECT_EQ(verdict(16, 67), QStringLiteral("Average: 11 to 16."));
    EXPECT_EQ(verdict(17, 67), QStringLiteral("Above average: 17 or more."));
    EXPECT_EQ(verdict(11, 59), QStringLiteral("No class: outside the age range of this norm, which is 60 to 94 years."));
}

TEST(FieldTestEntry, SaysWhyThereIsNoClass)
{
    const FieldTest chair = screens::ChairStand{base::Reps(11), false};
    EXPECT_EQ(verdictOf(chair, {std::nullopt, NormSex::Female}).headline, QStringLiteral("No class: norms go by age, and there is no birth date."));
    EXPECT_EQ(verdictOf(chair, {67, NormSex::NotGiven}).headline, QStringLiteral("No class: this norm is split by sex, and none is given."));
    EXPECT_TRUE(verdictOf(chair, {67, NormSex::Female}).detail.contains(QStringLiteral("65 to 69 years")));
    EXPECT_TRUE(verdictOf(chair, {67, NormSex::Female}).detail.contains(QStringLiteral("Rikli and Jones")));
}

// A difference under the error of the test, 2 cm in whole centimetres (Powden 2015), is no finding; that takes no age.
TEST(FieldTestEntry, ASideDifferenceInsideTheErrorIsNoFinding)
{
    EXPECT_TRUE(verdictOf(screens::WeightBearingLunge{100, 119}, {}).headline.startsWith(QStringLiteral("No finding")));
    EXPECT_TRUE(verdictOf(screens::WeightBearingLunge{100, 120}, {}).headline.startsWith(QStringLiteral("The sides differ by more")));
}

}  // namespace chalk::ui::onboarding
