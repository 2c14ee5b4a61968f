#include "ui/trends/trend_words.h"

#include "tests/ui/trends/made_up_trends.h"

#include <gtest/gtest.h>

namespace chalk::ui::trends {

TEST(TrendWords, NumbersHaveThousands)
{
    EXPECT_EQ(wholeText(0), QStringLiteral("0"));
    EXPECT_EQ(wholeText(999.6), QStringLiteral("1\u202F000"));
    EXPECT_EQ(wholeText(1'234'567), QStringLiteral("1\u202F234\u202F567"));
    EXPECT_EQ(wholeText(-1200), QStringLiteral("\u22121\u202F200"));
    EXPECT_EQ(rangeText(checkin::trendDays(madeUpDay(), 12)), QStringLiteral("7 Sep – 29 Nov 2026"));
}

TEST(TrendWords, GapsSayWhatStartsAChartAndWhen)
{
    checkin::Trends trends = madeUpBeginner().trends;
    EXPECT_EQ(volumeGapWords(trends).headline, QStringLiteral("No load in these weeks"));
    EXPECT_TRUE(volumeGapWords(trends).text.contains(QStringLiteral("stage 3, Base load")));
    trends.volumeGap->have = 1;
    trends.lifts[0].loadedSince = madeUpDay() - 6;
    EXPECT_EQ(volumeGapWords(trends).headline, QStringLiteral("One week so far"));
    EXPECT_TRUE(volumeGapWords(trends).text.endsWith(QStringLiteral("Chest row reached Base load on 19 Nov."))) << volumeGapWords(trends).text.toStdString();
    EXPECT_EQ(singlesGapWords(trends).headline, QStringLiteral("No estimate yet"));
    trends.singlesGap->have = 1;
    EXPECT_EQ(singlesGapWords(trends).headline, QStringLiteral("2 more sessions of Chest row"));
    trends.singlesGap->have = 2;
    EXPECT_EQ(singlesGapWords(trends).headline, QStringLiteral("1 more session of Chest row"));
    EXPECT_EQ(targetsGapWords(trends).headline, QStringLiteral("Starts at Load build"));
    EXPECT_EQ(monotonyGapWords(trends).headline, QStringLiteral("Needs 2 more full weeks"));
    EXPECT_TRUE(monotonyGapWords(trends).text.endsWith(QStringLiteral("the line starts on Monday 7 December.")));
}

TEST(TrendWords, MonotonySaysItsSourceAndWhatToDo)
{
    checkin::Trends trends = madeUpClient().trends;
    EXPECT_TRUE(monotonyNote(trends).startsWith(QStringLiteral("2.1 in week 47. If this week is planned alike, make one day lighter.")));
    EXPECT_TRUE(monotonyNote(trends).contains(QStringLiteral("Foster 1998")));
    trends.weeks[2].load.monotony = 1.9;
    EXPECT_FALSE(monotonyNote(trends).contains(QStringLiteral("lighter")));
    EXPECT_TRUE(monotonyNote(trends).contains(QStringLiteral("strain 2\u202F940")));
    trends.weeks[2].load.monotony.reset();
    trends.weeks[2].load.why = checkin::NoMonotony::AllTheSame;
    EXPECT_EQ(monotonyNote(trends), QStringLiteral("Nothing for week 47: every day had the same load, so monotony has no end."));
}

TEST(TrendWords, TheRatioIsNeverWithoutItsCriticism)
{
    checkin::Trends trends = madeUpClient().trends;
    EXPECT_TRUE(ratioNote(trends).startsWith(QStringLiteral("Acute to chronic load 1.20")));
    for (const char* word : {"Lolli 2017", "Impellizzeri 2020", "forecasts nothing"}) {
        EXPECT_TRUE(ratioNote(trends).contains(QString::fromLatin1(word))) << word;
    }
    trends.ratio = tl::make_unexpected(checkin::NoRatio::Unrated);
    EXPECT_TRUE(ratioNote(trends).contains(QStringLiteral("every session of the last four weeks")));
}

TEST(TrendWords, AWeekIsComparedWithTheOneBefore)
{
    std::vector<checkin::TrendWeek> weeks = madeUpClient().trends.weeks;
    EXPECT_EQ(totalNote(weeks, 0, base::MassUnit::Kilogram), QStringLiteral("Total 4\u202F500."));
    EXPECT_EQ(totalNote(weeks, 1, base::MassUnit::Kilogram), QStringLiteral("Total 4\u202F530, up 1 % on week 45."));
    EXPECT_EQ(totalNote(weeks, 3, base::MassUnit::Kilogram), QStringLiteral("Total 0; the week is not over."));
    std::swap(weeks[0].work, weeks[1].work);
    EXPECT_EQ(totalNote(weeks, 1, base::MassUnit::Kilogram), QStringLiteral("Total 4\u202F500, down 1 % on week 45."));
}

TEST(TrendWords, SmallTexts)
{
    using checkin::LoadTrend;
    EXPECT_EQ(changeText({LoadTrend::Kind::Change, -12, true}), QStringLiteral("\u221212 %"));
    EXPECT_EQ(changeText({LoadTrend::Kind::Change, 0, false}), QStringLiteral("0 %"));
    EXPECT_EQ(changeText({LoadTrend::Kind::New}), QStringLiteral("new"));
    EXPECT_EQ(attendanceText({8, 1, 1, 3}), QStringLiteral("80 % (8 of 10)"));
    EXPECT_EQ(attendanceText({}), QStringLiteral("none counted"));
    const checkin::LiftTrend squat = madeUpClient().trends.lifts[0];
    EXPECT_EQ(targetText(squat.targets[0]), QStringLiteral("3 × 5–8"));
    EXPECT_EQ(repsCourse(squat), QStringLiteral("5→8"));
    checkin::Trends trends = madeUpClient().trends;
    EXPECT_TRUE(carriesNote(trends).isEmpty());
    trends.lifts[1].measure = lifts::Measure::Metres;
    trends.lifts[1].metresPerRep = base::Metres(10);
    EXPECT_EQ(carriesNote(trends), QStringLiteral("Carries: 10 m count as one rep."));
}

TEST(TrendWords, EveryPatternHasAShortName)
{
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        EXPECT_FALSE(shortPatternName(pattern).isEmpty());
        EXPECT_LE(shortPatternName(pattern).size(), 6);
    }
}

}  // namespace chalk::ui::trends
