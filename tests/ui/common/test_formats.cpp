#include "ui/common/formats.h"
#include "ui/common/sentence_text.h"

#include <QStringList>

#include <gtest/gtest.h>

namespace chalk::ui::common {

namespace {

base::Load centi(int value)
{
    return base::Load::fromCenti(value);
}

std::string loadIn(int value, base::MassUnit unit = base::MassUnit::Kilogram, int pieces = 1, bool isAdded = false)
{
    return loadText(centi(value), unit, pieces, isAdded).toStdString();
}

}  // namespace

TEST(Formats, NumbersHaveNoNeedlessZeros)
{
    EXPECT_EQ(numberText(centi(7750)).toStdString(), "77.5");
    EXPECT_EQ(numberText(centi(6000)).toStdString(), "60");
    EXPECT_EQ(numberText(centi(125)).toStdString(), "1.25");
    EXPECT_EQ(numberText(centi(105)).toStdString(), "1.05");
    EXPECT_EQ(numberText(centi(0)).toStdString(), "0");
    EXPECT_EQ(numberText(centi(-1050)).toStdString(), "−10.5");
}

TEST(Formats, LoadsSayUnitPairAndHelp)
{
    EXPECT_EQ(loadIn(7750), "77.5 kg");
    EXPECT_EQ(loadIn(13500, base::MassUnit::Pound), "135 lb");
    EXPECT_EQ(loadIn(1200, base::MassUnit::Kilogram, 2), "2 × 12 kg");
    EXPECT_EQ(loadIn(0, base::MassUnit::Kilogram, 1, true), "bodyweight");
    EXPECT_EQ(loadIn(1000, base::MassUnit::Kilogram, 1, true), "+10 kg");
    EXPECT_EQ(loadIn(-1000, base::MassUnit::Kilogram, 1, true), "10 kg of help");
}

TEST(Formats, AmountsFollowTheMeasureOfTheLift)
{
    const progression::Policy policy = progression::Policy::defaultsFor(base::MassUnit::Kilogram);
    EXPECT_EQ(amountText(base::Reps(8), lifts::Measure::Reps, policy).toStdString(), "8");
    EXPECT_EQ(amountText(base::Reps(8), lifts::Measure::Seconds, policy).toStdString(), "24 s");
    EXPECT_EQ(amountText(base::Reps(8), lifts::Measure::Metres, policy).toStdString(), "32 m");
    progression::Prescription next;
    next.repsLow = base::Reps(5);
    next.repsHigh = base::Reps(10);
    EXPECT_EQ(targetText(next, lifts::Measure::Reps, policy).toStdString(), "5–10");
    EXPECT_EQ(targetText(next, lifts::Measure::Metres, policy).toStdString(), "20–40 m");
    next.repsLow = base::Reps(10);
    EXPECT_EQ(targetText(next, lifts::Measure::Reps, policy).toStdString(), "10");
}

TEST(Formats, RestsAndDaysAreWrittenOneWay)
{
    EXPECT_EQ(restText(base::Seconds(150)).toStdString(), "2:30");
    EXPECT_EQ(restText(base::Seconds(65)).toStdString(), "1:05");
    EXPECT_EQ(restText(base::Seconds(45)).toStdString(), "0:45");
    const base::Date day = *base::Date::parse("2026-11-24");  // a Tuesday
    EXPECT_EQ(dayText(day).toStdString(), "Tue 24 Nov");
    EXPECT_EQ(shortDayText(day).toStdString(), "24 Nov");
    EXPECT_EQ(longDayText(day).toStdString(), "Tuesday 24 November");
}

TEST(Formats, ASentenceThatStandsAloneHasOneFullStop)
{
    EXPECT_EQ(sentenceText(QStringLiteral("Stopped: nothing was taken in")), QStringLiteral("Stopped: nothing was taken in."));
    EXPECT_EQ(sentenceText(QStringLiteral("It is there already.")), QStringLiteral("It is there already."));
    EXPECT_EQ(sentenceText(QStringLiteral("Being stopped\u2026")), QStringLiteral("Being stopped\u2026"));
    EXPECT_EQ(sentenceText({}), QString());
}

TEST(Formats, EveryStageAndPatternHasItsOwnName)
{
    QStringList names;
    for (const progression::Stage stage : progression::kStages) {
        names.append(stageName(stage));
    }
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        names.append(patternName(pattern));
    }
    EXPECT_EQ(names.removeDuplicates(), 0);
    EXPECT_FALSE(names.contains(QString()));
    EXPECT_EQ(stageName(progression::Stage::RestCut).toStdString(), "Rest cut");
    EXPECT_EQ(patternName(lifts::Pattern::CarryBrace).toStdString(), "Carry and brace");
}

}  // namespace chalk::ui::common
