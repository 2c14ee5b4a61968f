#include "core/clients/health_intake.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::clients {

namespace {

/// Every question answered with a no, by a newcomer.
HealthIntake allNo()
{
    HealthIntake intake;
    for (HealthAnswer& answer : intake.answers) {
        answer.isYes = false;
    }
    intake.isRegularExerciser = false;
    return intake;
}

HealthIntake withMark(HealthQuestion question, HealthMark mark)
{
    HealthIntake intake = allNo();
    intake.answerTo(question) = {true, {mark}, {}};
    return intake;
}

HealthOutcome judged(const HealthIntake& intake)
{
    return outcomeOf(intake, RestingLimits());
}

HealthIntake anyIntake()
{
    HealthIntake intake;
    for (int i = 0; i < kHealthQuestionCount; ++i) {
        const auto question = static_cast<HealthQuestion>(i);
        const int choice = *rc::gen::inRange(0, 3);
        HealthAnswer& answer = intake.answerTo(question);
        answer.isYes = choice == 0 ? std::nullopt : std::optional(choice == 1);
        for (const HealthMark mark : marksOf(question)) {
            if (*rc::gen::arbitrary<bool>()) {
                answer.marks.push_back(mark);
            }
        }
    }
    intake.isRegularExerciser = *rc::gen::element(std::optional<bool>(), std::optional(false), std::optional(true));
    intake.intended = *rc::gen::element(Intensity::Light, Intensity::Moderate, Intensity::Vigorous);
    return intake;
}

}  // namespace

TEST(HealthIntake, NothingToSayIsClear)
{
    const HealthOutcome outcome = judged(allNo());
    EXPECT_EQ(outcome.level, HealthLevel::Clear);
    EXPECT_EQ(outcome.advice, ScreeningAdvice::StartLightly);
    EXPECT_TRUE(outcome.isComplete());
    EXPECT_EQ(clearanceStateAfter(outcome), ClearanceState::NotNeeded);
}

TEST(HealthIntake, HalfAnIntakeIsNoClearance)
{
    HealthIntake intake = allNo();
    intake.answerTo(HealthQuestion::ChestPain).isYes.reset();
    const HealthOutcome outcome = judged(intake);
    EXPECT_EQ(outcome.open, std::vector{HealthQuestion::ChestPain});
    EXPECT_EQ(clearanceStateAfter(outcome), ClearanceState::Unanswered);
    intake = allNo();
    intake.isRegularExerciser.reset();
    EXPECT_TRUE(judged(intake).isActivityOpen);
    EXPECT_EQ(clearanceStateAfter(judged(intake)), ClearanceState::Unanswered);
}

TEST(HealthIntake, AGraveAnswerCountsBeforeTheRestIsAnswered)
{
    HealthIntake intake;
    intake.answerTo(HealthQuestion::DiabetesKidneyLung) = {true, {HealthMark::Diabetes}, {}};
    EXPECT_EQ(clearanceStateAfter(judged(intake)), ClearanceState::Recommended);
}

TEST(HealthIntake, ABareYesIsTakenAtItsGravest)
{
    HealthIntake intake = allNo();
    intake.answerTo(HealthQuestion::HeartOrPressure).isYes = true;
    const HealthOutcome outcome = judged(intake);
    ASSERT_EQ(outcome.findings.size(), 1U);
    EXPECT_EQ(outcome.findings.front(), (HealthFinding{HealthQuestion::HeartOrPressure, HealthMark::HeartDisease, true}));
    EXPECT_EQ(outcome.level, HealthLevel::AskDoctor);
    EXPECT_TRUE(outcome.cautions.empty());
}

TEST(HealthIntake, MarksWithoutAYesCountForNothing)
{
    HealthIntake intake = allNo();
    intake.answerTo(HealthQuestion::ChestPain) = {false, {HealthMark::ChestPainAtRest}, {}};
    EXPECT_EQ(judged(intake).level, HealthLevel::Clear);
}

