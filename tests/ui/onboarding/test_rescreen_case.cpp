#include "ui/onboarding/rescreen_case.h"

#include "core/exchange/movement_screen_json.h"
#include "tests/ui/onboarding/movement_fixture.h"

namespace chalk::ui::onboarding {

using progression::RescreenReason;

class RescreenCaseTest : public test::MovementTest {
protected:
    RescreenCase read()
    {
        const auto shown = store::ClientForms(m_studio.database()).movementScreen(m_client).value();
        return readRescreenCase(m_studio.database(), store::ClientReader(m_studio.database()).read(m_client, m_today).value(), shown, m_today).value();
    }
};

TEST_F(RescreenCaseTest, NothingIsSaidBeforeTheFirstScreen)
{
    EXPECT_FALSE(read().before);
    EXPECT_FALSE(read().due);
}

TEST_F(RescreenCaseTest, DueWhenEightWeeksAreOverAndNotBefore)
{
    keepFinished(m_today - 55, screens::Mark::Met);
    EXPECT_FALSE(read().due);
    EXPECT_FALSE(read().before) << "the screen on show is not the one before";
    m_today = m_today + 1;
    ASSERT_TRUE(read().due);
    EXPECT_EQ(read().due->reason, RescreenReason::EightWeeks);
}

TEST_F(RescreenCaseTest, TheFinishedScreenBeforeTheOpenOneIsTheOneToCompare)
{
    keepFinished(m_today - 120, screens::Mark::NotMet);
    keepFinished(m_today - 60, screens::Mark::Partly);
    EXPECT_EQ(read().before->date, m_today - 120);
    ASSERT_TRUE(store::ClientWriter(m_studio.database()).saveForm(m_client, store::FormKind::MovementScreen, exchange::toJson(m_screens.blankScreen(m_today)), m_today));
    EXPECT_EQ(read().before->date, m_today - 60);
}

}  // namespace chalk::ui::onboarding
