#include "tests/support/fake_clock.h"
#include "ui/common/look.h"
#include "ui/shell/ledge.h"
#include "ui/shell/ledge_note.h"

#include <QAbstractButton>
#include <QLabel>
#include <QTest>

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

TEST_F(LedgeNoteTest, InANarrowWindowTheWordsGiveWayAndTheButtonIsWhole)
{
    Ledge ledge(m_look, m_acts);
    ledge.setNarrow(true);
    ledge.resize(1280, ledge.height());
    ledge.show();
    LedgeDay day;
    day.nowMinute = m_clock.minuteOfDay();
    day.hasPresent = true;
    day.sentence = QStringLiteral("Next <b>09:00</b> Ines: Ferro, Quill, Strand, Lindqvist, Okonkwo, Abernathy · in 18 min");
    ledge.setDay(day);
    const QString words = QStringLiteral("Incline dumbbell bench press corrected for Maximilian-Alexander Featherstonehaugh");
    m_acts.add(base::ActId(1), words);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&ledge));
    const auto isWhole = [&ledge](const QWidget& part, int wanted) {
        const QRect shown(part.mapTo(&ledge, QPoint(0, 0)), part.size());
        return ledge.rect().contains(shown) && part.width() >= wanted;
    };
    QCoreApplication::processEvents();
    const QAbstractButton& button = *ledge.note()->button();
    EXPECT_TRUE(isWhole(button, button.sizeHint().width())) << button.width();
    for (const QLabel* label : ledge.findChildren<QLabel*>(QStringLiteral("ledgeText"))) {
        EXPECT_TRUE(isWhole(*label, label->sizeHint().width())) << label->text().toStdString() << " in " << label->width();
    }
    const QLabel* said = ledge.note()->findChild<QLabel*>(QStringLiteral("ledgeText"));
    EXPECT_TRUE(said->text().contains(QChar(0x2026)));
    EXPECT_EQ(said->toolTip(), words);
    EXPECT_EQ(said->accessibleName(), words);
    m_acts.add(base::ActId(2), QStringLiteral("Recorded"));
    EXPECT_EQ(said->text(), QStringLiteral("Recorded"));
}

}  // namespace chalk::ui::shell
