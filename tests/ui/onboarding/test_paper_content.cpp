#include "ui/onboarding/paper_content.h"

#include "tests/ui/onboarding/onboarding_bench.h"

#include <gtest/gtest.h>

namespace chalk::ui::onboarding {

using clients::ClearanceState;

class PaperContentTest : public ::testing::Test, protected test::OnboardingBench {
protected:
    print::HealthPaperContent read(base::ClientId client) { return readPaperContent(m_studio.database(), client, m_clock.today()).value(); }
};

TEST_F(PaperContentTest, HasWhatIsOnFileToday)
{
    const base::ClientId cleo = addCleo();
    answerAllNo(cleo);
    store::ClientWriter writer(m_studio.database());
    ASSERT_TRUE(writer.saveCaution(cleo, {{}, "Hip", "No deep bend", "No deep bend", {}, {}}, m_clock.today()));
    ASSERT_TRUE(writer.saveCaution(cleo, {{}, "Wrist", "Over", "Over", {}, m_clock.today() - 1}, m_clock.today()));
    const print::HealthPaperContent content = read(cleo);
    EXPECT_EQ(content.studioName, "Small Studio");
    EXPECT_EQ(content.coachName, "Ines");
    EXPECT_EQ(content.client.name, "Cleo Marsh");
    EXPECT_EQ(content.profile.consentOn, m_clock.today());
    EXPECT_EQ(content.clearance.state, ClearanceState::NotNeeded);
    EXPECT_EQ(content.outcome.level, clients::HealthLevel::Clear);
    EXPECT_TRUE(content.outcome.isComplete());
    ASSERT_EQ(content.cautions.size(), 1U) << "one is over";
    EXPECT_EQ(content.cautions.front().bodyPart, "Hip");
}

TEST_F(PaperContentTest, BeforeAnythingIsAskedTheIntakeIsEmpty)
{
    const print::HealthPaperContent content = read(addCleo());
    EXPECT_EQ(content.intake, clients::HealthIntake());
    EXPECT_FALSE(content.outcome.isComplete());
}

TEST_F(PaperContentTest, NobodyIsAnError)
{
    EXPECT_FALSE(readPaperContent(m_studio.database(), base::ClientId(99), m_clock.today()));
}

TEST_F(PaperContentTest, ADoctorIsAskedWhereAnAnswerIsAwaitedOrTheIntakeCallsForIt)
{
    const clients::HealthOutcome calm;
    clients::HealthOutcome grave;
    grave.level = clients::HealthLevel::AskDoctor;
    for (const auto& [state, isAsked] : {std::pair(ClearanceState::NotNeeded, false), {ClearanceState::Unanswered, false}, {ClearanceState::Granted, false},
                                         {ClearanceState::Recommended, true}, {ClearanceState::StopAndSeek, true}}) {
        clients::Clearance clearance;
        clearance.state = state;
        EXPECT_EQ(isDoctorAsked(clearance, calm), isAsked) << keyOf(state);
        EXPECT_TRUE(isDoctorAsked(clearance, grave)) << keyOf(state);
    }
}

}  // namespace chalk::ui::onboarding
