#include "ui/onboarding/field_tests_page.h"

#include "tests/ui/onboarding/movement_fixture.h"
#include "ui/onboarding/field_test_row.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>

namespace chalk::ui::onboarding {

class FieldTestsPageTest : public test::MovementTest {
protected:
    FieldTestsPageTest() { m_step.showPart(MovementStep::Part::FieldTests); }

    FieldTestRow& row(int index) { return *m_step.findChildren<FieldTestRow*>().at(index); }
    QString says(int index)
    {
        QStringList texts;
        for (const QLabel* label : row(index).findChildren<QLabel*>()) {
            if (!label->isHidden()) {
                texts.append(label->text());
            }
        }
        return texts.join(QLatin1Char('\n'));
    }
};

TEST_F(FieldTestsPageTest, AllSixAreTypedByKeyboardAndKept)
{
    for (const char* text : {"12", "20", "30", "1:30", "11", "12.5", "45", "38"}) {
        type(QString::fromUtf8(text));
        press(Qt::Key_Return);
    }
    ASSERT_EQ(keptTests().size(), 1U);
    const screens::FieldTestDay day = keptTests().front();
    EXPECT_EQ(day.date, m_today);
    ASSERT_EQ(day.tests.size(), 6U);
    EXPECT_EQ(std::get<screens::PushUps>(day.tests[1]).form, screens::PushUpForm::Knees) << "the form of the norm is offered";
    EXPECT_EQ(std::get<screens::Plank>(day.tests[3]).heldMs, 90'000);
    EXPECT_EQ(std::get<screens::SitAndReach>(day.tests[5]).zeroMm, 380);
    EXPECT_TRUE(says(0).contains(QStringLiteral("outside the age range")));
    // Women of 30 to 39: Very good from 20, Excellent from 27 (CSEP).
    EXPECT_TRUE(says(1).contains(QStringLiteral("Very good: 20 to 26.")));
    EXPECT_TRUE(m_refusals.isEmpty());
}

TEST_F(FieldTestsPageTest, TheClassFollowsTheTypingAtItsEdge)
{
    press(Qt::Key_Down);
    type(QStringLiteral("1"));
    EXPECT_TRUE(says(1).contains(QStringLiteral("Needs improvement: up to 7.")));
    type(QStringLiteral("9"));
    EXPECT_TRUE(says(1).contains(QStringLiteral("Good: 13 to 19.")));
    press(Qt::Key_Backspace);
    press(Qt::Key_Backspace);
    type(QStringLiteral("20"));
    EXPECT_TRUE(says(1).contains(QStringLiteral("Very good: 20 to 26.")));
}

TEST_F(FieldTestsPageTest, WhatMakesNoSenseStaysInItsFieldAndTheKeptResultStands)
{
    type(QStringLiteral("12"));
    press(Qt::Key_Return);
    press(Qt::Key_Up);
    press(Qt::Key_End);
    type(QStringLiteral("x"));
    press(Qt::Key_Return);
    EXPECT_EQ(row(0).fields().front()->text(), QStringLiteral("12x"));
    EXPECT_TRUE(says(0).contains(QStringLiteral("“12x”")));
    EXPECT_EQ(std::get<screens::ChairStand>(keptTests().front().tests.front()).stands, base::Reps(12));
}

TEST_F(FieldTestsPageTest, WhatSomebodyElseTestedMeanwhileStays)
{
    const auto second = store::Database::open(m_studio.file(), store::OpenMode::MustExist).value();
    ASSERT_TRUE(store::ClientWriter(*second).saveFieldTests(m_client, {m_today, {screens::Plank{75'000}}}, m_today));
    m_dialogs.answers = {2};
    type(QStringLiteral("12"));
    press(Qt::Key_Return);
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    ASSERT_EQ(keptTests().size(), 1U);
    ASSERT_EQ(keptTests().front().tests.size(), 2U) << "both";
    EXPECT_EQ(m_refusals, QStringList());
    show();
    EXPECT_EQ(row(3).fields().front()->text(), QStringLiteral("75"));
}

TEST_F(FieldTestsPageTest, AClearedResultIsGone)
{
    type(QStringLiteral("1"));
    press(Qt::Key_Return);
    press(Qt::Key_Up);
    press(Qt::Key_Backspace);
    press(Qt::Key_Return);
    EXPECT_TRUE(keptTests().front().tests.empty());
}

TEST_F(FieldTestsPageTest, TheStopwatchWritesIntoTheTestWithTheFocus)
{
    for (int i = 0; i < 3; ++i) {
        press(Qt::Key_Down);
    }
    press(Qt::Key_T);
    m_now += 61'270;
    press(Qt::Key_T);
    EXPECT_EQ(row(3).fields().front()->text(), QStringLiteral("61.2"));
    EXPECT_EQ(std::get<screens::Plank>(keptTests().front().tests.front()).heldMs, 61'200);
    press(Qt::Key_T);
    m_now += 5'000;
    EXPECT_TRUE(m_step.closeOrClear());
    EXPECT_EQ(std::get<screens::Plank>(keptTests().front().tests.front()).heldMs, 61'200);
    EXPECT_EQ(m_step.part(), MovementStep::Part::FieldTests);
}

TEST_F(FieldTestsPageTest, EarlierDaysStandBesideAndStay)
{
    store::ClientWriter writer(m_studio.database());
    const screens::FieldTestDay earlier{m_today - 56, {screens::PushUps{base::Reps(12), screens::PushUpForm::Knees}, screens::SitAndReach{200, 230}}};
    ASSERT_TRUE(writer.saveFieldTests(m_client, earlier, m_today));
    show();
    EXPECT_TRUE(says(1).contains(QStringLiteral("29 Sep 2026: 12 on the knees. Fair: 8 to 12.")));
    EXPECT_EQ(row(5).fields()[1]->text(), QStringLiteral("23")) << "the zero of the last time is offered";
    press(Qt::Key_Down);
    type(QStringLiteral("13"));
    press(Qt::Key_Return);
    ASSERT_EQ(keptTests().size(), 2U);
    EXPECT_EQ(std::get<screens::PushUps>(keptTests().front().tests.front()).reps, base::Reps(12));
    EXPECT_EQ(std::get<screens::PushUps>(keptTests().back().tests.front()).reps, base::Reps(13));
}

TEST_F(FieldTestsPageTest, NothingIsTestedWithoutConsent)
{
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).saveProfile(m_client, {}, m_today));
    show();
    EXPECT_FALSE(row(0).isEnabled());
}

}  // namespace chalk::ui::onboarding
