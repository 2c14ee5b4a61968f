#include "ui/week/left_over_items.h"

#include "tests/ui/week/week_fixture.h"

namespace chalk::ui::week {

namespace {

using test::clock;

std::vector<LeftOverItem> itemsOf(const test::WeekOnTest& week)
{
    return leftOverItems({week.facts, week.problem, week.plan}, week.scene());
}

}  // namespace

TEST(LeftOverItems, ASessionWithoutAPlaceIsOfferedTheNearestFreeOne)
{
    chalk::week::WeekFacts facts = test::someWeek();
    test::addClient(facts, "Gwen Tarrant").planning.standing = {{3, clock(17, 30), base::CoachId(1)}};
    const auto items = itemsOf(test::WeekOnTest(facts));
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].name, QStringLiteral("Gwen Tarrant"));
    EXPECT_EQ(items[0].which, QStringLiteral("1st of 1"));
    EXPECT_EQ(items[0].kind, OfferKind::Place);
    EXPECT_EQ(items[0].offer, QStringLiteral("Offer Thu 17:30 with Ines"));
    EXPECT_EQ(items[0].slot, (chalk::week::Slot{0, 3 * chalk::week::kDayMinutes + clock(17, 30)}));
}

TEST(LeftOverItems, WithoutAnyPlaceOneFewerIsOffered)
{
    chalk::week::WeekFacts facts = test::someWeek();
    chalk::week::ClientOfWeek& client = test::addClient(facts, "Gwen Tarrant");
    client.free = {};
    ASSERT_TRUE(client.free.add({6, clock(3), clock(5)}));
    const auto items = itemsOf(test::WeekOnTest(facts));
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].kind, OfferKind::OneFewer);
    EXPECT_FALSE(items[0].reason.isEmpty());
    EXPECT_EQ(items[0].offer, QStringLiteral("Leave out this week"));
}

TEST(LeftOverItems, AConflictComesFirstWithAWayOut)
{
    chalk::week::WeekFacts facts = test::someWeek();
    facts.coaches[0].work.capacity = 1;
    test::book(test::addClient(facts, "Ada Lund"), 1, clock(9)).isLocked = true;
    test::book(test::addClient(facts, "Bo Arden"), 1, clock(9, 30));
    test::addClient(facts, "Gwen Tarrant");
    const auto items = itemsOf(test::WeekOnTest(facts));
    ASSERT_EQ(items.size(), 2U);
    EXPECT_TRUE(items[0].isConflict);
    EXPECT_EQ(items[0].name, QStringLiteral("Ada, Bo"));
    EXPECT_EQ(items[0].offer, QStringLiteral("Move Bo to Tue 10:00")) << "the locked one stays";
    EXPECT_FALSE(items[1].isConflict);
}

TEST(LeftOverItems, WhoWaitsForClearanceIsNotPlannedAndSaysSo)
{
    chalk::week::WeekFacts facts = test::someWeek();
    test::addClient(facts, "Osric Bell").isBlocked = true;
    const auto items = itemsOf(test::WeekOnTest(facts));
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].kind, OfferKind::OpenHealth);
    EXPECT_EQ(items[0].which, QStringLiteral("1 session"));
    EXPECT_FALSE(items[0].wish);
}

TEST(LeftOverItems, WhatNoPlanCanKeepIsSaidInsteadOfNumbers)
{
    chalk::week::WeekFacts facts = test::someWeek();
    chalk::week::ClientOfWeek& client = test::addClient(facts, "Gwen Tarrant");
    client.client.sessionsPerWeek = 3;
    client.free = {};
    ASSERT_TRUE(client.free.add({1, clock(9), clock(12)}));
    test::book(client, 1, clock(9));
    const auto items = itemsOf(test::WeekOnTest(facts));
    ASSERT_EQ(items.size(), 2U);
    EXPECT_EQ(items[0].reason, QStringLiteral("Gwen has 3 sessions, and the hours leave room for 1."));
    EXPECT_EQ(items[0].kind, OfferKind::OneFewer);
    EXPECT_EQ(items[0].offer, QStringLiteral("Leave at 2 this week"));
}

