#include "ui/onboarding/caution_section.h"

#include "core/planning/starting_plan.h"
#include "tests/ui/onboarding/onboarding_fixture.h"
#include "ui/onboarding/onboarding_case.h"
#include "ui/onboarding/plan_desk.h"

#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <algorithm>

namespace chalk::ui::onboarding {

/// Cleo, who is clear to start, with the editor of her cautions.
class CautionSectionTest : public test::OnboardingTest {
protected:
    CautionSectionTest() : m_cleo(addCleo())
    {
        answerAllNo(m_cleo);
        open(m_cleo, "health");
    }

    std::vector<clients::Caution> cautions(int daysAhead = 0) { return store::ClientReader(m_studio.database()).read(m_cleo, m_clock.today() + daysAhead).value().cautions; }

    QCheckBox* tick(const char* text)
    {
        for (QCheckBox* one : m_page->findChildren<QCheckBox*>()) {
            if (one->isVisible() && one->text() == QLatin1String(text)) {
                return one;
            }
        }
        return nullptr;
    }

    void begin()
    {
        ASSERT_NE(button("Add a caution"), nullptr);
        button("Add a caution")->click();
    }

    /// Adds a caution in the editor and keeps it with Enter.
    void add(const char* part, const char* text, const char* tag, const char* until = "")
    {
        begin();
        enter("Body part", part);
        enter("What to avoid", text);
        enter("Until", until);
        ASSERT_NE(tick(tag), nullptr);
        tick(tag)->click();
        QTest::keyClick(&field("Body part"), Qt::Key_Return);
    }

    planning::StartingPlan plan()
    {
        PlanDesk desk(m_services);
        desk.take(readOnboardingCase(m_studio.database(), m_cleo, m_clock.today()).value());
        return desk.plan();
    }

    /// Whether a lift of the plan uses, or would use, what a caution rules out.
    bool planUsesWhatStrains(lifts::CautionTag tag)
    {
        const auto strains = [&](const std::string& key) {
            const lifts::Exercise* exercise = m_catalogue.find(key);
            return exercise != nullptr && std::find(exercise->ruledOutBy.begin(), exercise->ruledOutBy.end(), tag) != exercise->ruledOutBy.end();
        };
        const auto lifts = plan().lifts;
        return std::any_of(lifts.begin(), lifts.end(), [&](const planning::PlannedLift& one) { return strains(one.exerciseKey) || strains(one.rehearsalKey); });
    }

