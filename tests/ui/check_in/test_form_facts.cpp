#include "ui/check_in/form_facts.h"

#include "tests/ui/check_in/check_in_fixture.h"

#include <QStringList>

#include <gtest/gtest.h>

namespace chalk::ui::check_in {

TEST(FormFacts, ASwapIsAskedAboutUntilADecisionFollowsIt)
{
    CheckInCase page = test::tomasz();
    const base::LiftId bench(3);
    EXPECT_FALSE(isSwappedSinceLastTime(page, bench));
    page.swaps = {{bench, test::checkInDay() - 10}};
    EXPECT_TRUE(isSwappedSinceLastTime(page, bench));
    checkin::Decision decision;
    decision.lift = bench;
    decision.day = test::checkInDay() - 14;
    page.evidence.history = {decision};
    EXPECT_TRUE(isSwappedSinceLastTime(page, bench));
    page.evidence.history.front().day = test::checkInDay() - 10;
    EXPECT_FALSE(isSwappedSinceLastTime(page, bench));
    page.evidence.history.front().lift = base::LiftId(1);
    EXPECT_TRUE(isSwappedSinceLastTime(page, bench)) << "another lift was decided about";
    page.swaps.front().day = page.evidence.days.from - 1;
    EXPECT_FALSE(isSwappedSinceLastTime(page, bench)) << "longer ago than is looked back on";
}

TEST(FormFacts, TheFindingComesBeforeTheNumbers)
{
    CheckInCase page = test::tomasz();
    const FindingWords words = findingWordsOf(page, 1);
    EXPECT_EQ(words.title, QStringLiteral("Plateau, 4 weeks"));
    EXPECT_TRUE(words.first.contains(QStringLiteral("Bench press: "))) << words.first.toStdString();
    EXPECT_TRUE(words.numbers.startsWith(QStringLiteral("Missed 4 of the last 4"))) << words.numbers.toStdString();
    page.evidence.lifts[1].next->block = progression::BlockMark{5, 12, false, false};
    EXPECT_TRUE(findingWordsOf(page, 1).first.startsWith(QStringLiteral("Plan week 5 of 12. "))) << findingWordsOf(page, 1).first.toStdString();
    page.evidence.lifts[1].next->block.reset();
    page.evidence.lifts[1].isOnHold = true;
    EXPECT_TRUE(findingWordsOf(page, 1).first.startsWith(QStringLiteral("On hold because of pain.")));
    EXPECT_FALSE(findingWordsOf(page, 9).first.isEmpty());
}

TEST(FormFacts, TheHistoryHasTheLatestFirst)
{
    CheckInCase page = test::tomasz();
    EXPECT_TRUE(historyText(page.evidence).isEmpty());
    for (int i = 0; i < 6; ++i) {
        checkin::Decision decision;
        decision.lift = base::LiftId(3);
        decision.day = test::checkInDay() - 7 * (i + 1);
        decision.nextReview = decision.day + 7;
        page.evidence.history.push_back(decision);
    }
    const QStringList lines = historyText(page.evidence).split(QLatin1Char('\n'));
    ASSERT_EQ(lines.size(), 4);
    EXPECT_TRUE(lines.front().startsWith(QStringLiteral("17 Nov: hold one more week (Bench press,"))) << lines.front().toStdString();
}

}  // namespace chalk::ui::check_in