TEST(LeftOverItems, OneFewerCountsWhatIsPast)
{
    chalk::week::WeekFacts facts = test::someWeek();
    facts.nowMinute = 2 * chalk::week::kDayMinutes;
    chalk::week::ClientOfWeek& client = test::addClient(facts, "Gwen Tarrant");
    client.client.sessionsPerWeek = 2;
    client.free = {};
    ASSERT_TRUE(client.free.add({1, clock(9), clock(12)}));
    test::book(client, 1, clock(9));
    const auto items = itemsOf(test::WeekOnTest(facts));
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].kind, OfferKind::OneFewer);
    EXPECT_EQ(items[0].offer, QStringLiteral("Leave at 1 this week"));
}

TEST(LeftOverItems, WhoComesLessOftenThisWeekIsNamedWithTheWayBack)
{
    chalk::week::WeekFacts facts = test::someWeek();
    chalk::week::ClientOfWeek& client = test::addClient(facts, "Gwen Tarrant");
    client.client.sessionsPerWeek = 3;
    client.quota = 1;
    test::book(client, 1, clock(9));
    const auto items = itemsOf(test::WeekOnTest(facts));
    ASSERT_EQ(items.size(), 1U) << "nothing is left over";
    EXPECT_EQ(items[0].which, QStringLiteral("1 session"));
    EXPECT_EQ(items[0].reason, QStringLiteral("Only this week; 3 as a rule."));
    EXPECT_EQ(items[0].kind, OfferKind::UsualNumber);
    EXPECT_EQ(items[0].offer, QStringLiteral("Back to 3"));
}

TEST(LeftOverItems, AConflictThatNoSessionAloneLeavesOffersToMendTheWeek)
{
    chalk::week::WeekFacts facts = test::someWeek();
    chalk::week::ClientOfWeek& client = test::addClient(facts, "Priya Raman");
    client.free = {};
    ASSERT_TRUE(client.free.add({1, clock(9), clock(10)}));
    sessions::Session& session = test::book(client, 2, clock(16));
    const auto isolated = itemsOf(test::WeekOnTest(facts));
    ASSERT_EQ(isolated.size(), 1U);
    EXPECT_EQ(isolated[0].offer, QStringLiteral("Move Priya to Tue 09:00"));
    client.free = {};
    ASSERT_TRUE(client.free.add({1, clock(4), clock(5)}));
    EXPECT_EQ(itemsOf(test::WeekOnTest(facts))[0].kind, OfferKind::Mend);
    session.isLocked = true;
    EXPECT_EQ(itemsOf(test::WeekOnTest(facts))[0].kind, OfferKind::None) << "what is locked stays";
}

TEST(LeftOverItems, WhoHasToBeToldComesFirstWithTheWordsForIt)
{
    chalk::week::WeekFacts facts = test::someWeek();
    test::book(test::addClient(facts, "Ada Lund"), 1, clock(9));
    test::book(test::addClient(facts, "Bo Arden"), 2, clock(9));
    test::WeekOnTest week(facts);
    week.plan[0] = chalk::week::Slot{0, 3 * chalk::week::kDayMinutes + clock(10)};
    week.plan[1] = std::nullopt;
    const auto items = itemsOf(week);
    ASSERT_EQ(items.size(), 3U);
    EXPECT_TRUE(items[0].isChange && items[1].isChange && !items[2].isChange);
    EXPECT_EQ(items[0].reason, QStringLiteral("From Tue 09:00 with Ines to Thu 10:00 with Ines. Has to be told."));
    EXPECT_EQ(items[0].words, QStringLiteral("Ada, your session on Tue 24 Nov 09:00 with Ines moves to Thu 26 Nov 10:00 with Ines. Is that all right?"));
    EXPECT_EQ(items[1].which, QStringLiteral("loses its place"));
    EXPECT_EQ(items[1].reason, QStringLiteral("Was Wed 09:00 with Ines. Has to be told."));
    EXPECT_EQ(items[2].kind, OfferKind::Place) << "there would be one";
}

}  // namespace chalk::ui::week