    base::ClientId m_cleo;
};

TEST_F(CautionSectionTest, IsAddedWithItsPartItsWordsAndItsLastDay)
{
    add("Right hip", "No deep bend under load", "Hip", "2026-12-24");
    ASSERT_EQ(cautions().size(), 1U);
    const clients::Caution kept = cautions().front();
    EXPECT_EQ(kept.bodyPart, "Right hip");
    EXPECT_EQ(kept.text, "No deep bend under load");
    EXPECT_EQ(kept.shortText, kept.text) << "the card says the same where nothing shorter is given";
    EXPECT_EQ(kept.until, base::Date::fromYmd(2026, 12, 24));
    EXPECT_EQ(kept.tags, std::vector{lifts::CautionTag::Hip});
    EXPECT_TRUE(says("<b>Right hip.</b> No deep bend under load"));
    EXPECT_TRUE(says("Until 24 Dec 2026."));
    EXPECT_EQ(tick("Hip"), nullptr) << "the editor is away";
    EXPECT_EQ(cautions(30).size(), 1U) << "its last day";
    EXPECT_EQ(cautions(31).size(), 0U);
}

TEST_F(CautionSectionTest, WithoutAPartOrWithAPastDayItIsNotKept)
{
    begin();
    QTest::keyClick(&field("Body part"), Qt::Key_Return);
    EXPECT_TRUE(says("Which body part?"));
    enter("Body part", "Hip");
    for (const char* until : {"2026-11-23", "soon"}) {
        enter("Until", until);
        QTest::keyClick(&field("Body part"), Qt::Key_Return);
        EXPECT_TRUE(says("No such day, or it is past.")) << until;
        EXPECT_TRUE(cautions().empty()) << until;
    }
    enter("Until", "2026-11-24");
    QTest::keyClick(&field("Body part"), Qt::Key_Return);
    EXPECT_EQ(cautions().size(), 1U) << "until the end of today";
}

TEST_F(CautionSectionTest, AChangeTakesThePlaceOfWhatWasKept)
{
    add("Hip", "No deep bend", "Hip");
    button("Change")->click();
    EXPECT_EQ(field("Body part").text(), QStringLiteral("Hip"));
    EXPECT_TRUE(tick("Hip")->isChecked());
    enter("Body part", "Left hip");
    enter("On the card", "Hip: shallow");
    tick("Knee")->click();
    button("Keep")->click();
    ASSERT_EQ(cautions().size(), 1U);
    EXPECT_EQ(cautions().front().bodyPart, "Left hip");
    EXPECT_EQ(cautions().front().shortText, "Hip: shallow");
    EXPECT_EQ(cautions().front().tags, (std::vector{lifts::CautionTag::Hip, lifts::CautionTag::Knee}));
}

TEST_F(CautionSectionTest, EndedItIsGoneFromTodayAndStaysOnFile)
{
    add("Hip", "No deep bend", "Hip");
    button("End")->click();
    EXPECT_TRUE(cautions().empty());
    EXPECT_FALSE(says("<b>Hip.</b>"));
    EXPECT_EQ(cautions(-1).size(), 1U) << "it was in force";
}

TEST_F(CautionSectionTest, LeavingTheEditorKeepsNothing)
{
    for (const bool isByKey : {true, false}) {
        begin();
        enter("Body part", "Hip");
        if (isByKey) {
            EXPECT_TRUE(m_page->closeOrClear());
        } else {
            button("Leave")->click();
        }
        EXPECT_EQ(tick("Hip"), nullptr);
        EXPECT_TRUE(cautions().empty());
    }
}

TEST_F(CautionSectionTest, ItRulesExercisesOutOfThePlanUntilItEnds)
{
    ASSERT_TRUE(planUsesWhatStrains(lifts::CautionTag::Shoulder)) << "else this says nothing";
    add("Left shoulder", "Nothing overhead", "Shoulder");
    EXPECT_FALSE(planUsesWhatStrains(lifts::CautionTag::Shoulder));
    button("End")->click();
    EXPECT_TRUE(planUsesWhatStrains(lifts::CautionTag::Shoulder));
}

TEST_F(CautionSectionTest, WhatTheAnswersSuggestIsTakenOverOnce)
{
    clients::HealthIntake intake;
    for (clients::HealthAnswer& answer : intake.answers) {
        answer.isYes = false;
    }
    intake.isRegularExerciser = false;
    intake.answerTo(clients::HealthQuestion::JointBoneBack) = {true, {clients::HealthMark::Knee}, {}};
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).saveIntake(m_cleo, intake, {}, "knee", m_clock.today()));
    m_page->refresh();
    EXPECT_TRUE(says("Suggested by the answers: <b>Knee</b>"));
    ASSERT_NE(button("Take over"), nullptr);
    button("Take over")->click();
    ASSERT_EQ(cautions().size(), 1U);
    EXPECT_EQ(cautions().front().tags, std::vector{lifts::CautionTag::Knee});
    EXPECT_EQ(button("Take over"), nullptr) << "it is covered";
}

TEST_F(CautionSectionTest, EndingWhatSomebodyElseChangedMeanwhileIsDecided)
{
    add("Hip", "No deep bend", "Hip");
    clients::Caution theirs = cautions().front();
    const clients::Caution seen = theirs;
    theirs.text = "No deep bend, no jumps";
    const auto writeTheirs = [&] { ASSERT_TRUE(store::ClientWriter(m_studio.database()).saveCaution(m_cleo, theirs, m_clock.today())); };
    writeTheirs();
    button("End")->click();
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    ASSERT_EQ(cautions().size(), 1U) << "theirs is kept where nothing else is said";
    EXPECT_EQ(cautions().front().text, theirs.text);

    theirs.text = "No jumps";
    writeTheirs();
    m_dialogs.answers = {2};
    button("End")->click();
    EXPECT_TRUE(cautions().empty());
    ASSERT_EQ(cautions(-1).size(), 1U);
    EXPECT_EQ(cautions(-1).front().text, "No jumps") << "both: it ends with the words of the other";
    EXPECT_EQ(m_dialogs.asked.size(), 2U);
}

TEST_F(CautionSectionTest, BothChangesOfACautionCanBeKept)
{
    add("Hip", "No deep bend", "Hip");
    button("Change")->click();
    clients::Caution theirs = cautions().front();
    theirs.text = "No jumps";
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).saveCaution(m_cleo, theirs, m_clock.today()));
    enter("Body part", "Left hip");
    m_dialogs.answers = {2};
    button("Keep")->click();
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    ASSERT_EQ(cautions().size(), 1U);
    EXPECT_EQ(cautions().front().bodyPart, "Left hip");
    EXPECT_EQ(cautions().front().text, "No jumps");
}

}  // namespace chalk::ui::onboarding
