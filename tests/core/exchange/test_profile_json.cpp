#include "core/exchange/profile_json.h"

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

std::string profileFault(const char* text)
{
    const auto read = readProfile(parseJson(text).value(), {});
    return read ? std::string() : read.error().field + " " + read.error().reason;
}

std::string measuresFault(const char* text)
{
    const auto read = readBodyMeasures(parseJson(text).value(), {});
    return read ? std::string() : read.error().field + " " + read.error().reason;
}

clients::Profile fullProfile()
{
    clients::Profile profile;
    profile.pronouns = "she/her";
    profile.sex = clients::NormSex::Female;
    profile.contact = {{}, "555 0100", "quill@example.org"};
    profile.emergency = {"Nell Quill", "555 0101", {}};
    profile.trainingHistory = "Rowed at school";
    profile.sessionMinutes = 45;
    profile.isInGroup = true;
    EXPECT_TRUE(profile.free.add({0, 420, 570}));
    EXPECT_TRUE(profile.free.add({6, 1380, 1440}));
    EXPECT_TRUE(profile.preferred.add({0, 420, 480}));
    profile.homeKit = {lifts::EquipmentKind::Kettlebell};
    profile.consentOn = base::Date::fromDays(20'000);
    profile.guardian = "Nell Quill";
    profile.guardianConsentOn = base::Date::fromDays(20'001);
    return profile;
}

}  // namespace

TEST(ProfileJson, WhatIsWrittenReadsTheSame)
{
    for (const clients::Profile& profile : {clients::Profile(), fullProfile()}) {
        const auto read = readProfile(toJson(profile), {});
        ASSERT_TRUE(read) << read.error().field;
        EXPECT_EQ(*read, profile);
    }
}

TEST(ProfileJson, NamesTheFault)
{
    EXPECT_EQ(profileFault(R"({"sex": "x"})"), "sex must be female, male or not_given");
    EXPECT_EQ(profileFault(R"({"session_minutes": 10})"), "session_minutes must be 15 to 240");
    EXPECT_EQ(profileFault(R"({"free": [{"day": "mon", "from": "07:00", "to": "09:00"}, {"day": "noday", "from": "07:00", "to": "09:00"}]})"),
              "free[1].day must be mon, tue, wed, thu, fri, sat or sun");
    EXPECT_EQ(profileFault(R"({"free": [{"day": "mon", "from": "07:10", "to": "09:00"}]})"), "free[0].to must be after from, and both whole half-hours");
    EXPECT_EQ(profileFault(R"({"free": [{"day": "mon", "from": "7 am", "to": "09:00"}]})"), "free[0].from must be a time, HH:MM");
    EXPECT_EQ(profileFault(R"({"home_kit": ["sofa"]})"), "home_kit[0] is a word that is not known here");
    EXPECT_EQ(profileFault(R"({"consent": "2026-02-30"})"), "consent must be a day, YYYY-MM-DD");
    EXPECT_EQ(profileFault(R"({"emergency": {"name": "Nell", "age": 3}})"), "emergency.age is not a field that is known here");
}

TEST(BodyMeasuresJson, WhatIsWrittenReadsTheSame)
{
    clients::BodyMeasures measures;
    measures.date = base::Date::fromDays(20'000);
    measures.mass = base::Mass::fromRaw(765'630'000'000);
    measures.height = clients::Millimetres(1755);
    measures.waist = clients::Millimetres(812);
    measures.skinfolds = clients::Skinfolds{150, 185, 200};
    measures.heartRate = 62;
    measures.systolic = 128;
    measures.diastolic = 79;
    const auto read = readBodyMeasures(toJson(measures), {});
    ASSERT_TRUE(read) << read.error().field;
    EXPECT_EQ(*read, measures);
}

TEST(BodyMeasuresJson, NamesTheFault)
{
    EXPECT_EQ(measuresFault(R"({"mass_kg": 70})"), "date is required");
    EXPECT_EQ(measuresFault(R"({"date": "2026-11-25", "mass_kg": 19.999})"), "mass_kg must be 20 to 400");
    EXPECT_EQ(measuresFault(R"({"date": "2026-11-25", "height_cm": 175.25})"), "height_cm must have at most 1 decimals");
    EXPECT_EQ(measuresFault(R"({"date": "2026-11-25", "skinfolds_mm": [10, 12]})"), "skinfolds_mm must name three figures");
    EXPECT_EQ(measuresFault(R"({"date": "2026-11-25", "skinfolds_mm": [10, 12, 0.5]})"), "skinfolds_mm[2] must be 1 to 100");
}

}  // namespace chalk::exchange
