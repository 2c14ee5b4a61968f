#include "core/store/card_reader.h"

#include "core/exchange/catalogue_json.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::store {

namespace {

const lifts::Catalogue& cardCatalogue()
{
    static const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    return catalogue;
}

/// The small studio with two more sessions of Ada's and one of Bo's in the same week.
exchange::StudioDocument busyStudio()
{
    exchange::StudioDocument document = test::smallStudio();
    sessions::Session session = document.clients[0].sessions.back();
    for (const auto& [days, code] : {std::pair(2, "S4"), std::pair(3, "S5")}) {
        session.date = test::smallStudioDay() + days;
        session.code = code;
        session.state = days == 3 ? sessions::SessionState::CancelledLate : sessions::SessionState::Planned;
        document.clients[0].sessions.push_back(session);
    }
    session.client = base::ClientId(2);
    session.coach = base::CoachId(2);
    session.state = sessions::SessionState::Planned;
    session.code = "S6";
    document.clients[1].sessions.push_back(session);
    return document;
}

CardsRead readFrom(test::StudioOnTest& studio, const CardsWanted& wanted)
{
    return CardReader(studio.database(), cardCatalogue()).read(wanted).value();
}

CardsWanted wholeWeek()
{
    return {test::smallStudioDay() - 1, 7, false, {}, {}};
}

}  // namespace

TEST(CardReader, ReadsADay)
{
    test::StudioOnTest studio;
    const CardsRead read = readFrom(studio, {test::smallStudioDay(), 1, false, {}, {}});
    ASSERT_EQ(read.cards.size(), 1U);
    EXPECT_EQ(read.cards[0].clientName, "Ada Lund");
    EXPECT_EQ(read.cards[0].sessionCode, "S3");
    EXPECT_EQ(read.cards[0].lifts.size(), 3U);
    EXPECT_EQ(read.cards[0].cautions.size(), 1U) << "those in force";
    EXPECT_TRUE(read.withheld.empty());
    EXPECT_TRUE(readFrom(studio, {test::smallStudioDay() + 1, 1, false, {}, {}}).cards.empty());
}

TEST(CardReader, AWeekLeavesOutWhatWasCalledOffAndNamesWhoIsBlockedOnce)
{
    test::StudioOnTest studio(busyStudio());
    const CardsRead read = readFrom(studio, wholeWeek());
    ASSERT_EQ(read.cards.size(), 2U);
    ASSERT_EQ(read.sessions.size(), 2U);
    EXPECT_EQ(read.cards[0].sessionCode, "S3");
    EXPECT_EQ(read.cards[1].sessionCode, "S4");
    EXPECT_EQ(read.sessions[1].code, "S4");
    EXPECT_EQ(read.withheld, std::vector<std::string>{"Bo Arden"});
}

TEST(CardReader, ByNameAndByClient)
{
    test::StudioOnTest studio(busyStudio());
    CardsWanted wanted = wholeWeek();
    wanted.name = QStringLiteral("ADA");
    EXPECT_EQ(readFrom(studio, wanted).cards.size(), 2U);
    EXPECT_TRUE(readFrom(studio, wanted).withheld.empty());
    wanted.name = QStringLiteral("nobody");
    EXPECT_TRUE(readFrom(studio, wanted).cards.empty());
    wanted.name.clear();
    wanted.client = test::clientNamed(studio.database(), "Bo Arden");
    EXPECT_TRUE(readFrom(studio, wanted).cards.empty());
    EXPECT_EQ(readFrom(studio, wanted).withheld.size(), 1U);
}

TEST(CardReader, WhatIsOverIsLeftOutWhereOnlyOpenSessionsAreWanted)
{
    test::StudioOnTest studio;
    CardsWanted wanted{test::smallStudioDay() - 7, 8, false, {}, {}};
    EXPECT_EQ(readFrom(studio, wanted).cards.size(), 2U);
    wanted.isOpenOnly = true;
    const CardsRead open = readFrom(studio, wanted);
    ASSERT_EQ(open.cards.size(), 1U);
    EXPECT_EQ(open.cards[0].sessionCode, "S3");
}

TEST(CardReader, LiftsOfOneCardWaitBehindTheOthersOnTheNext)
{
    exchange::StudioDocument document = busyStudio();
    // More lifts than a card holds: each is there twice more, under a pattern of its own.
    auto& lifts = document.clients[0].lifts;
    const auto three = lifts;
    const lifts::Pattern patterns[] = {lifts::Pattern::HorizontalPull, lifts::Pattern::SingleLeg, lifts::Pattern::VerticalPush, lifts::Pattern::VerticalPull, lifts::Pattern::CarryBrace};
    for (std::size_t i = 0; i < 5; ++i) {
        lifts.push_back(three[1]);
        lifts.back().pattern = patterns[i];
        lifts.back().exerciseKey = i == 0 ? "dumbbell_bench_press" : "back_squat";
    }
    test::StudioOnTest studio(document);
    const CardsRead read = readFrom(studio, wholeWeek());
    ASSERT_EQ(read.cards.size(), 2U);
    std::vector<lifts::Pattern> second;
    ASSERT_EQ(read.cards[0].lifts.size(), 5U);
    ASSERT_EQ(read.cards[1].lifts.size(), 5U);
    EXPECT_NE(read.cards[0].lifts, read.cards[1].lifts);
}

TEST(CardReader, AFileThatDoesNotAnswerIsAFailure)
{
    test::StudioOnTest studio;
    studio.rows(QStringLiteral("ALTER TABLE session RENAME TO lost_session"));
    EXPECT_FALSE(CardReader(studio.database(), cardCatalogue()).read(wholeWeek()));
}

}  // namespace chalk::store
