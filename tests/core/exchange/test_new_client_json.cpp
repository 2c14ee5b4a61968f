#include "core/exchange/new_client_json.h"

#include "core/exchange/caution_json.h"

#include <QJsonDocument>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

const base::Date kArrival = *base::Date::parse("2026-11-25");
const std::vector<clients::Coach> kTwoCoaches{{base::CoachId(1), "Ines"}, {base::CoachId(2), "Kofi"}};

JsonResult<studio::NewClient> arrival(const char* text, std::span<const clients::Coach> coaches = kTwoCoaches)
{
    return readNewClient(QJsonDocument::fromJson(text).object(), coaches, kArrival);
}

/// Where reading fails; `none` where it does not.
std::string faultOfArrival(const char* text)
{
    const auto read = arrival(text);
    return read ? "none" : read.error().field;
}

}  // namespace

TEST(NewClientJson, LeavesOutWhatHasADefault)
{
    const auto read = arrival(R"({"name": "Tove Aldane", "coach": "Kofi"})");
    ASSERT_TRUE(read);
    EXPECT_EQ(read->client.name, "Tove Aldane");
    EXPECT_EQ(read->client.coach, base::CoachId(2));
    EXPECT_EQ(read->client.startedOn, kArrival);
    EXPECT_EQ(read->client.sessionsPerWeek, 2);
    EXPECT_FALSE(read->hasHealth());
    EXPECT_EQ(read->profile, clients::Profile());
}

TEST(NewClientJson, TheOnlyCoachNeedsNoName)
{
    EXPECT_EQ(arrival(R"({"name": "Tove Aldane"})", std::span(kTwoCoaches).first(1))->client.coach, base::CoachId(1));
    EXPECT_EQ(faultOfArrival(R"({"name": "Tove Aldane"})"), "coach");
    EXPECT_FALSE(arrival(R"({"name": "Tove Aldane"})", {}));
}

TEST(NewClientJson, ReadsEveryPart)
{
    const auto read = arrival(R"({"name": "Tove Aldane", "born": "1991-05-14", "goal": "Carry the boat", "coach": "Ines", "unit": "lb", "started": "2026-11-20",
        "sessions_per_week": 3, "profile": {"consent": "2026-11-25", "pronouns": "she"}, "intake": {"answers": {"smoking": true}},
        "measures": [{"date": "2026-11-25", "mass_kg": 68.5}], "field_tests": [{"date": "2026-11-24", "tests": [{"test": "plank", "seconds": 62.5}]}], "cautions": [{"body_part": "Knee", "text": "No deep bend", "short": "Knee", "tags": ["knee"]}]})");
    ASSERT_TRUE(read) << read.error().field << ' ' << read.error().reason;
    EXPECT_EQ(read->client.unit, base::MassUnit::Pound);
    EXPECT_EQ(read->client.startedOn, *base::Date::parse("2026-11-20"));
    EXPECT_EQ(read->profile.pronouns, "she");
    EXPECT_EQ(read->intake->answerTo(clients::HealthQuestion::Smoking).isYes, true);
    ASSERT_EQ(read->measures.size(), 1U);
    ASSERT_EQ(read->fieldTests.size(), 1U);
    EXPECT_EQ(read->fieldTests.front().date, *base::Date::parse("2026-11-24"));
    ASSERT_EQ(read->cautions.size(), 1U);
    EXPECT_EQ(read->cautions[0].tags, std::vector{lifts::CautionTag::Knee});
    EXPECT_TRUE(read->hasHealth());
}

TEST(NewClientJson, FaultsNameTheirPlace)
{
    EXPECT_EQ(faultOfArrival(R"({"coach": "Ines"})"), "name");
    EXPECT_EQ(faultOfArrival(R"({"name": "T", "coach": "Ines", "born": "2026-11-26"})"), "born");
    EXPECT_EQ(faultOfArrival(R"({"name": "T", "coach": "Ines", "profile": {"consent": "2026-11-26"}})"), "profile.consent");
    EXPECT_EQ(faultOfArrival(R"({"name": "T", "coach": "Ines", "measures": [{"date": "2026-11-26"}]})"), "measures[0].date");
    EXPECT_EQ(faultOfArrival(R"({"name": "T", "coach": "Ines", "measures": [{"date": "2026-11-25"}, {"date": "2026-11-25"}]})"), "measures[1].date");
    EXPECT_EQ(faultOfArrival(R"({"name": "T", "coach": "Ines", "intake": {"agreed": "2026-11-26"}})"), "intake.agreed");
    EXPECT_EQ(faultOfArrival(R"({"name": "T", "coach": "Ines", "cautions": [{"body_part": "K", "text": "", "short": "K", "tags": ["knee", "knee"]}]})"),
              "cautions[0].tags[1]");
}

TEST(CautionJson, ReadsOne)
{
    ObjectReader reader(QJsonDocument::fromJson(R"({"body_part": "Knee", "text": "t", "short": "s", "tags": ["knee"], "until": "2026-12-01"})").object(), {});
    const clients::Caution caution = cautionOf(reader);
    ASSERT_TRUE(reader.isSound());
    EXPECT_EQ(caution.bodyPart, "Knee");
    EXPECT_EQ(caution.until, *base::Date::parse("2026-12-01"));
}

}  // namespace chalk::exchange
