#include "core/clients/health_question.h"

#include <gtest/gtest.h>

#include <set>

namespace chalk::clients {

TEST(HealthQuestion, EveryMarkBelongsToOneQuestion)
{
    std::multiset<HealthMark> marks;
    for (int i = 0; i < kHealthQuestionCount; ++i) {
        const auto own = marksOf(static_cast<HealthQuestion>(i));
        EXPECT_FALSE(own.empty()) << i;
        marks.insert(own.begin(), own.end());
    }
    EXPECT_EQ(marks.size(), static_cast<std::size_t>(kHealthMarkCount));
    for (int i = 0; i < kHealthMarkCount; ++i) {
        EXPECT_EQ(marks.count(static_cast<HealthMark>(i)), 1U) << i;
    }
}

TEST(HealthQuestion, KeysLeadBack)
{
    std::set<std::string_view> keys;
    for (int i = 0; i < kHealthMarkCount; ++i) {
        const auto mark = static_cast<HealthMark>(i);
        EXPECT_EQ(healthMarkOf(keyOf(mark)), mark);
        keys.insert(keyOf(mark));
    }
    EXPECT_EQ(keys.size(), static_cast<std::size_t>(kHealthMarkCount));
    for (int i = 0; i < kHealthQuestionCount; ++i) {
        EXPECT_EQ(healthQuestionOf(keyOf(static_cast<HealthQuestion>(i))), static_cast<HealthQuestion>(i));
    }
    EXPECT_EQ(healthMarkOf("headache"), std::nullopt);
    EXPECT_EQ(healthQuestionOf(""), std::nullopt);
}

// Riebe et al. 2015: known disease is cardiac, peripheral vascular, cerebrovascular, metabolic (diabetes) or renal; disease of the lung no longer
// refers by itself.
TEST(HealthQuestion, DiseasesOfThePublishedAlgorithm)
{
    std::set<HealthMark> known;
    for (int i = 0; i < kHealthMarkCount; ++i) {
        if (weightOf(static_cast<HealthMark>(i)) == HealthWeight::KnownDisease) {
            known.insert(static_cast<HealthMark>(i));
        }
    }
    EXPECT_EQ(known, (std::set{HealthMark::HeartDisease, HealthMark::ArteryDiseaseOrStroke, HealthMark::Diabetes, HealthMark::KidneyDisease}));
}

TEST(HealthQuestion, PainAtRestAndFaintingEndTheConversation)
{
    EXPECT_EQ(weightOf(HealthMark::ChestPainAtRest), HealthWeight::SeekCareNow);
    EXPECT_EQ(weightOf(HealthMark::Fainted), HealthWeight::SeekCareNow);
    EXPECT_EQ(weightOf(HealthMark::ChestPainOnEffort), HealthWeight::Symptom);
}

TEST(HealthQuestion, JointsSuggestTheirCaution)
{
    EXPECT_EQ(cautionTagOf(HealthMark::Knee), lifts::CautionTag::Knee);
    EXPECT_EQ(cautionTagOf(HealthMark::GaveBirth), lifts::CautionTag::PelvicFloor);
    EXPECT_EQ(cautionTagOf(HealthMark::Smokes), std::nullopt);
}

}  // namespace chalk::clients
