#include "core/exchange/studio_json.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

const QString kAda = QStringLiteral("clients/01-ada-lund.json");

/// Where reading fails once `from` has become `to` in Ada's file.
std::string faultAfter(const char* from, const char* to)
{
    StudioFiles files = writeStudio(test::smallStudio());
    QByteArray& ada = files[kAda];
    const qsizetype at = ada.indexOf(from);
    if (at < 0) {
        return std::string("no such text: ") + from;
    }
    ada.replace(at, static_cast<qsizetype>(std::string_view(from).size()), to);
    const auto read = readStudio(files, builtInCatalogue());
    return read ? "none" : read.error().fault.field;
}

/// As the reader gives it: lifts know their exercise, and ids are counted.
StudioDocument comparable(StudioDocument document)
{
    for (DocumentClient& client : document.clients) {
        for (clients::Caution& caution : client.cautions) {
            caution.id = {};
        }
        for (sessions::Session& session : client.sessions) {
            session.client = {};
        }
        for (DocumentLift& lift : client.lifts) {
            lift.setup.kit.exerciseKey = lift.exerciseKey;
        }
    }
    return document;
}

}  // namespace

TEST(StudioJson, WhatIsWrittenReadsBackAndWritesTheSameBytes)
{
    const StudioDocument document = test::smallStudio();
    const StudioFiles files = writeStudio(document);
    const auto read = readStudio(files, builtInCatalogue());
    ASSERT_TRUE(read) << read.error().message().toStdString();
    EXPECT_EQ(comparable(*read), comparable(document));
    EXPECT_EQ(writeStudio(*read), files);
}

TEST(StudioJson, FaultsNameFileAndPlace)
{
    EXPECT_EQ(faultAfter("\"name\":\"Ada Lund\"", "\"name\":\"\""), "name");
    EXPECT_EQ(faultAfter("\"goal\"", "\"aim\""), "aim");
    EXPECT_EQ(faultAfter("1984-05-17", "1984-02-30"), "born");
    EXPECT_EQ(faultAfter("\"coach\":\"Ines\"", "\"coach\":\"Nobody\""), "coach");
    EXPECT_EQ(faultAfter("\"sessions_per_week\":2", "\"sessions_per_week\":0"), "sessions_per_week");
    EXPECT_EQ(faultAfter("\"at\":\"09:00\"", "\"at\":\"25:00\""), "sessions[0].at");
    EXPECT_EQ(faultAfter("\"S0\"", "\"S1\""), "sessions[1].code");
    EXPECT_EQ(faultAfter("\"lower_back\"", "\"luck\""), "cautions[0].tags[0]");
    EXPECT_EQ(faultAfter("\"state\":\"not_needed\"", "\"state\":\"fine\""), "clearance.state");
    EXPECT_EQ(faultAfter("\"equipment\":\"dumbbells\"", "\"equipment\":\"anvils\""), "lifts[0].equipment");
    EXPECT_EQ(faultAfter("\"rir\":5", "\"rir\":11"), "lifts[1].events[1].sets[0].rir");
    EXPECT_EQ(faultAfter("\"rir\":5", "\"rir\":true"), "lifts[1].events[1].sets[0].rir");
    EXPECT_EQ(faultAfter("\"load\":30", "\"load\":30.001"), "lifts[1].events[1].sets[0].load");
    EXPECT_EQ(faultAfter("\"session\":\"S1\"", "\"session\":\"S9\""), "lifts[1].events[3].session");
    EXPECT_EQ(faultAfter("{\n", "{\n  ,"), "");
}

TEST(StudioJson, AMissingHeaderIsNamed)
{
    const auto read = readStudio({}, builtInCatalogue());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().file, QStringLiteral("studio.json"));
}

TEST(StudioDocument, SlidesByWholeWeeksAcrossYears)
{
    // To the last Tuesday of the 53-week year 2026 and well past it: five and forty weeks.
    for (const char* day : {"2026-12-29", "2027-08-31", "2026-11-26", "2025-01-01"}) {
        StudioDocument document = test::smallStudio();
        const auto before = document;
        const base::Date today = *base::Date::parse(day);
        slideTo(document, today);
        const int moved = document.clients[0].sessions[0].date - before.clients[0].sessions[0].date;
        EXPECT_EQ(moved % 7, 0) << day;
        EXPECT_EQ(document.clients[0].sessions.back().date.isoWeek(), today.isoWeek()) << day;
        EXPECT_EQ(document.clients[0].lifts[1].events[2].event.date - before.clients[0].lifts[1].events[2].event.date, moved);
        EXPECT_EQ(document.clients[0].client.birthDate, before.clients[0].client.birthDate);
        EXPECT_EQ(document.today, today);
    }
}

}  // namespace chalk::exchange
