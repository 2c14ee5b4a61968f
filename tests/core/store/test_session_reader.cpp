#include "core/store/session_reader.h"

#include "core/store/studio_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

TEST(SessionReader, ReadsADayWithNames)
{
    test::StudioOnTest studio;
    const auto day = SessionReader(studio.database()).on(test::smallStudioDay()).value();
    ASSERT_EQ(day.size(), 1U);
    EXPECT_EQ(day[0].clientName, "Ada Lund");
    EXPECT_EQ(day[0].coachName, "Ines");
    sessions::Session expected = test::smallStudio().clients[0].sessions[3];
    expected.id = day[0].session.id;
    expected.client = day[0].session.client;
    EXPECT_EQ(day[0].session, expected);
    EXPECT_TRUE(SessionReader(studio.database()).on(test::smallStudioDay() + 1).value().empty());
}

TEST(SessionReader, CountsWhatTakesPlaceByDay)
{
    test::StudioOnTest studio;
    const auto counts = SessionReader(studio.database()).countsFrom(test::smallStudioDay() - 14, 15).value();
    ASSERT_EQ(counts.size(), 15U);
    EXPECT_EQ(counts[0], 0) << "missed";
    EXPECT_EQ(counts[7], 1);
    EXPECT_EQ(counts[14], 1);
    EXPECT_EQ(counts[13], 0);
}

TEST(SessionReader, FindsByCode)
{
    test::StudioOnTest studio;
    const auto found = SessionReader(studio.database()).withCode("S0").value();
    ASSERT_TRUE(found);
    EXPECT_EQ(found->session.state, sessions::SessionState::Missed);
    EXPECT_FALSE(SessionReader(studio.database()).withCode("S0' OR 1=1").value());
}

TEST(SessionReader, AClientsSessionsComeLatestFirst)
{
    test::StudioOnTest studio;
    const auto all = SessionReader(studio.database()).of(base::ClientId(1)).value();
    ASSERT_EQ(all.size(), 4U);
    EXPECT_EQ(all.front().session.code, "S3");
    EXPECT_EQ(all.back().session.code, "S1");
}

TEST(SessionReader, ReadsWhatWasRecordedInASession)
{
    test::StudioOnTest studio;
    const auto session = SessionReader(studio.database()).withCode("S1").value()->session.id;
    const auto entries = SessionReader(studio.database()).entriesIn(session).value();
    ASSERT_EQ(entries.size(), 2U) << "squat and hinge";
    EXPECT_LT(entries[0].lift, entries[1].lift);
    EXPECT_EQ(entries[0].event.body, progression::EventBody(test::exposureOf({{40, 8, 2}, {40, 8, 2}})));
}

TEST(StudioReader, ReadsWhatBelongsToTheStudio)
{
    test::StudioOnTest studio;
    StudioReader reader(studio.database());
    EXPECT_EQ(reader.name().value(), "Small Studio");
    EXPECT_EQ(reader.coaches().value(), test::smallStudio().coaches);
    EXPECT_EQ(reader.equipment().value(), test::smallStudio().equipment);
    studio.rows(QStringLiteral("UPDATE studio_equipment SET equipment = '{}' WHERE key = 'bar'"));
    const auto damaged = reader.equipment();
    ASSERT_FALSE(damaged);
    EXPECT_EQ(damaged.error().kind, StoreError::Kind::Damaged);
    EXPECT_TRUE(damaged.error().message.contains(QLatin1String("bar")));
}

}  // namespace chalk::store
