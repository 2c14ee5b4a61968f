#include "ui/common/health_words.h"

#include <QSet>

#include <gtest/gtest.h>

namespace chalk::ui::common {

using clients::HealthIntake;
using clients::HealthMark;
using clients::HealthQuestion;

class HealthWords : public ::testing::Test {
protected:
    HealthWords()
    {
        for (clients::HealthAnswer& answer : m_intake.answers) {
            answer.isYes = false;
        }
        m_intake.isRegularExerciser = false;
    }

    void mark(HealthQuestion question, std::vector<HealthMark> marks) { m_intake.answerTo(question) = {true, std::move(marks), {}}; }
    [[nodiscard]] clients::HealthOutcome outcome() const { return clients::outcomeOf(m_intake, m_limits); }

    HealthIntake m_intake;
    clients::RestingLimits m_limits;
};

TEST_F(HealthWords, AskEachQuestionOnce)
{
    QSet<QString> seen;
    for (int i = 0; i < clients::kHealthQuestionCount; ++i) {
        const auto question = static_cast<HealthQuestion>(i);
        EXPECT_TRUE(questionText(question).endsWith(QLatin1Char('?'))) << i;
        EXPECT_EQ(questionNumber(question), i + 1);
        seen.insert(questionText(question));
    }
    EXPECT_EQ(seen.size(), clients::kHealthQuestionCount);
}

TEST_F(HealthWords, TheQuestionsSayWhatTheirMarksAre)
{
    const QString effort = questionText(HealthQuestion::Breathless);
    for (const char* sign : {"breath", "ankles", "heart", "leg pain"}) {
        EXPECT_TRUE(effort.contains(QLatin1String(sign))) << sign;
    }
    EXPECT_TRUE(questionText(HealthQuestion::OperationOrInjury).contains(QStringLiteral("injury")));
}

TEST_F(HealthWords, NameEveryMarkAndTagDifferently)
{
    QSet<QString> marks;
    for (int i = 0; i < clients::kHealthMarkCount; ++i) {
        marks.insert(markName(static_cast<HealthMark>(i)));
    }
    EXPECT_EQ(marks.size(), clients::kHealthMarkCount);
    EXPECT_FALSE(marks.contains(QString()));
    EXPECT_EQ(markName(HealthMark::FamilyHeartTrouble), QStringLiteral("Heart trouble in the family"));
    EXPECT_EQ(cautionTagName(lifts::CautionTag::GripStrength), QStringLiteral("Grip"));
}

TEST_F(HealthWords, NameTheAnswersThatAskForADoctor)
{
    mark(HealthQuestion::HeartOrPressure, {HealthMark::HeartDisease});
    mark(HealthQuestion::Breathless, {HealthMark::BreathlessOnLightEffort});
    EXPECT_EQ(outcomeHeadline(outcome()), QStringLiteral("Medical clearance recommended"));
    EXPECT_EQ(outcomeReason(outcome()), QStringLiteral("Answers 1 and 3: heart disease, breathless on light effort. Together they call for a doctor’s view "
                                                       "before any training."));
    EXPECT_TRUE(wordsToSay(outcome()).contains(QStringLiteral("not a diagnosis")));
    EXPECT_FALSE(whatWaitsText(outcome()).isEmpty());
}

TEST_F(HealthWords, SendSomebodyWithChestPainAtRestToCareNow)
{
    mark(HealthQuestion::ChestPain, {HealthMark::ChestPainAtRest});
    EXPECT_EQ(outcomeHeadline(outcome()), QStringLiteral("Not today: medical care now"));
    EXPECT_EQ(healthLevelSignal(outcome().level), Signal::Pain);
}

TEST_F(HealthWords, SayThatABareYesIsTakenForTheGravest)
{
    mark(HealthQuestion::Pregnancy, {});
    EXPECT_TRUE(outcomeReason(outcome()).startsWith(QStringLiteral("Answer 8: pregnant (not said which, the gravest is taken).")));
}

TEST_F(HealthWords, NameTheReadingsAboveTheirLimits)
{
    m_intake.resting = {110, 190, 90};
    EXPECT_EQ(restingWarningTexts(m_intake.resting, outcome().resting, m_limits),
              (QStringList{QStringLiteral("heart rate 110 a minute (limit 100)"), QStringLiteral("systolic 190 (limit 180)")}));
    EXPECT_TRUE(outcomeReason(outcome()).contains(QStringLiteral("above the studio’s limit")));
}

TEST_F(HealthWords, ListWhatIsOpen)
{
    m_intake.answerTo(HealthQuestion::FaintOrDizzy).isYes.reset();
    m_intake.answerTo(HealthQuestion::DiabetesKidneyLung).isYes.reset();
    m_intake.isRegularExerciser.reset();
    EXPECT_EQ(outcomeHeadline(outcome()), QStringLiteral("Not finished yet"));
    EXPECT_EQ(openAnswersText(outcome()), QStringLiteral("Still open: 4, 5 and how active the client is."));
    EXPECT_FALSE(whatWaitsText(outcome()).isEmpty());
}

TEST_F(HealthWords, LetEverythingGoOnWhereNothingIsFound)
{
    EXPECT_EQ(outcomeHeadline(outcome()), QStringLiteral("Clear to start"));
    EXPECT_TRUE(whatWaitsText(outcome()).isEmpty());
    EXPECT_TRUE(openAnswersText(outcome()).isEmpty());
}

TEST_F(HealthWords, WriteTheRowOfTheAlgorithm)
{
    EXPECT_EQ(algorithmRowText({false, false, true, clients::Intensity::Moderate}),
              QStringLiteral("Not a regular exerciser · no known disease · signs or symptoms · moderate"));
    EXPECT_TRUE(screeningSourceText().contains(QStringLiteral("Riebe")));
}

}  // namespace chalk::ui::common
