#include "core/store/studio_import.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/studio_folder.h"
#include "core/store/client_forms.h"
#include "core/store/client_reader.h"
#include "core/store/record_writer.h"
#include "core/store/studio_export.h"
#include "core/store/studio_reader.h"
#include "core/store/studio_settings.h"
#include "tests/support/kept_client.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

/// A studio as files give it: lifts know their exercise, sessions take their client from where they stand.
exchange::StudioDocument asFromFiles(const exchange::StudioDocument& document)
{
    return exchange::readStudio(exchange::writeStudio(document), exchange::builtInCatalogue()).value();
}

/// The message of a refused import that left nothing behind.
std::string refusalOf(const exchange::StudioDocument& document)
{
    const QTemporaryDir folder;
    const auto database = Database::open(folder.filePath(QStringLiteral("new")), OpenMode::CreateIfMissing).value();
    const auto imported = importStudio(*database, document, test::someMoment());
    EXPECT_TRUE(importStudio(*database, test::smallStudio(), test::someMoment())) << "something was left behind";
    return imported ? "it was taken in" : imported.error().message.toStdString();
}

}  // namespace

TEST(StudioImport, WhatGoesInComesOutAgain)
{
    const exchange::StudioDocument document = asFromFiles(test::smallStudio());
    test::StudioOnTest studio(document);
    const auto out = exportStudio(studio.database(), test::smallStudioDay());
    ASSERT_TRUE(out) << out.error().message.toStdString();
    EXPECT_EQ(*out, document);
}

TEST(StudioImport, WhatOnboardingKeepsComesOutAgain)
{
    exchange::StudioDocument document = asFromFiles(test::smallStudio());
    test::addKept(document);
    test::StudioOnTest studio(document);
    const auto out = exportStudio(studio.database(), test::smallStudioDay());
    ASSERT_TRUE(out) << out.error().message.toStdString();
    EXPECT_EQ(*out, document);
    EXPECT_EQ(exchange::writeStudio(*out), exchange::writeStudio(document));
}

TEST(StudioImport, WhatOnboardingKeepsIsReadByTheReadersOfTheScreens)
{
    exchange::StudioDocument document = asFromFiles(test::smallStudio());
    test::addKept(document);
    test::StudioOnTest studio(document);
    const base::ClientId ada = test::clientNamed(studio.database(), "Ada Lund");
    ClientForms forms(studio.database());
    EXPECT_EQ(forms.profile(ada).value(), std::get<clients::Profile>(document.clients[0].forms[0].content));
    EXPECT_EQ(forms.healthIntake(ada).value(), std::get<clients::HealthIntake>(document.clients[0].forms[4].content));
    EXPECT_EQ(forms.planDraft(ada).value(), std::get<planning::PlanDraft>(document.clients[0].forms[5].content));
    EXPECT_EQ(forms.letters(ada).value().size(), 2U);
    EXPECT_EQ(StudioSettings(studio.database()).restingLimits().value().heartRate, 110);
}

TEST(StudioImport, AFormThatCannotBeReadIsNamedOnTheWayOut)
{
    exchange::StudioDocument document = asFromFiles(test::smallStudio());
    test::addKept(document);
    test::StudioOnTest studio(document);
    studio.rows(QStringLiteral("UPDATE form SET detail = '{\"pronoun\": 1}' WHERE id = 1"));
    const auto out = exportStudio(studio.database(), test::smallStudioDay());
    ASSERT_FALSE(out);
    EXPECT_EQ(out.error().kind, StoreError::Kind::Damaged);
    EXPECT_TRUE(out.error().message.contains(QLatin1String("form 1, pronoun"))) << out.error().message.toStdString();
}

TEST(StudioImport, TheDemoStudioComesOutAsTheSameFiles)
{
    const exchange::StudioFiles files = exchange::studioFilesIn(QStringLiteral(CHALKRUNG_SOURCE "/demo_clients")).value();
    const auto document = exchange::readStudio(files, exchange::builtInCatalogue());
    ASSERT_TRUE(document) << document.error().message().toStdString();
    test::StudioOnTest studio(*document);
    const auto out = exportStudio(studio.database(), document->today);
    ASSERT_TRUE(out) << out.error().message.toStdString();
    for (const auto& [name, text] : exchange::writeStudio(*out)) {
        EXPECT_TRUE(text == files.at(name)) << name.toStdString() << " is not the same file";
    }
    EXPECT_EQ(exchange::writeStudio(*out).size(), files.size());
    const QStringList caches = studio.cacheRows();
    studio.rebuildCaches();
    EXPECT_EQ(studio.cacheRows(), caches);
}

TEST(StudioImport, ExportGivesTheWholeLogInTheOrderInWhichItWasEntered)
{
    exchange::StudioDocument document = asFromFiles(test::smallStudio());
    test::StudioOnTest studio(document);
    RecordWriter writer(studio.database(), test::someMoment);
    const base::LiftId squat = test::liftOf(studio.database(), base::ClientId(1), lifts::Pattern::Squat);
    const progression::Event late{test::smallStudioDay() - 30, test::exposureOf({{32.5, 8, 3}, {32.5, 8, 3}})};
    const auto added = writer.record(base::ClientId(1), {}, {{squat, late}});
    ASSERT_TRUE(added) << added.error().message.toStdString();
    const progression::Event doubtful{test::smallStudioDay(), test::exposureOf({{45, 8, 2}})};
    const auto undone = writer.record(base::ClientId(1), {}, {{squat, doubtful}});
    ASSERT_TRUE(writer.undo(undone->act));
    document.clients[0].lifts[1].events.push_back({late, {}});
    document.clients[0].lifts[1].events.push_back({doubtful, {}, {}, true});
    EXPECT_EQ(exportStudio(studio.database(), test::smallStudioDay()).value(), document);
}

