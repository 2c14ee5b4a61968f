#include "ui/common/check_in_words.h"

#include "core/exchange/catalogue_json.h"

#include <QSet>

#include <gtest/gtest.h>

namespace chalk::ui::common {

using checkin::ChoiceKind;
using checkin::FindingKind;

class CheckInWords : public ::testing::Test {
protected:
    CheckInWords()
    {
        m_lift.exerciseKey = "bench_press";
        m_lift.name = "Bench press";
        m_next.kind = progression::PrescriptionKind::Work;
        m_next.stage = progression::Stage::RepBuild;
        m_next.load = base::Load::fromCenti(6750);
        m_next.sets = base::Sets(3);
        m_next.repsLow = m_next.repsHigh = base::Reps(6);
        m_next.rest = base::Seconds(210);
    }

    [[nodiscard]] QString textOf(const checkin::Choice& choice) const { return choiceText(choice, m_lift, m_catalogue); }

    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    checkin::LiftEvidence m_lift;
    progression::Prescription m_next;
};

TEST_F(CheckInWords, EveryFindingAndEveryChoiceHasANameOfItsOwn)
{
    QSet<QString> names;
    for (const FindingKind kind : checkin::kFindingKinds) {
        names.insert(findingName(kind));
    }
    for (const ChoiceKind kind : checkin::kChoiceKinds) {
        names.insert(choiceName(kind));
    }
    EXPECT_EQ(names.size(), static_cast<qsizetype>(checkin::kFindingKinds.size() + checkin::kChoiceKinds.size()));
    EXPECT_FALSE(names.contains(QString()));
}

// 2.5 kg on 40 kg take 7 weeks at 0.9 per cent a week (see plateau::weeksPerLoadStep).
TEST_F(CheckInWords, TheNextLoadStepIsSaidWhereLoadIsWhatMoves)
{
    m_lift.stage = progression::Stage::LoadBuild;
    EXPECT_TRUE(loadStepText(m_lift).isEmpty()) << "no heavier load";
    m_lift.weeksPerStep = 2.5 / 40 / 0.009;
    EXPECT_EQ(loadStepText(m_lift), QStringLiteral("The next load step takes about 7 weeks at a usual gain, with the loads on hand."));
    m_lift.weeksPerStep = 1.2;
    EXPECT_EQ(loadStepText(m_lift), QStringLiteral("The next load step takes about 1 week at a usual gain, with the loads on hand."));
    m_lift.weeksPerStep = 0.3;
    EXPECT_EQ(loadStepText(m_lift), QStringLiteral("The next load step takes less than a week at a usual gain, with the loads on hand."));
    m_lift.stage = progression::Stage::RepBuild;
    EXPECT_TRUE(loadStepText(m_lift).isEmpty());
}

TEST_F(CheckInWords, TheQueueSaysWhyOnOneLine)
{
    checkin::QueueEntry entry;
    entry.exerciseKey = "bench_press";
    entry.finding = {FindingKind::Plateau, {}, 4};
    EXPECT_EQ(queueWhyText(entry, m_catalogue), QStringLiteral("Bench press, 4 weeks without a new best"));
    entry.finding.flatWeeks = 1;
    EXPECT_EQ(queueWhyText(entry, m_catalogue), QStringLiteral("Bench press, 1 week without a new best"));
    entry.finding.flatWeeks = 0;
    EXPECT_EQ(queueWhyText(entry, m_catalogue), QStringLiteral("Bench press has stalled"));
    entry.finding.kind = FindingKind::Pain;
    EXPECT_EQ(queueWhyText(entry, m_catalogue), QStringLiteral("Bench press on hold, pain"));
    entry.exerciseKey.clear();
    EXPECT_EQ(queueWhyText(entry, m_catalogue), QStringLiteral("On hold, pain"));
    entry.finding.kind = FindingKind::Attendance;
    entry.came = 5;
    entry.of = 12;
    EXPECT_EQ(queueWhyText(entry, m_catalogue), QStringLiteral("Came to 5 of the last 12"));
    for (const FindingKind kind : checkin::kFindingKinds) {
        entry.finding.kind = kind;
        EXPECT_FALSE(queueWhyText(entry, m_catalogue).isEmpty());
    }
}

TEST_F(CheckInWords, InAPlanHoldingKeepsToItAndWhatEndsItSaysSo)
{
    checkin::Choice choice;
    choice.followsPlan = true;
    choice.next = m_next;
    choice.next->block = progression::BlockMark{5, 12, false, false};
    EXPECT_EQ(choiceTitle(choice), QStringLiteral("Keep to the plan"));
    EXPECT_EQ(textOf(choice), QStringLiteral("3 × 6 at 67.5 kg, rest 3:30, plan week 5 of 12"));
    choice.kind = ChoiceKind::ByHand;
    EXPECT_EQ(textOf(choice), QStringLiteral("Set the numbers by hand. The plan ends for this lift"));
    choice.kind = ChoiceKind::Swap;
    EXPECT_TRUE(textOf(choice).endsWith(QStringLiteral("The plan ends for this lift")));
    choice.kind = ChoiceKind::Direction;
    EXPECT_EQ(choiceTitle(choice), QStringLiteral("Open the plan"));
    choice.followsPlan = false;
    EXPECT_EQ(choiceTitle(choice), QStringLiteral("Talk about direction"));
}

TEST_F(CheckInWords, APlanThatIsOverIsToBeReviewed)
{
    checkin::QueueEntry entry;
    entry.finding.kind = FindingKind::Direction;
    EXPECT_EQ(queueWhyText(entry, m_catalogue), QStringLiteral("Ready to choose what comes next"));
    entry.finding.planEnd = *base::Date::parse("2026-11-22");
    EXPECT_EQ(queueWhyText(entry, m_catalogue), QStringLiteral("The plan ended on 22 Nov: review it"));
}

TEST_F(CheckInWords, AChoiceSaysWhatItLeadsTo)
{
    checkin::Choice choice;
    choice.next = m_next;
    EXPECT_EQ(textOf(choice), QStringLiteral("3 × 6 at 67.5 kg, rest 3:30"));
    choice.kind = ChoiceKind::MoveOn;
    EXPECT_EQ(choiceTitle(choice), QStringLiteral("Move on to Rep build"));
    EXPECT_EQ(textOf(choice), QStringLiteral("3 × 6 at 67.5 kg, rest 3:30"));
    choice.kind = ChoiceKind::LighterWeek;
    choice.later = m_next;
    choice.next->sets = base::Sets(2);
    choice.next->load = base::Load::fromCenti(6000);
    EXPECT_EQ(textOf(choice), QStringLiteral("This week 2 × 6 at 60 kg, rest 3:30, then 3 × 6 at 67.5 kg, rest 3:30"));
    for (const ChoiceKind kind : checkin::kChoiceKinds) {
        choice.kind = kind;
        EXPECT_FALSE(textOf(choice).isEmpty());
    }
}

TEST_F(CheckInWords, ASwapIsWrittenAsTheOtherExerciseIsLoaded)
{
    checkin::Choice choice;
    choice.kind = ChoiceKind::Swap;
    choice.next = m_next;
    choice.exerciseKey = "dumbbell_bench_press";
    const lifts::Exercise* exercise = m_catalogue.find(choice.exerciseKey);
    ASSERT_NE(exercise, nullptr);
    ASSERT_EQ(exercise->pieces, 2);
    EXPECT_EQ(textOf(choice), QString::fromStdString(exercise->name) + QStringLiteral(", 3 × 6 at 2 × 67.5 kg, rest 3:30"));
}

TEST_F(CheckInWords, EveryReasonOfASuggestionIsASentenceOfItsOwn)
{
    QSet<QString> said;
    for (const checkin::ChoiceReason reason : checkin::kChoiceReasons) {
        const QString text = choiceReasonText(reason);
        EXPECT_EQ(text.isEmpty(), reason == checkin::ChoiceReason::None);
        EXPECT_TRUE(text.isEmpty() || text.endsWith(QLatin1Char('.')));
        said.insert(text);
    }
    EXPECT_EQ(said.size(), static_cast<qsizetype>(checkin::kChoiceReasons.size()));
}

TEST_F(CheckInWords, ALiftOnHoldHasNoNumbers)
{
    m_next.kind = progression::PrescriptionKind::Hold;
    EXPECT_EQ(prescriptionText(m_next, m_lift, nullptr), QStringLiteral("on hold"));
    m_next.kind = progression::PrescriptionKind::Rehearse;
    EXPECT_EQ(prescriptionText(m_next, m_lift, nullptr), QStringLiteral("the movement without load"));
}

TEST_F(CheckInWords, ADecisionIsOneLineOfTheHistory)
{
    checkin::Decision decision;
    decision.day = *base::Date::parse("2026-11-10");
    decision.nextReview = *base::Date::parse("2026-11-24");
    decision.about = FindingKind::Plateau;
    EXPECT_EQ(decisionText(decision, QStringLiteral("Bench press")), QStringLiteral("10 Nov: hold one more week (Bench press, plateau). Review 24 Nov."));
    decision.note = "New baby\nat home.";
    EXPECT_EQ(decisionText(decision, {}), QStringLiteral("10 Nov: hold one more week (plateau). “New baby at home.” Review 24 Nov."));
}

TEST_F(CheckInWords, AReviewOfAPlanNamesItsLastDay)
{
    checkin::Finding finding;
    finding.kind = checkin::FindingKind::Direction;
    EXPECT_EQ(findingTitle(finding).toStdString(), "Direction");
    finding.planEnd = base::Date::fromYmd(2026, 11, 22);
    EXPECT_EQ(findingTitle(finding).toStdString(), "Direction, the plan ended on 22 Nov");
}

}  // namespace chalk::ui::common
