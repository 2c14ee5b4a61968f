#include "core/clients/intake_clearance.h"

#include <gtest/gtest.h>

namespace chalk::clients {

namespace {

HealthOutcome outcomeWith(HealthMark mark, HealthLevel level)
{
    HealthOutcome outcome;
    outcome.level = level;
    outcome.findings = {{HealthQuestion::HeartOrPressure, mark, false}};
    return outcome;
}

Clearance granted()
{
    Clearance clearance;
    clearance.state = ClearanceState::Granted;
    clearance.grantedBy = "Dr Hale";
    return clearance;
}

std::optional<std::vector<HealthMark>> letterAbout(HealthMark mark)
{
    return std::vector{mark};
}

}  // namespace

TEST(IntakeClearance, NotesAndLimitsAskNobody)
{
    EXPECT_TRUE(askedAbout(outcomeWith(HealthMark::Smokes, HealthLevel::Clear)).empty());
    EXPECT_TRUE(askedAbout(outcomeWith(HealthMark::Knee, HealthLevel::Limits)).empty());
    EXPECT_EQ(askedAbout(outcomeWith(HealthMark::Pregnant, HealthLevel::AskDoctor)), std::vector{HealthMark::Pregnant});
}

TEST(IntakeClearance, ALetterAboutSomethingElseIsNoAnswer)
{
    const auto outcome = outcomeWith(HealthMark::HeartDisease, HealthLevel::AskDoctor);
    EXPECT_EQ(clearanceAfter(granted(), outcome, "why", letterAbout(HealthMark::HeartDisease)), granted());
    EXPECT_EQ(clearanceAfter(granted(), outcome, "why", letterAbout(HealthMark::Diabetes)).state, ClearanceState::Recommended);
    EXPECT_EQ(clearanceAfter(granted(), outcome, "why", std::nullopt).state, ClearanceState::Recommended);
}

TEST(IntakeClearance, NoLetterStandsAgainstCareNow)
{
    auto outcome = outcomeWith(HealthMark::HeartDisease, HealthLevel::NotToday);
    outcome.isCareNeededNow = true;
    EXPECT_EQ(clearanceAfter(granted(), outcome, "why", letterAbout(HealthMark::HeartDisease)).state, ClearanceState::StopAndSeek);
}

TEST(IntakeClearance, TheDayOfTheQuestionStaysWhileItIsTheSameOne)
{
    Clearance before;
    before.state = ClearanceState::Recommended;
    before.askedOn = base::Date::fromDays(20'000);
    const auto outcome = outcomeWith(HealthMark::HeartDisease, HealthLevel::AskDoctor);
    EXPECT_EQ(clearanceAfter(before, outcome, "why", {}).askedOn, before.askedOn);
    EXPECT_EQ(clearanceAfter({}, outcome, "why", {}).askedOn, std::nullopt);
    before.remindOn = base::Date::fromDays(20'007);
    EXPECT_EQ(clearanceAfter(before, outcome, "why", {}).remindOn, before.remindOn);
    EXPECT_EQ(clearanceAfter(before, outcomeWith(HealthMark::Smokes, HealthLevel::Clear), "why", {}).remindOn, std::nullopt);
}

}  // namespace chalk::clients
