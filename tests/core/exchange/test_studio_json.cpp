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

TEST(StudioJson, MessagesNameFileLineColumnAndField)
{
    StudioFiles files = writeStudio(test::smallStudio());
    files[kAda].replace("\"goal\":\"Carry the boat\"", "\"goal\":7");
    const auto read = readStudio(files, builtInCatalogue());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().message(), QStringLiteral("clients/01-ada-lund.json, line 4, column 9: goal must be a text"));
}

TEST(StudioJson, AFieldThatIsThereTwiceIsRefused)
{
    EXPECT_EQ(faultAfter("\"rir\":5", "\"rir\":5,\"rir\":4"), "lifts[1].events[1].sets[0].rir");
    EXPECT_EQ(faultAfter("\"unit\":\"kg\"", "\"unit\":\"kg\",\n \"unit\":\"lb\""), "unit");
}

TEST(StudioJson, OnlyItsOwnFormatIsRead)
{
    const auto faultOfHeader = [](const char* from, const char* to) {
        StudioFiles files = writeStudio(test::smallStudio());
        files[QStringLiteral("studio.json")].replace(from, to);
        const auto read = readStudio(files, builtInCatalogue());
        return read ? std::string("none") : read.error().fault.field + " " + read.error().fault.reason;
    };
    EXPECT_EQ(faultOfHeader("\"format\":1,", ""), "format is required");
    EXPECT_EQ(faultOfHeader("\"format\":1", "\"format\":2"), "format is 2: written by a newer program; this one reads format 1");
    EXPECT_EQ(faultOfHeader("\"format\":1", "\"format\":0"), "format must be 1 to 9999");
    EXPECT_EQ(faultOfHeader("\"today\":\"2026-11-24\"", "\"today\":\"20261124\""), "today must be a day, YYYY-MM-DD");
}

TEST(StudioJson, NothingLiesAfterTheStudiosDay)
{
    EXPECT_EQ(faultAfter("\"date\":\"2026-11-17\",\"kind\"", "\"date\":\"2026-11-27\",\"kind\""), "sessions[2].state");
    EXPECT_EQ(faultAfter("\"date\":\"2026-11-17\",\"session\":\"S2\",\"sets\"", "\"date\":\"2026-11-27\",\"session\":\"S2\",\"sets\""), "lifts[1].events[4].date");
    EXPECT_EQ(faultAfter("\"date\":\"2026-11-17\",\"session\":\"S2\",\"sets\"", "\"date\":\"20261117\",\"session\":\"S2\",\"sets\""), "lifts[1].events[4].date");
}

TEST(StudioJson, CorrectionsAndEntriesTakenBackAreCarried)
{
    StudioDocument document = test::smallStudio();
    std::vector<DocumentEvent>& events = document.clients[0].lifts[1].events;
    progression::Event wrong = events[2].event;
    std::get<progression::Exposure>(wrong.body).pain = 3;
    events[2].former = {wrong};
    events[3].isTakenBack = true;
    const StudioFiles files = writeStudio(document);
    const auto read = readStudio(files, builtInCatalogue());
    ASSERT_TRUE(read) << read.error().message().toStdString();
    EXPECT_EQ(comparable(*read), comparable(document));
    EXPECT_EQ(writeStudio(*read), files);
}

TEST(StudioJson, WhatWasSaidOfASessionIsCarriedAndChecked)
{
    StudioDocument document = test::smallStudio();
    document.clients[0].reports = {{"S1", {4, 2, 3, 75, 55, "Late"}}};
    const StudioFiles files = writeStudio(document);
    const auto read = readStudio(files, builtInCatalogue());
    ASSERT_TRUE(read) << read.error().message().toStdString();
    EXPECT_EQ(comparable(*read), comparable(document));
    EXPECT_EQ(writeStudio(*read), files);
    const auto faultOf = [&files](const char* from, const char* to) {
        StudioFiles changed = files;
        changed[kAda].replace(from, to);
        const auto result = readStudio(changed, builtInCatalogue());
        return result ? std::string("none") : result.error().fault.field;
    };
    EXPECT_EQ(faultOf("\"sleep\":4", "\"sleep\":9"), "sessions[0].report.sleep");
    EXPECT_EQ(faultOf("\"effort\":7.5", "\"effort\":7.3"), "sessions[0].report.effort");
    EXPECT_EQ(faultAfter("\"state\":\"planned\"", "\"report\":{},\"state\":\"planned\""), "sessions[3].report");
    EXPECT_EQ(faultAfter("\"date\":\"2026-11-24\",\"kind\"", "\"date\":\"2026-11-30\",\"report\":{\"effort\":3},\"kind\""), "sessions[3].report");
}

TEST(StudioJson, DecisionsAndQuotasAreCarried)
{
    StudioDocument document = test::smallStudio();
    DocumentClient& ada = document.clients[0];
    ada.decisions = {{document.today, lifts::Pattern::Squat, checkin::FindingKind::Plateau, checkin::ChoiceKind::LighterWeek,
                      "Short nights", document.today + 7},
                     {document.today, {}, checkin::FindingKind::Direction, checkin::ChoiceKind::Direction, "", document.today + 28}};
    ada.quotas = {{document.today - 1, 0}};
    ada.lifts[1].events.push_back({{document.today, progression::LighterWeek{"Short nights"}}, {}});
    const StudioFiles files = writeStudio(document);
    const auto read = readStudio(files, builtInCatalogue());
    ASSERT_TRUE(read) << read.error().message().toStdString();
    EXPECT_EQ(comparable(*read), comparable(document));
    EXPECT_EQ(writeStudio(*read), files);
    slideTo(document, document.today + 14);
    EXPECT_EQ(document.clients[0].decisions[0].nextReview, document.today + 7);
    EXPECT_EQ(document.clients[0].quotas, (std::map<base::Date, int>{{document.today - 1, 0}}));
}

TEST(StudioJson, AHistoryThatCannotBeIsRefusedAtItsEvent)
{
    StudioDocument document = test::smallStudio();
    progression::CoachSet set;
    set.stage = progression::Stage::LoadBuild;
    set.load = base::Load::fromCenti(4100);  // the bar of the test gives no 41 kg
    set.reason = "known";
    document.clients[0].lifts[1].events.push_back({{document.today, set}, {}});
    const auto read = readStudio(writeStudio(document), builtInCatalogue());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().fault.field, "lifts[1].events[5].load");
}

}  // namespace chalk::exchange