TEST(StudioImport, FormerVersionsComeOutAsTheyWentIn)
{
    exchange::StudioDocument document = asFromFiles(test::smallStudio());
    std::vector<exchange::DocumentEvent>& events = document.clients[0].lifts[1].events;
    const progression::Event first{events[2].event.date, test::exposureOf({{35, 18, 3}, {35, 8, 3}})};
    const progression::Event second{events[2].event.date - 1, test::exposureOf({{35, 8, 3}})};
    events[2].former = {first, second};
    events[4].isTakenBack = true;
    test::StudioOnTest studio(document);
    EXPECT_EQ(exportStudio(studio.database(), test::smallStudioDay()).value(), document);
}

TEST(StudioImport, DecisionsAndQuotasComeBackEqual)
{
    exchange::StudioDocument document = asFromFiles(test::smallStudio());
    const base::Date day = test::smallStudioDay();
    exchange::DocumentClient& ada = document.clients[0];
    ada.decisions = {{day - 20, {}, checkin::FindingKind::Attendance, checkin::ChoiceKind::Direction, "", day - 13},
                     {day - 13, lifts::Pattern::Squat, checkin::FindingKind::Plateau, checkin::ChoiceKind::Hold, "Short nights", day + 1},
                     {day - 13, lifts::Pattern::Hinge, checkin::FindingKind::Pain, checkin::ChoiceKind::Rescreen, "", day - 6}};
    ada.quotas = {{day - 1, 1}, {day + 6, 3}};
    ada.lifts[1].events.push_back({{day, progression::LighterWeek{"tired"}}, {}});
    test::StudioOnTest studio(document);
    EXPECT_EQ(exportStudio(studio.database(), day).value(), document);

    ada.decisions[1].lift = lifts::Pattern::CarryBrace;
    EXPECT_EQ(refusalOf(document), "Ada Lund: there is no lift carry_brace for the decision of 2026-11-11");
}

TEST(StudioImport, TakesAStudioOnlyOnce)
{
    test::StudioOnTest studio;
    const auto again = importStudio(studio.database(), test::smallStudio(), test::someMoment());
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, StoreError::Kind::Refused);
    EXPECT_TRUE(again.error().message.contains(QLatin1String("holds a studio already: Small Studio"))) << again.error().message.toStdString();
}

TEST(StudioImport, StopsWhenAsked)
{
    const QTemporaryDir folder;
    const auto database = Database::open(folder.filePath(QStringLiteral("new")), OpenMode::CreateIfMissing).value();
    std::vector<std::pair<int, int>> told;
    const auto stopped = importStudio(*database, test::smallStudio(), test::someMoment(), [&told](int done, int of) {
        told.emplace_back(done, of);
        return done < 1;
    });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().kind, StoreError::Kind::Cancelled);
    EXPECT_EQ(told, (std::vector<std::pair<int, int>>{{0, 2}, {1, 2}}));
    EXPECT_EQ(StudioReader(*database).name().value(), "");
    EXPECT_TRUE(importStudio(*database, test::smallStudio(), test::someMoment())) << "nothing was left behind";
    const auto cancelled = exportStudio(*database, test::smallStudioDay(), [](int, int) { return false; });
    ASSERT_FALSE(cancelled);
    EXPECT_EQ(cancelled.error().kind, StoreError::Kind::Cancelled);
}

TEST(StudioImport, FaultsNameTheClientAndTheEntry)
{
    exchange::StudioDocument document = test::smallStudio();
    document.clients[0].client.coach = base::CoachId(7);
    EXPECT_EQ(refusalOf(document), "Ada Lund: there is no coach 7");

    document = test::smallStudio();
    document.clients[0].lifts[1].events[3].sessionCode = "S9";
    EXPECT_EQ(refusalOf(document), "Ada Lund: there is no session S9 for the entry of 2026-11-03");

    document = test::smallStudio();
    progression::CoachSet set;
    set.reason = "because";
    set.load = test::kilos(61);
    document.clients[0].lifts[1].events.push_back({{test::smallStudioDay(), set}, {}});
    EXPECT_EQ(refusalOf(document), "Ada Lund: squat, entry of 2026-11-24: load is not a load that the equipment can give");

    document = test::smallStudio();
    document.clients[1].client.sessionsPerWeek = 9;
    EXPECT_EQ(refusalOf(document).substr(0, 11), "Bo Arden: T");

    document = test::smallStudio();
    std::get<progression::Exposure>(document.clients[0].lifts[1].events[2].event.body).sets[0].amount = 2'000'000'000;
    EXPECT_EQ(refusalOf(document).substr(0, 11), "Ada Lund: T");
}

TEST(StudioImport, TwoSessionsWithOneCodeAreRefused)
{
    exchange::StudioDocument document = test::smallStudio();
    document.clients[0].sessions[1].code = "S1";
    EXPECT_NE(refusalOf(document).find("session.code"), std::string::npos);
}

}  // namespace chalk::store
