#include "core/clients/profile.h"

#include <gtest/gtest.h>

namespace chalk::clients {

namespace {

const base::Date kToday = *base::Date::fromYmd(2026, 11, 25);

std::string faultyField(const std::optional<ProfileFault>& fault)
{
    return fault ? fault->field : std::string();
}

}  // namespace

TEST(Profile, AMinorIsUnderEighteen)
{
    const base::Date birth = *base::Date::fromYmd(2008, 11, 26);
    EXPECT_TRUE(isMinorOn(birth, kToday));
    EXPECT_FALSE(isMinorOn(birth, kToday + 1));
}

TEST(Profile, HealthIsKeptWithConsentAlone)
{
    Profile profile;
    EXPECT_FALSE(canKeepHealth(profile, {}, kToday));
    profile.consentOn = kToday;
    EXPECT_TRUE(canKeepHealth(profile, {}, kToday));
    EXPECT_FALSE(canKeepHealth(profile, {}, kToday - 1));
    EXPECT_TRUE(canKeepHealth(profile, base::Date::fromYmd(1990, 1, 1), kToday));
}

TEST(Profile, ThatOfAMinorWithTheGuardiansToo)
{
    Profile profile;
    profile.consentOn = kToday;
    const auto birth = base::Date::fromYmd(2012, 5, 1);
    EXPECT_FALSE(canKeepHealth(profile, birth, kToday));
    profile.guardian = "Nell Quill";
    profile.guardianConsentOn = kToday;
    EXPECT_TRUE(canKeepHealth(profile, birth, kToday));
}

TEST(Profile, ABirthDateIsPastAndOfAPersonAlive)
{
    EXPECT_EQ(faultOfBirth(kToday, kToday), std::nullopt);
    EXPECT_EQ(faultyField(faultOfBirth(kToday + 1, kToday)), "born");
    EXPECT_EQ(faultOfBirth(*base::Date::fromYmd(1905, 11, 26), kToday), std::nullopt);
    EXPECT_EQ(faultyField(faultOfBirth(*base::Date::fromYmd(1905, 11, 25), kToday)), "born");
}

TEST(Profile, NamesTheFieldThatCannotBe)
{
    Profile profile;
    EXPECT_EQ(faultOf(profile, kToday), std::nullopt);
    profile.sessionMinutes = 14;
    EXPECT_EQ(faultyField(faultOf(profile, kToday)), "session_minutes");
    profile.sessionMinutes = 241;
    EXPECT_EQ(faultyField(faultOf(profile, kToday)), "session_minutes");
    profile.sessionMinutes = 240;
    profile.consentOn = kToday + 1;
    EXPECT_EQ(faultyField(faultOf(profile, kToday)), "consent");
    profile.consentOn = kToday;
    profile.guardianConsentOn = kToday;
    EXPECT_EQ(faultyField(faultOf(profile, kToday)), "guardian");
    profile.guardian = "Nell Quill";
    profile.guardianConsentOn = kToday + 1;
    EXPECT_EQ(faultyField(faultOf(profile, kToday)), "guardian_consent");
}

TEST(Profile, SexKeysLeadBack)
{
    for (const NormSex sex : {NormSex::NotGiven, NormSex::Female, NormSex::Male}) {
        EXPECT_EQ(normSexOf(keyOf(sex)), sex);
    }
    EXPECT_EQ(normSexOf("x"), std::nullopt);
}

}  // namespace chalk::clients