TEST(HealthIntake, PressureAloneLimitsAndSuggestsACaution)
{
    const HealthOutcome outcome = judged(withMark(HealthQuestion::HeartOrPressure, HealthMark::HighBloodPressure));
    EXPECT_EQ(outcome.level, HealthLevel::Limits);
    EXPECT_EQ(outcome.cautions, std::vector{lifts::CautionTag::BloodPressure});
    EXPECT_EQ(clearanceStateAfter(outcome), ClearanceState::NotNeeded);
}

TEST(HealthIntake, ASymptomOfSomebodyWhoTrainsSaysStop)
{
    HealthIntake intake = withMark(HealthQuestion::Breathless, HealthMark::Palpitations);
    EXPECT_EQ(judged(intake).level, HealthLevel::AskDoctor);
    intake.isRegularExerciser = true;
    const HealthOutcome outcome = judged(intake);
    EXPECT_EQ(outcome.advice, ScreeningAdvice::StopAndClear);
    EXPECT_EQ(outcome.level, HealthLevel::NotToday);
    EXPECT_FALSE(outcome.isCareNeededNow);
    EXPECT_EQ(clearanceStateAfter(outcome), ClearanceState::StopAndSeek);
}

TEST(HealthIntake, PainAtRestNeedsCareNow)
{
    const HealthOutcome outcome = judged(withMark(HealthQuestion::ChestPain, HealthMark::ChestPainAtRest));
    EXPECT_TRUE(outcome.isCareNeededNow);
    EXPECT_EQ(outcome.level, HealthLevel::NotToday);
}

TEST(HealthIntake, AReadingAboveItsLimitWarnsAndIsNotForToday)
{
    HealthIntake intake = allNo();
    intake.resting.systolic = 181;
    const HealthOutcome outcome = judged(intake);
    EXPECT_TRUE(outcome.resting.isSystolicHigh);
    EXPECT_EQ(outcome.level, HealthLevel::NotToday);
    intake.resting.systolic = 180;
    EXPECT_EQ(judged(intake).level, HealthLevel::Clear);
}

TEST(HealthIntake, VigorousWorkWithAKnownDiseaseAsksADoctor)
{
    HealthIntake intake = withMark(HealthQuestion::DiabetesKidneyLung, HealthMark::Diabetes);
    intake.isRegularExerciser = true;
    EXPECT_EQ(judged(intake).level, HealthLevel::Limits);
    intake.intended = Intensity::Vigorous;
    EXPECT_EQ(judged(intake).level, HealthLevel::AskDoctor);
}

RC_GTEST_PROP(HealthIntake, WhoeverTheAlgorithmSendsToADoctorIsBlocked, ())
{
    const HealthOutcome outcome = judged(anyIntake());
    Clearance clearance;
    clearance.state = clearanceStateAfter(outcome);
    const bool isSafe = !isClearanceAdvised(outcome.advice) && !outcome.isCareNeededNow && outcome.isComplete();
    RC_ASSERT(isBlocked(clearance, base::Date()) || isSafe);
}

RC_GTEST_PROP(HealthIntake, OneMoreYesNeverMakesItMilder, ())
{
    HealthIntake intake = anyIntake();
    const HealthLevel before = judged(intake).level;
    const auto question = static_cast<HealthQuestion>(*rc::gen::inRange(0, kHealthQuestionCount));
    HealthAnswer& answer = intake.answerTo(question);
    RC_PRE(answer.isYes != true);
    answer.isYes = true;
    RC_ASSERT(judged(intake).level >= before);
}

RC_GTEST_PROP(HealthIntake, TheOrderOfMarksIsOfNoConsequence, ())
{
    HealthIntake intake = anyIntake();
    const HealthOutcome outcome = judged(intake);
    for (HealthAnswer& answer : intake.answers) {
        std::reverse(answer.marks.begin(), answer.marks.end());
    }
    RC_ASSERT(judged(intake) == outcome);
}

}  // namespace chalk::clients
