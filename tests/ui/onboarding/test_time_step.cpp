#include "ui/onboarding/time_step.h"

#include "tests/ui/onboarding/onboarding_fixture.h"
#include "ui/common/hours_grid.h"

#include <QAbstractButton>
#include <QTest>

namespace chalk::ui::onboarding {

class TimeStepTest : public test::OnboardingTest {
protected:
    void click(const char* text)
    {
        for (QAbstractButton* one : m_page->findChildren<QAbstractButton*>()) {
            if (one->isVisible() && one->text() == QLatin1String(text)) {
                one->click();
                return;
            }
        }
        throw std::runtime_error(std::string("no button ") + text);
    }
    void weeklySessions(base::ClientId id, int sessions)
    {
        clients::Client client = clientOf(id);
        client.sessionsPerWeek = sessions;
        ASSERT_TRUE(store::ClientWriter(m_studio.database()).change(client, m_clock.today()));
    }
};

TEST_F(TimeStepTest, WhatIsPaintedByKeyIsKeptAtOnce)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "time");
    EXPECT_TRUE(says("Nothing painted yet."));
    ASSERT_TRUE(m_page->findChild<common::HoursGrid*>()->hasFocus());
    press(Qt::Key_Down, Qt::ShiftModifier);
    press(Qt::Key_F);
    EXPECT_EQ(profileOf(cleo).free.stretches(), (std::vector<clients::DayHours>{{0, 540, 600}}));
    EXPECT_TRUE(says("One day with room for 60 minutes."));
    press(Qt::Key_Delete);
    EXPECT_TRUE(profileOf(cleo).free.isEmpty());
}

TEST_F(TimeStepTest, SaysWhetherTheSessionsOfAWeekFit)
{
    const base::ClientId cleo = addCleo();
    weeklySessions(cleo, 2);
    open(cleo, "time");
    press(Qt::Key_Down, Qt::ShiftModifier);
    press(Qt::Key_F);
    EXPECT_TRUE(says("Of 2 sessions a week only 1 fit."));
    click("Evenings");
    EXPECT_TRUE(says("5 days with room for 60 minutes."));
    EXPECT_TRUE(says("The sessions of a week fit:"));
    EXPECT_FALSE(says("closer than 48 hours"));
    click("None");
    EXPECT_TRUE(profileOf(cleo).free.isEmpty());
}

TEST_F(TimeStepTest, KitAtHomeIsKeptAndComesBack)
{
    const base::ClientId cleo = addCleo();
    open(cleo, "time");
    click("Kettlebell");
    EXPECT_EQ(profileOf(cleo).homeKit, std::vector{lifts::EquipmentKind::Kettlebell});
    open(cleo, "profile");
    open(cleo, "time");
    click("Kettlebell");
    EXPECT_TRUE(profileOf(cleo).homeKit.empty());
}

}  // namespace chalk::ui::onboarding
