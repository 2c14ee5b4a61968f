#include "ui/onboarding/plan_step.h"

#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/ui/onboarding/onboarding_fixture.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include <algorithm>

namespace chalk::ui::onboarding {

using lifts::Pattern;

/// Cleo, who is clear to start and moved well in the screen, in the Plan step.
class PlanStepTest : public test::OnboardingTest {
protected:
    PlanStepTest() : m_cleo(addCleo())
    {
        answerAllNo(m_cleo);
        keepFinished(m_cleo, m_clock.today(), screens::Mark::Met, screens::PauseMark::Held);
        clients::BodyMeasures measures;
        measures.date = m_clock.today();
        measures.mass = base::Mass::of(base::Load::fromCenti(6850), base::MassUnit::Kilogram);
        EXPECT_TRUE(store::ClientWriter(m_studio.database()).saveMeasures(m_cleo, measures, m_clock.today()));
    }

    void openPlan() { open(m_cleo, "plan"); }
    planning::PlanDraft draft() { return store::ClientForms(m_studio.database()).planDraft(m_cleo).value(); }
    store::ClientFile file() { return store::ClientReader(m_studio.database()).read(m_cleo, m_clock.today()).value(); }

    const store::ClientLift* find(const store::ClientFile& file, Pattern pattern)
    {
        for (const store::ClientLift& one : file.lifts) {
            if (one.lift.pattern == pattern) {
                return &one;
            }
        }
        return nullptr;
    }

    QCheckBox* tick(const char* name)
    {
        for (QCheckBox* one : m_page->findChildren<QCheckBox*>()) {
            if (one->isVisible() && one->accessibleName() == QLatin1String(name)) {
                return one;
            }
        }
        return nullptr;
    }

    /// The box of the first session's day.
    QComboBox* firstDayBox()
    {
        for (QComboBox* one : m_page->findChildren<QComboBox*>()) {
            if (one->isVisible() && one->accessibleName().startsWith(QStringLiteral("Day of "))) {
                return one;
            }
        }
        return nullptr;
    }

    /// Steps on in a box by the keyboard, over what cannot be chosen.
    static void stepOn(QComboBox* box, Qt::Key key = Qt::Key_Down)
    {
        box->setFocus();
        QTest::keyClick(box, key);
    }

    void startByKeys() { press(Qt::Key_Return, Qt::ControlModifier); }

    qsizetype bookedSessions() { return m_studio.rows(QStringLiteral("SELECT id FROM session WHERE client_id = %1").arg(m_cleo.value())).size(); }

