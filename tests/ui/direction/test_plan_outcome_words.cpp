#include "ui/direction/plan_outcome_words.h"

#include "tests/ui/direction/outcome_on_test.h"

#include <gtest/gtest.h>

namespace chalk::ui::direction {

TEST(PlanOutcomeWords, ChangesAreOfTheSingleAtTheBeginning)
{
    const PlanOutcomeCase outcome = outcomeOnTest();
    EXPECT_DOUBLE_EQ(changeOf(outcome.lifts[0]).value(), 7.5) << "100 to 107.5";
    EXPECT_DOUBLE_EQ(changeOf(outcome.lifts[1]).value(), -2.5) << "80 to 78";
    EXPECT_FALSE(changeOf(outcome.lifts[2])) << "none was known";
}

TEST(PlanOutcomeWords, WeeksWithoutASetOfAnyLiftWereMissed)
{
    PlanOutcomeCase outcome = outcomeOnTest();
    EXPECT_EQ(weeksMissed(outcome), 10) << "of twelve, two were trained";
    outcome.plan.endedOn = firstMonday() + 15;
    EXPECT_EQ(weeksMissed(outcome), 1) << "the third had begun";
    for (OutcomeLift& lift : outcome.lifts) {
        lift.weeks[2].doneSets = 1;
    }
    EXPECT_EQ(weeksMissed(outcome), 0);
}

TEST(PlanOutcomeWords, SentencesSayWhatItCameTo)
{
    int planned = 0;
    for (const OutcomeLift& lift : outcomeOnTest().lifts) {
        for (const auto& week : lift.weeks) {
            planned += week.plannedSets;
        }
    }
    ASSERT_EQ(planned, 205) << "88 of each main lift, 29 of the row";
    EXPECT_EQ(outcomeSentences(outcomeOnTest()).join(QLatin1Char('\n')).toStdString(), "Strength, 12 weeks: 30 November 2026 – 21 February 2027.\n"
                                                                                       "18 of 205 planned sets were done (9 %).\n"
                                                                                       "10 weeks were missed.\n"
                                                                                       "The single rose: Back squat.\n"
                                                                                       "The single is lower: Bench press.\n"
                                                                                       "No single to compare: Dumbbell row.\n"
                                                                                       "Pain was written down: Bench press. See to it before the next plan.\n"
                                                                                       "On hold: Bench press.");
}

TEST(PlanOutcomeWords, AnEarlyEndIsSaidAndSetsAfterItAreNotCounted)
{
    PlanOutcomeCase outcome = outcomeOnTest();
    outcome.plan.endedOn = firstMonday() + 14;
    const QStringList sentences = outcomeSentences(outcome);
    EXPECT_EQ(sentences[1], QStringLiteral("It was ended on Mon 14 Dec."));
    int planned = 0;
    for (const OutcomeLift& lift : outcome.lifts) {
        planned += lift.weeks[0].plannedSets + lift.weeks[1].plannedSets;
    }
    EXPECT_TRUE(sentences[2].startsWith(QStringLiteral("18 of %1 ").arg(planned))) << sentences[2].toStdString();
    EXPECT_EQ(sentences[3], QStringLiteral("No week was missed."));
}

TEST(PlanOutcomeWords, TheTableHasALineForEachLift)
{
    const trends::TrendSheet sheet = outcomeSheet(outcomeOnTest());
    ASSERT_EQ(sheet.rows.size(), 3U);
    EXPECT_EQ(sheet.rows[0].mid(0, 5).join(QLatin1Char('|')), QStringLiteral("Back squat|100 kg, estimated|107.5 kg, tested||+7.5 %"));
    EXPECT_EQ(sheet.rows[1].mid(0, 5).join(QLatin1Char('|')), QStringLiteral("Bench press|80 kg, tested|78 kg, estimated|pain on 2 days, on hold|−2.5 %"));
    EXPECT_EQ(sheet.rows[2].mid(0, 5).join(QLatin1Char('|')), QStringLiteral("Dumbbell row|not known|not known||–"));
    EXPECT_EQ(sheet.heads.size(), sheet.rows[0].size());
}

}  // namespace chalk::ui::direction
