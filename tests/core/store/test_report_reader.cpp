#include "core/store/report_reader.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

const lifts::Catalogue& reportCatalogue()
{
    static const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    return catalogue;
}

}  // namespace

TEST(ReportReader, SaysWhatIsOnRecord)
{
    test::StudioOnTest studio;
    const auto report = ReportReader(studio.database(), reportCatalogue()).read(test::clientNamed(studio.database(), "Ada Lund"), test::smallStudioDay()).value();
    EXPECT_EQ(report.studioName, "Small Studio");
    EXPECT_EQ(report.clientName, "Ada Lund");
    EXPECT_EQ(report.coachName, "Ines");
    EXPECT_EQ(report.from, *base::Date::parse("2026-09-07"));
    EXPECT_EQ(report.weeks.size(), 12U);
    EXPECT_EQ(report.came(), 2);
    EXPECT_EQ(report.counted(), 3);
    EXPECT_EQ(report.mostPain, 5);
    ASSERT_EQ(report.lifts.size(), 3U);
    const auto squat = std::find_if(report.lifts.begin(), report.lifts.end(), [](const auto& lift) { return lift.name == "Back squat"; });
    ASSERT_NE(squat, report.lifts.end());
    ASSERT_EQ(squat->work.size(), 4U) << "the rehearsal is no work";
    EXPECT_EQ(squat->riseMilli(), 500) << "from 30 to 45 kg";
    EXPECT_EQ(squat->work.back().sets, 2);
    EXPECT_EQ(squat->work.back().amount, 7);
    EXPECT_TRUE(squat->next.has_value());
}

TEST(ReportReader, WhatComesNextIsNotSaidWhileLoadedWorkIsBlocked)
{
    exchange::StudioDocument document = test::smallStudio();
    document.clients[0].clearance = document.clients[1].clearance;
    test::StudioOnTest studio(document);
    const auto report = ReportReader(studio.database(), reportCatalogue()).read(test::clientNamed(studio.database(), "Ada Lund"), test::smallStudioDay()).value();
    ASSERT_FALSE(report.lifts.empty());
    EXPECT_FALSE(report.lifts[0].next.has_value());
}

TEST(ReportReader, WhoHasNothingOnRecordGetsNone)
{
    test::StudioOnTest studio;
    ReportReader reader(studio.database(), reportCatalogue());
    ASSERT_EQ(reader.readAll({}, test::smallStudioDay()).value().size(), 1U);
    EXPECT_EQ(reader.readAll({}, test::smallStudioDay()).value()[0].clientName, "Ada Lund");
    EXPECT_TRUE(reader.readAll(QStringLiteral("Bo"), test::smallStudioDay()).value().empty());
    EXPECT_TRUE(reader.readAll({}, test::smallStudioDay() - 400).value().empty());
    EXPECT_FALSE(reader.read(base::ClientId(99), test::smallStudioDay()));
}

}  // namespace chalk::store
