#include "core/exchange/client_form_json.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/studio_json.h"
#include "tests/support/kept_client.h"
#include "tests/support/small_studio.h"

#include <QJsonArray>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

const QString kKeptAda = QStringLiteral("clients/01-ada-lund.json");
const QString kHeader = QStringLiteral("studio.json");

StudioDocument keptStudio()
{
    StudioDocument document = test::smallStudio();
    test::addKept(document);
    return document;
}

/// Where reading fails, and why, once `from` has become `to` in a file.
std::string faultIn(const QString& file, const char* from, const char* to)
{
    StudioFiles files = writeStudio(keptStudio());
    if (!files[file].contains(from)) {
        return std::string("no such text: ") + from;
    }
    files[file].replace(from, to);
    const auto read = readStudio(files, builtInCatalogue());
    return read ? "none" : read.error().fault.field + " " + read.error().fault.reason;
}

std::string fieldIn(const QString& file, const char* from, const char* to)
{
    const std::string fault = faultIn(file, from, to);
    return fault.substr(0, fault.find(' '));
}

}  // namespace

TEST(ClientFormJson, WhatOnboardingKeepsReadsBackAndWritesTheSameBytes)
{
    const StudioDocument document = keptStudio();
    const StudioFiles files = writeStudio(document);
    const auto read = readStudio(files, builtInCatalogue());
    ASSERT_TRUE(read) << read.error().message().toStdString();
    EXPECT_EQ(read->clients[0].forms, document.clients[0].forms);
    EXPECT_EQ(read->clients[0].letters, document.clients[0].letters);
    EXPECT_EQ(read->clients[0].clearance, document.clients[0].clearance);
    EXPECT_EQ(read->clients[0].plannedLifts, document.clients[0].plannedLifts);
    EXPECT_EQ(read->templates, document.templates);
    EXPECT_EQ(read->restingLimits, document.restingLimits);
    EXPECT_EQ(writeStudio(*read), files);
}

TEST(ClientFormJson, AStudioWithoutItsNewFieldsIsWrittenAsBefore)
{
    for (const auto& [name, text] : writeStudio(test::smallStudio())) {
        for (const char* field : {"\"forms\"", "\"letters\"", "\"granted_by\"", "\"templates\"", "\"resting_limits\""}) {
            EXPECT_FALSE(text.contains(field)) << name.toStdString() << " " << field;
        }
    }
}

TEST(ClientFormJson, FaultsOfFormsNameTheirPlace)
{
    EXPECT_EQ(fieldIn(kKeptAda, "\"kind\":\"profile\"", "\"kind\":\"diary\""), "forms[0].kind");
    EXPECT_EQ(fieldIn(kKeptAda, "\"sex\":\"female\"", "\"sex\":\"f\""), "forms[0].detail.sex");
    EXPECT_EQ(fieldIn(kKeptAda, "\"waist_cm\":91", "\"waist_cm\":9100"), "forms[2].detail.waist_cm");
    EXPECT_EQ(fieldIn(kKeptAda, "\"template\":\"two_full\"", "\"templet\":\"two_full\""), "forms[5].detail.templet");
    EXPECT_EQ(faultIn(kKeptAda, "\"finished\":true", "\"finished\":false"), "forms[4].finished must be true: another form of this kind is open already");
    EXPECT_EQ(faultIn(kKeptAda, "\"day\":\"2026-11-24\",\"detail\":{\"agreed", "\"day\":\"2026-11-25\",\"detail\":{\"agreed"), "forms[4].day lies after the studio's day");
    EXPECT_EQ(faultIn(kKeptAda, "\"agreed\":\"2026-11-24\"", "\"agreed\":\"2026-11-29\""), "forms[4].detail.agreed lies after the studio's day");
}

TEST(ClientFormJson, FaultsOfLettersNameTheirPlace)
{
    EXPECT_EQ(fieldIn(kKeptAda, "\"written_by\":\"Dr Hale\"", "\"written_by\":\"\""), "letters[0].written_by");
    EXPECT_EQ(faultIn(kKeptAda, "\"copy\":\"JVBERgD/\"", "\"copy\":\"JVB*RgD/\""), "letters[0].copy must be Base64");
    EXPECT_EQ(fieldIn(kKeptAda, "\"answers\":[\"", "\"answers\":[\"un"), "letters[0].answers[0]");
    EXPECT_EQ(faultIn(kKeptAda, "\"day\":\"2026-10-15\",\"file_name\"", "\"day\":\"2026-12-15\",\"file_name\""), "letters[0].day lies after the studio's day");
    EXPECT_EQ(faultIn(kKeptAda, "\"valid_until\":\"2027-04-13\"", "\"valid_until\":\"2026-04-13\""), "letters[0].valid_until must not lie before `day`");
}

