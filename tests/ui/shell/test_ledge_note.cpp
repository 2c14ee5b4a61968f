#include "tests/support/fake_clock.h"
#include "ui/common/look.h"
#include "ui/shell/ledge_note.h"

#include <QAbstractButton>

#include <gtest/gtest.h>

namespace chalk::ui::shell {

class LedgeNoteTest : public ::testing::Test {
protected:
    LedgeNoteTest()
        : m_acts(m_clock,
                 [this](base::ActId act) -> tl::expected<base::ActId, QString> {
                     if (m_isRefused) {
                         return tl::unexpected(QStringLiteral("A later result builds on it."));
                     }
                     return act;
                 }),
          m_note(m_look, m_acts)
    {
        m_note.setMinute(m_clock.minuteOfDay());
        m_note.show();
    }

    void wait(int minutes)
    {
        m_clock.setMinute((m_clock.minuteOfDay() + minutes) % 1440);
        m_note.setMinute(m_clock.minuteOfDay());
    }

    tests::FakeClock m_clock;
    bool m_isRefused = false;
    common::Look m_look;
    common::ActHistory m_acts;
    LedgeNote m_note;
};

TEST_F(LedgeNoteTest, OffersUndoForTenMinutesThenSaysWhenItWasSaved)
{
    EXPECT_TRUE(m_note.words().isEmpty());
    m_acts.add(base::ActId(1), QStringLiteral("Squat held at <b>77.5 kg</b> for Joaquin"));
    EXPECT_EQ(m_note.words().toStdString(), "Squat held at 77.5 kg for Joaquin");
    EXPECT_TRUE(m_note.button()->isVisible());
    wait(9);
    EXPECT_TRUE(m_note.button()->isVisible());
    wait(1);
    EXPECT_FALSE(m_note.button()->isVisible());
    EXPECT_EQ(m_note.words().toStdString(), "Saved 08:42");
}

TEST_F(LedgeNoteTest, TheTenMinutesGoOnPastMidnight)
{
    m_clock.setMinute(1438);
    m_note.setMinute(1438);
    m_acts.add(base::ActId(1), QStringLiteral("Recorded"));
    wait(5);
    EXPECT_TRUE(m_note.button()->isVisible());
    wait(5);
    EXPECT_FALSE(m_note.button()->isVisible());
}

TEST_F(LedgeNoteTest, ItsButtonTakesBackAndDoesAgain)
{
    m_acts.add(base::ActId(1), QStringLiteral("Recorded"));
    m_note.button()->click();
    EXPECT_EQ(m_note.words().toStdString(), "Taken back: Recorded");
    EXPECT_FALSE(m_acts.lastDone());
    EXPECT_TRUE(m_note.button()->accessibleName().startsWith(QStringLiteral("Do again")));
    m_note.button()->click();
    EXPECT_EQ(m_note.words().toStdString(), "Recorded");
    EXPECT_TRUE(m_acts.lastDone());
}

TEST_F(LedgeNoteTest, SaysWhyAnUndoCouldNotBeDone)
{
    m_acts.add(base::ActId(1), QStringLiteral("Recorded"));
    m_isRefused = true;
    m_note.button()->click();
    EXPECT_EQ(m_note.words().toStdString(), "A later result builds on it.");
    EXPECT_FALSE(m_note.button()->isVisible());
    wait(1);
    EXPECT_EQ(m_note.words().toStdString(), "A later result builds on it.");
    m_acts.add(base::ActId(2), QStringLiteral("Printed"));
    EXPECT_EQ(m_note.words().toStdString(), "Printed");
}

TEST_F(LedgeNoteTest, NewsStandsForTwoMinutesOrUntilSomethingIsDone)
{
    m_acts.add(base::ActId(1), QStringLiteral("Recorded"));
    m_note.sayNews(QStringLiteral("Ada’s rest is over: <squat>"));
    EXPECT_EQ(m_note.words(), QStringLiteral("Ada’s rest is over: <squat>"));
    EXPECT_FALSE(m_note.button()->isVisible());
    wait(1);
    EXPECT_TRUE(m_note.words().startsWith(QStringLiteral("Ada’s rest")));
    wait(1);
    EXPECT_EQ(m_note.words(), QStringLiteral("Recorded"));
    EXPECT_TRUE(m_note.button()->isVisible());
    m_note.sayNews(QStringLiteral("Bo’s rest is over"));
    m_acts.add(base::ActId(2), QStringLiteral("Corrected"));
    EXPECT_EQ(m_note.words(), QStringLiteral("Corrected"));
}

}  // namespace chalk::ui::shell
