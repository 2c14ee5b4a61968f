#include "core/store/intake_clearance.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

using clients::ClearanceState;
using clients::HealthMark;

clients::HealthOutcome outcomeWith(HealthMark mark, clients::HealthLevel level)
{
    clients::HealthOutcome outcome;
    outcome.level = level;
    outcome.findings = {{clients::HealthQuestion::HeartOrPressure, mark, false}};
    return outcome;
}

clients::Clearance granted()
{
    clients::Clearance clearance;
    clearance.state = ClearanceState::Granted;
    clearance.grantedBy = "Dr Hale";
    return clearance;
}

Letter letterAbout(HealthMark mark)
{
    return {"Dr Hale", {}, {}, {}, {mark}, {}, {}};
}

}  // namespace

TEST(IntakeClearance, NotesAndLimitsAskNobody)
{
    EXPECT_TRUE(askedAbout(outcomeWith(HealthMark::Smokes, clients::HealthLevel::Clear)).empty());
    EXPECT_TRUE(askedAbout(outcomeWith(HealthMark::Knee, clients::HealthLevel::Limits)).empty());
    EXPECT_EQ(askedAbout(outcomeWith(HealthMark::Pregnant, clients::HealthLevel::AskDoctor)), std::vector{HealthMark::Pregnant});
}

TEST(IntakeClearance, ALetterAboutSomethingElseIsNoAnswer)
{
    const auto outcome = outcomeWith(HealthMark::HeartDisease, clients::HealthLevel::AskDoctor);
    EXPECT_EQ(clearanceAfter(granted(), outcome, "why", letterAbout(HealthMark::HeartDisease)), granted());
    EXPECT_EQ(clearanceAfter(granted(), outcome, "why", letterAbout(HealthMark::Diabetes)).state, ClearanceState::Recommended);
    EXPECT_EQ(clearanceAfter(granted(), outcome, "why", std::nullopt).state, ClearanceState::Recommended);
}

TEST(IntakeClearance, NoLetterStandsAgainstCareNow)
{
    auto outcome = outcomeWith(HealthMark::HeartDisease, clients::HealthLevel::NotToday);
    outcome.isCareNeededNow = true;
    EXPECT_EQ(clearanceAfter(granted(), outcome, "why", letterAbout(HealthMark::HeartDisease)).state, ClearanceState::StopAndSeek);
}

TEST(IntakeClearance, TheDayOfTheQuestionStaysWhileItIsTheSameOne)
{
    clients::Clearance before;
    before.state = ClearanceState::Recommended;
    before.askedOn = base::Date::fromDays(20'000);
    const auto outcome = outcomeWith(HealthMark::HeartDisease, clients::HealthLevel::AskDoctor);
    EXPECT_EQ(clearanceAfter(before, outcome, "why", {}).askedOn, before.askedOn);
    EXPECT_EQ(clearanceAfter({}, outcome, "why", {}).askedOn, std::nullopt);
}

}  // namespace chalk::store