TEST(ClientFormJson, PlannedLiftsAreTheClientsOwn)
{
    EXPECT_EQ(faultIn(kKeptAda, "\"left_out\":{\"hinge\":\"no time\"}", "\"left_out\":{\"carry_brace\":\"no time\"}"), "sessions[3].left_out.carry_brace is not planned for this session");
    EXPECT_EQ(faultIn(kKeptAda, "\"lifts\":[\"hinge\",\"squat\"]", "\"lifts\":[\"hinge\",\"vertical_pull\"]"), "sessions[3].lifts[1] is no lift of this client");
    EXPECT_EQ(faultIn(kKeptAda, "\"lifts\":[\"hinge\",\"squat\"]", "\"lifts\":[\"hinge\",\"hinge\"]"), "sessions[3].lifts[1] is named twice");
    EXPECT_EQ(faultIn(kKeptAda, "\"lifts\":[\"hinge\",\"squat\"]", "\"lifts\":[\"bench\"]"), "sessions[3].lifts[0] is no pattern");
    EXPECT_EQ(faultIn(kKeptAda, "\"lifts\":[\"hinge\",\"squat\"]", "\"lifts\":[]"), "sessions[3].lifts must name a pattern, or be left out");
}

TEST(ClientFormJson, FaultsOfTheStudiosOwnNameTheirPlace)
{
    EXPECT_EQ(fieldIn(kHeader, "\"goblet_squat\"", "\"golden_squat\"").substr(0, 12), "templates[0]");
    EXPECT_EQ(faultIn(kHeader, "\"heart_rate\":110", "\"heart_rate\":10"), "resting_limits.heart_rate is out of its range");
    StudioDocument document = keptStudio();
    document.templates.push_back(document.templates.front());
    const auto read = readStudio(writeStudio(document), builtInCatalogue());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().fault.field, "templates[1].name");
}

TEST(ClientFormJson, DaysOfFormsAndLettersSlideWithTheStudio)
{
    StudioDocument document = keptStudio();
    const DocumentClient before = document.clients[0];
    studio::slideTo(document, document.today + 35);
    const DocumentClient& after = document.clients[0];
    EXPECT_EQ(after.forms[0].day - before.forms[0].day, 35);
    EXPECT_EQ(*std::get<clients::Profile>(after.forms[0].content).consentOn, after.forms[0].day);
    EXPECT_EQ(*std::get<clients::HealthIntake>(after.forms[1].content).agreedOn, after.forms[1].day);
    EXPECT_EQ(std::get<clients::BodyMeasures>(after.forms[2].content).date, after.forms[2].day);
    EXPECT_EQ(std::get<screens::MovementScreen>(after.forms[3].content).date, after.forms[3].day);
    EXPECT_EQ(*std::get<planning::PlanDraft>(after.forms[5].content).firstDay, document.today + 3);
    EXPECT_EQ(after.letters[0].day - before.letters[0].day, 35);
    EXPECT_EQ(*after.letters[0].validUntil - *before.letters[0].validUntil, 35);
    EXPECT_TRUE(readStudio(writeStudio(document), builtInCatalogue()));
}

TEST(ClientFormJson, RewindingTakesAwayWhatCameLater)
{
    StudioDocument document = keptStudio();
    studio::rewindTo(document, document.today - 35, 720);
    const DocumentClient& ada = document.clients[0];
    EXPECT_EQ(ada.forms.size(), 4U);
    EXPECT_EQ(ada.letters.size(), 1U);
    ASSERT_EQ(ada.lifts.size(), 1U) << "hinge and press began later";
    EXPECT_EQ(ada.plannedLifts, (std::map<std::string, std::vector<lifts::Pattern>>{{"S2", {lifts::Pattern::Squat}}, {"S3", {lifts::Pattern::Squat}}}));
}

}  // namespace chalk::exchange
