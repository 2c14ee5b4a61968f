#include "core/checkin/lift_evidence.h"

#include "core/analysis/estimated_maximum.h"
#include "core/checkin/finding.h"
#include "core/checkin/lift_log.h"
#include "core/plateau/detector.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/lift_story.h"

#include <gtest/gtest.h>

namespace chalk::checkin {

namespace {

using progression::Stage;
using test::kilos;
using test::LiftStory;

const base::Date kStoryMonday = *base::Date::parse("2026-09-07");

LiftEvidence evidenceOn(const LiftStory& story, base::Date day)
{
    return liftEvidenceOf({base::LiftId(7), lifts::Pattern::Squat, "Back squat", &story.fresh(), story.events()}, {day, 8, 8});
}

/// Eight weeks that go well and six in which nothing moves.
LiftStory stalledStory()
{
    return std::move(LiftStory(kStoryMonday).train(2, 5, 3).train(14, 3, 2).train(12, -1, 0));
}

}  // namespace

TEST(LiftEvidence, SaysWhereTheLiftStands)
{
    const LiftStory story = std::move(LiftStory(kStoryMonday).train(4, 3, 2));
    const LiftEvidence evidence = evidenceOn(story, story.lastDay());
    EXPECT_EQ(evidence.lift, base::LiftId(7));
    EXPECT_EQ(evidence.name, "Back squat");
    EXPECT_EQ(evidence.exerciseKey, "back_squat");
    EXPECT_EQ(evidence.stage, story.machine().state().stage);
    EXPECT_EQ(evidence.next, story.machine().prescriptionOn(story.lastDay()));
    EXPECT_FALSE(evidence.flat);
    // The bar takes steps of 2.5 kg: that share of the load at 0.9 % a week.
    ASSERT_TRUE(evidence.weeksPerStep);
    EXPECT_NEAR(*evidence.weeksPerStep, 2.5 / (evidence.next->load.centi() / 100.0) / 0.009, 1e-9);
}

TEST(LiftEvidence, EstimatesAndVolumeAreThoseOfTheSetsDone)
{
    const LiftStory story = std::move(LiftStory(kStoryMonday).train(2, 3, 2));
    const LiftEvidence evidence = evidenceOn(story, story.lastDay());
    // Base load asks for two sets of 5 to 10; 8 with 2 in reserve is 10 to failure.
    const auto band = analysis::maximumBand(base::Mass::of(kilos(40), base::MassUnit::Kilogram), base::Reps(10));
    ASSERT_EQ(evidence.estimates.size(), 2U);
    EXPECT_EQ(evidence.estimates.front(), (EstimatePoint{kStoryMonday, band->lowest, band->median, band->highest}));
    ASSERT_EQ(evidence.volume.size(), 12U);
    const WeekVolume& last = evidence.volume.back();
    EXPECT_EQ(last.monday, kStoryMonday);
    EXPECT_EQ(last.sets, 4);
    double volume = 0;
    for (const auto& event : story.events()) {
        for (const auto& set : std::get<progression::Exposure>(event.body).sets) {
            volume += set.load.centi() / 100.0 * set.amount;
        }
    }
    EXPECT_NEAR(last.volume, volume, 1e-6);
    EXPECT_EQ(evidence.volume.front().sets, 0);
}

TEST(LiftEvidence, IsJudgedByItsWholeLog)
{
    const LiftStory story = stalledStory();
    for (int back = 0; back < 80; back += 9) {
        const base::Date day = story.lastDay() - back;
        const LiftEvidence evidence = evidenceOn(story, day);
        const auto clean = plateau::cleaned(logOf(story.fresh(), story.events()));
        const auto judgement = plateau::judge(clean, {day, 8, 8});
        EXPECT_EQ(evidence.judgement.verdict, judgement.verdict) << day.toString();
        EXPECT_EQ(evidence.judgement.reason, judgement.reason) << day.toString();
        EXPECT_EQ(evidence.judgement.z, judgement.z) << day.toString();
    }
}

TEST(LiftEvidence, AStalledLiftIsFlatSinceItsLastBest)
{
    const LiftStory story = stalledStory();
    const LiftEvidence evidence = evidenceOn(story, story.lastDay());
    EXPECT_TRUE(isStalled(evidence.judgement, evidence.flags, evidence.isOnHold));
    ASSERT_TRUE(evidence.flat);
    EXPECT_EQ(evidence.flat->to, story.lastDay());
    ASSERT_TRUE(evidence.evidence.best.daysSinceLever);
    EXPECT_EQ(evidence.flat->to - evidence.flat->from, *evidence.evidence.best.daysSinceLever);
    // What the queue finds of the log alone is what the page finds.
    const LiftFacts facts{lifts::Pattern::Squat, "back_squat", evidence.stage, false, evidence.flags, {}, {}, {}, {}, {}};
    const JudgedLift queued = judgedLiftOf(base::LiftId(7), facts, logOf(story.fresh(), story.events()), {story.lastDay(), 8, 8});
    const JudgedLift paged = judgedLiftOf(evidence);
    EXPECT_TRUE(queued.isStalled && paged.isStalled);
    EXPECT_EQ(queued.flatWeeks, paged.flatWeeks);
    EXPECT_EQ(queued.z, paged.z);
    EXPECT_EQ(queued.isRegressing, paged.isRegressing);
    // Nothing was reached in the last six weeks but for where a stage began anew.
    EXPECT_GE(evidence.flat->to - evidence.flat->from, 14);
}

TEST(LiftEvidence, StagesFollowEachOtherWithoutGaps)
{
    const LiftStory story = stalledStory();
    const LiftEvidence evidence = evidenceOn(story, story.lastDay());
    ASSERT_GE(evidence.stages.size(), 2U);
    EXPECT_EQ(evidence.stages.front().days.from, checkInDays(story.lastDay()).from);
    EXPECT_EQ(evidence.stages.back().days.to, story.lastDay());
    EXPECT_EQ(evidence.stages.back().stage, story.machine().state().stage);
    for (std::size_t i = 1; i < evidence.stages.size(); ++i) {
        EXPECT_EQ(evidence.stages[i].days.from, evidence.stages[i - 1].days.to + 1);
        EXPECT_LE(evidence.stages[i].days.from, evidence.stages[i].days.to);
    }
}

TEST(LiftEvidence, MarksPainAndLayoffs)
{
    const LiftStory story = std::move(LiftStory(kStoryMonday).train(4, 3, 2).painful(2).rest(3).train(2, 3, 2).painful(6));
    const base::Date day = story.lastDay() + 20;
    const LiftEvidence evidence = evidenceOn(story, day);
    EXPECT_TRUE(evidence.isOnHold);
    EXPECT_FALSE(isStalled(evidence.judgement, evidence.flags, evidence.isOnHold));
    ASSERT_EQ(evidence.pain.size(), 2U);
    EXPECT_EQ(evidence.pain[0], (PainMark{kStoryMonday + 14, 2}));
    EXPECT_EQ(evidence.pain[1], (PainMark{story.lastDay(), 6}));
    ASSERT_EQ(evidence.layoffs.size(), 2U);
    // Three weeks and the three days to the next Thursday.
    EXPECT_EQ(evidence.layoffs[0], (DayRange{kStoryMonday + 15, kStoryMonday + 14 + 23}));
    EXPECT_EQ(evidence.layoffs[1], (DayRange{story.lastDay() + 1, day}));
}

TEST(LiftEvidence, ALighterWeekIsMarked)
{
    const LiftStory story = std::move(LiftStory(kStoryMonday).train(2, 5, 3).train(8, 3, 2).take(progression::LighterWeek{}).train(1, 0, 4));
    const base::Date begun = (story.events().end() - 2)->date;
    const LiftEvidence evidence = evidenceOn(story, story.lastDay());
    ASSERT_EQ(evidence.lighterWeeks.size(), 1U);
    EXPECT_EQ(evidence.lighterWeeks.front(), (DayRange{begun, begun + 6}));
    EXPECT_TRUE(evidence.next->isLighter());
    EXPECT_EQ(evidence.reserve, 2) << "what is left in reserve in a lighter week says nothing";
    // A week after the first begins another one.
    LiftStory again = story;
    again.take(progression::LighterWeek{});
    const LiftEvidence twice = evidenceOn(again, again.lastDay());
    ASSERT_EQ(twice.lighterWeeks.size(), 2U);
    EXPECT_LT(twice.lighterWeeks[0].to, twice.lighterWeeks[1].from);
}

TEST(LiftEvidence, EstimatesOfAnotherExerciseAreLeftOut)
{
    progression::Swap swap;
    swap.equipment = test::fixedKit({8, 12, 16, 20}).equipment;
    swap.startLoad = kilos(12);
    swap.exerciseKey = "goblet_squat";
    const LiftStory story = std::move(LiftStory(kStoryMonday).train(6, 3, 2).take(swap).train(2, 3, 2));
    const LiftEvidence evidence = evidenceOn(story, story.lastDay());
    EXPECT_EQ(evidence.estimates.size(), 2U);
    EXPECT_EQ(evidence.exerciseKey, "goblet_squat");
}

TEST(LiftEvidence, NothingAfterTheDayIsLookedAt)
{
    const LiftStory story = stalledStory();
    const LiftStory shorter = std::move(LiftStory(kStoryMonday).train(2, 5, 3).train(8, 3, 2));
    const LiftEvidence evidence = evidenceOn(story, shorter.lastDay());
    const LiftEvidence same = evidenceOn(shorter, shorter.lastDay());
    EXPECT_EQ(evidence.next, same.next);
    EXPECT_EQ(evidence.estimates, same.estimates);
    EXPECT_EQ(evidence.volume, same.volume);
    EXPECT_EQ(evidence.stages, same.stages);
}

}  // namespace chalk::checkin
