#include "ui/week/offer_search.h"

#include "tests/ui/week/week_fixture.h"

#include <QTest>

namespace chalk::ui::week {

namespace {

WeekSnapshot weekOf(const char* name)
{
    chalk::week::WeekFacts facts = test::someWeek();
    test::addClient(facts, name);
    const test::WeekOnTest week(facts);
    return {week.facts, week.problem, week.plan, week.scene()};
}

}  // namespace

TEST(OfferSearch, OnlyTheLastOfSeveralIsAnswered)
{
    OfferSearch search;
    std::vector<QString> names;
    QObject::connect(&search, &OfferSearch::found, &search, [&names](const std::vector<LeftOverItem>& items) { names.push_back(items.front().name); });
    for (const char* name : {"Ada Lund", "Bo Arden", "Cleo Marsh"}) {
        search.start(weekOf(name));
    }
    ASSERT_TRUE(QTest::qWaitFor([&search] { return !search.isRunning(); }));
    EXPECT_EQ(names, std::vector<QString>{QStringLiteral("Cleo Marsh")});
}

TEST(OfferSearch, StoppedItAnswersNothingAndMayBeAskedAgain)
{
    OfferSearch search;
    int answers = 0;
    QObject::connect(&search, &OfferSearch::found, &search, [&answers] { ++answers; });
    search.start(weekOf("Ada Lund"));
    search.stop();
    QTest::qWait(50);
    EXPECT_EQ(answers, 0);
    search.start(weekOf("Bo Arden"));
    EXPECT_TRUE(QTest::qWaitFor([&answers] { return answers == 1; }));
}

TEST(LeftOverItems, WhatHelpsIsLookedForLater)
{
    chalk::week::WeekFacts facts = test::someWeek();
    chalk::week::ClientOfWeek& client = test::addClient(facts, "Gwen Tarrant");
    client.free = {};
    ASSERT_TRUE(client.free.add({6, 180, 300}));
    const test::WeekOnTest week(facts);
    const auto quick = leftOverItems({week.facts, week.problem, week.plan}, week.scene(), ItemDetail::WhatIsLeft);
    const auto whole = leftOverItems({week.facts, week.problem, week.plan}, week.scene());
    ASSERT_EQ(quick.size(), whole.size());
    EXPECT_EQ(quick[0].kind, OfferKind::None);
    EXPECT_EQ(whole[0].kind, OfferKind::OneFewer);
}

}  // namespace chalk::ui::week