    base::ClientId m_cleo;
};

TEST_F(PlanStepTest, CtrlEnterBeginsEveryLiftOnce)
{
    openPlan();
    EXPECT_TRUE(file().lifts.empty());
    startByKeys();
    const auto begun = file();
    ASSERT_NE(find(begun, Pattern::Squat), nullptr);
    EXPECT_EQ(find(begun, Pattern::Squat)->lift.machine.prescriptionOn(m_clock.today()).kind, progression::PrescriptionKind::Work);
    EXPECT_GE(bookedSessions(), 4) << "two weeks of two sessions";
    EXPECT_TRUE(says("The plan runs"));
    const auto booked = bookedSessions();
    startByKeys();
    EXPECT_EQ(file().lifts.size(), begun.lifts.size());
    EXPECT_EQ(bookedSessions(), booked);
}

TEST_F(PlanStepTest, AnotherExerciseIsKeptAndBegun)
{
    openPlan();
    QComboBox* squat = box("Exercise for Squat");
    ASSERT_NE(squat, nullptr);
    const QString suggested = squat->currentText();
    EXPECT_TRUE(suggested.contains(QStringLiteral("(suggested)"))) << suggested.toStdString();
    stepOn(squat);
    const std::string chosen = draft().of(Pattern::Squat).exerciseKey;
    ASSERT_FALSE(chosen.empty());
    EXPECT_NE(box("Exercise for Squat")->currentText(), suggested);
    open(m_cleo, "profile");
    openPlan();
    EXPECT_EQ(box("Exercise for Squat")->currentText(), QString::fromStdString(m_catalogue.find(chosen)->name)) << "it is still chosen";
    startByKeys();
    const auto begun = file();
    EXPECT_EQ(find(begun, Pattern::Squat)->lift.machine.kit().exerciseKey, chosen);
}

TEST_F(PlanStepTest, BackToTheSuggestionIsNoWish)
{
    openPlan();
    const int suggested = box("Exercise for Squat")->currentIndex();
    stepOn(box("Exercise for Squat"));
    ASSERT_FALSE(draft().of(Pattern::Squat).isEmpty());
    EXPECT_NE(box("Exercise for Squat")->currentIndex(), suggested);
    stepOn(box("Exercise for Squat"), Qt::Key_Up);
    EXPECT_EQ(box("Exercise for Squat")->currentIndex(), suggested);
    EXPECT_TRUE(draft().of(Pattern::Squat).isEmpty());
}

TEST_F(PlanStepTest, AFirstLoadIsWhereTheLiftBegins)
{
    openPlan();
    QComboBox* load = box("First load for Squat");
    ASSERT_NE(load, nullptr);
    const int lightest = load->currentIndex();
    stepOn(load);
    const auto wished = draft().of(Pattern::Squat).firstLoad;
    ASSERT_TRUE(wished);
    EXPECT_EQ(box("First load for Squat")->currentIndex(), lightest + 1);
    startByKeys();
    const auto begun = file();
    EXPECT_EQ(find(begun, Pattern::Squat)->lift.machine.prescriptionOn(m_clock.today()).load, *wished);
}

TEST_F(PlanStepTest, ALiftThatIsLeftOutDoesNotBegin)
{
    openPlan();
    QCheckBox* squat = tick("Squat is in the plan");
    ASSERT_NE(squat, nullptr);
    EXPECT_TRUE(squat->isChecked());
    squat->click();
    EXPECT_TRUE(draft().of(Pattern::Squat).isLeftOut);
    EXPECT_EQ(box("Exercise for Squat"), nullptr) << "there is nothing to choose";
    startByKeys();
    const auto begun = file();
    EXPECT_EQ(find(begun, Pattern::Squat), nullptr);
    EXPECT_NE(find(begun, Pattern::Hinge), nullptr);
}

TEST_F(PlanStepTest, AnotherDayMovesTheSessions)
{
    openPlan();
    ASSERT_NE(firstDayBox(), nullptr);
    const std::string name = firstDayBox()->accessibleName().toStdString();
    const int day = firstDayBox()->currentIndex();
    stepOn(firstDayBox(), day == 0 ? Qt::Key_Down : Qt::Key_Up);
    const int chosen = day == 0 ? 1 : day - 1;
    ASSERT_NE(box(name.c_str()), nullptr);
    EXPECT_EQ(box(name.c_str())->currentIndex(), chosen);
    const auto wished = draft().slots;
    EXPECT_TRUE(std::any_of(wished.begin(), wished.end(), [chosen](const planning::WeekSlot& slot) { return slot.weekday == chosen; }));
    startByKeys();
    int onThatDay = 0;
    for (int ahead = 0; ahead < planning::kPlanDays + 7; ++ahead) {
        const base::Date date = m_clock.today() + ahead;
        const auto sessions = store::SessionReader(m_studio.database()).on(date).value();
        const bool isWished = (date.daysSince1970() + 3) % 7 == chosen;  // 1 January 1970 was a Thursday
        for (const store::NamedSession& one : sessions) {
            onThatDay += one.session.client == m_cleo && isWished ? 1 : 0;
        }
    }
    EXPECT_EQ(onThatDay, 2) << "one in each of the two weeks";
}

TEST_F(PlanStepTest, IsTakenBackWhileNothingWasDone)
{
    openPlan();
    EXPECT_EQ(button("Take the plan back"), nullptr) << "there is none yet";
    startByKeys();
    ASSERT_NE(button("Take the plan back"), nullptr);
    button("Take the plan back")->click();
    EXPECT_TRUE(file().lifts.empty());
    EXPECT_EQ(bookedSessions(), 0);
    EXPECT_EQ(button("Take the plan back"), nullptr);
    startByKeys();
    EXPECT_FALSE(file().lifts.empty()) << "it can begin again";
}

TEST_F(PlanStepTest, IsNotTakenBackOnceSomethingWasDone)
{
    openPlan();
    startByKeys();
    ASSERT_NE(button("Take the plan back"), nullptr);
    const base::LiftId squat = test::liftOf(m_studio.database(), m_cleo, Pattern::Squat);
    const auto begun = file();
    const double load = find(begun, Pattern::Squat)->lift.machine.prescriptionOn(m_clock.today()).load.centi() / 100.0;
    store::RecordWriter writer(m_studio.database(), test::someMoment);
    const auto recorded = writer.record(m_cleo, begun.next.session->id, {{squat, {m_clock.today(), test::exposureOf({{load, 8, 4}})}}});
    ASSERT_TRUE(recorded) << recorded.error().message.toStdString();
    m_page->refresh();
    EXPECT_EQ(button("Take the plan back"), nullptr);
    EXPECT_NE(button("Open the board"), nullptr);
}

TEST_F(PlanStepTest, BeforeClearanceNothingBeginsWithLoad)
{
    clients::HealthIntake grave;
    grave.answerTo(clients::HealthQuestion::ChestPain).isYes = true;
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).saveIntake(m_cleo, grave, {}, "chest pain", m_clock.today()));
    openPlan();
    EXPECT_EQ(box("First load for Squat"), nullptr);
    startByKeys();
    for (const store::ClientLift& one : file().lifts) {
        EXPECT_EQ(one.lift.machine.prescriptionOn(m_clock.today()).kind, progression::PrescriptionKind::Rehearse);
    }
}

}  // namespace chalk::ui::onboarding
