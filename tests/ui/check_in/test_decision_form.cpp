#include "ui/check_in/decision_form.h"

#include "tests/ui/check_in/check_in_fixture.h"
#include "ui/check_in/choice_row.h"
#include "core/exchange/catalogue_json.h"
#include "ui/common/look.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

namespace chalk::ui::check_in {

class DecisionFormTest : public ::testing::Test {
protected:
    DecisionFormTest()
    {
        m_form.resize(348, 700);
        m_form.setPage(&m_page, 1, test::checkInDay());
        m_form.show();
    }

    common::Look m_look;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    CheckInCase m_page = test::tomasz();
    DecisionForm m_form{m_look, m_catalogue};
};

TEST_F(DecisionFormTest, TheSuggestionIsMarkedAndChosenAtFirst)
{
    const auto draft = m_form.draft();
    ASSERT_TRUE(draft);
    EXPECT_EQ(draft->choice, checkin::ChoiceKind::LighterWeek);
    EXPECT_EQ(draft->event, m_page.evidence.lifts[1].choices[0].event);
    EXPECT_EQ(draft->nextReview, test::checkInDay() + 14) << "what the evidence asks for";
    const auto rows = m_form.findChildren<ChoiceRow*>();
    ASSERT_EQ(rows.size(), 6);
    EXPECT_TRUE(rows[0]->isChecked());
    EXPECT_EQ(rows[0]->view().text, QStringLiteral("This week 2 × 5 at 60 kg, rest 3:30, then 3 × 5 at 67.5 kg, rest 3:30"));
    EXPECT_FALSE(rows[0]->view().suggested.isEmpty());
    EXPECT_TRUE(rows[1]->view().suggested.isEmpty());
}

TEST_F(DecisionFormTest, ChoosingAnotherOneTakesTheFirstBack)
{
    m_form.choose(1);
    EXPECT_EQ(m_form.draft()->choice, checkin::ChoiceKind::Hold);
    const auto rows = m_form.findChildren<ChoiceRow*>();
    EXPECT_FALSE(rows[0]->isChecked());
    EXPECT_TRUE(rows[1]->isChecked());
    const auto event = m_form.draft()->event;
    ASSERT_TRUE(event);
    EXPECT_EQ(std::get<progression::CoachSet>(*event).reason, "Check-in: Hold one more week.") << "the log is never without a reason";
    m_form.choose(99);
    EXPECT_EQ(m_form.draft()->choice, checkin::ChoiceKind::Hold);
}

TEST_F(DecisionFormTest, NumbersByHandHaveToBeSetFirst)
{
    QSignalSpy asked(&m_form, &DecisionForm::editorAsked);
    m_form.choose(4);
    EXPECT_EQ(asked.size(), 1);
    EXPECT_FALSE(m_form.draft());
    EXPECT_EQ(m_form.missingText(), QStringLiteral("Set the numbers first."));
    progression::CoachSet set;
    set.load = base::Load::fromCenti(7000);
    set.reason = "agreed";
    m_form.setEdited(set, QStringLiteral("3 × 5 at 70 kg"));
    ASSERT_TRUE(m_form.draft());
    EXPECT_EQ(m_form.draft()->event, std::optional<progression::EventBody>(set));
}

TEST_F(DecisionFormTest, ASwapCannotBeDecidedWithoutTheAnswer)
{
    m_form.choose(3);
    progression::Swap swap;
    swap.exerciseKey = "dumbbell_bench_press";
    m_form.setEdited(swap, QStringLiteral("Dumbbell bench press"));
    EXPECT_FALSE(m_form.draft());
    EXPECT_EQ(m_form.missingText(), QStringLiteral("Say first whether it is the same movement."));
    m_form.setNote(QStringLiteral("Wrist is happier."));
    m_form.answerVariation(true);
    ASSERT_TRUE(m_form.draft());
    EXPECT_EQ(m_form.draft()->note, "Same movement, other variation. Wrist is happier.");
}

TEST_F(DecisionFormTest, ALiftThatWasSwappedIsAskedAboutWhateverIsDecided)
{
    CheckInCase swapped = test::tomasz();
    swapped.evidence.client = base::ClientId(77);
    swapped.swaps = {{base::LiftId(3), test::checkInDay() - 3}};
    m_form.setPage(&swapped, 1, test::checkInDay());
    EXPECT_FALSE(m_form.draft());
    m_form.answerVariation(false);
    ASSERT_TRUE(m_form.draft());
    EXPECT_EQ(m_form.draft()->note, "Another movement.");
}

TEST_F(DecisionFormTest, WhatWasTypedStaysWhileTheClientIsReadAgain)
{
    m_form.setNote(QStringLiteral("New baby at home."));
    m_form.choose(1);
    const CheckInCase again = test::tomasz();
    m_form.setPage(&again, 1, test::checkInDay());
    EXPECT_EQ(m_form.draft()->note, "New baby at home.");
    EXPECT_EQ(m_form.draft()->choice, checkin::ChoiceKind::Hold);
    m_form.setPage(&again, 0, test::checkInDay());
    EXPECT_EQ(m_form.draft()->note, "") << "another lift has a form of its own";
}

TEST_F(DecisionFormTest, OfAClientWithoutLiftsOnlyANoteIsDecided)
{
    CheckInCase bare = test::tomasz();
    bare.evidence.lifts.clear();
    m_form.setPage(&bare, 0, test::checkInDay());
    EXPECT_FALSE(m_form.draft());
    m_form.setNote(QStringLiteral("Waits for the doctor."));
    ASSERT_TRUE(m_form.draft());
    EXPECT_FALSE(m_form.draft()->lift);
    EXPECT_FALSE(m_form.draft()->event);
    m_form.setPage(nullptr, 0, test::checkInDay());
    EXPECT_FALSE(m_form.draft());
}

}  // namespace chalk::ui::check_in
