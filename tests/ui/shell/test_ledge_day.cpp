#include "ui/shell/ledge_day.h"

#include <gtest/gtest.h>

namespace chalk::ui::shell {

namespace {

LedgeSession sessionAt(int id, int hour, int minute, const char* coach, const char* client, bool isRecorded = false)
{
    return {base::SessionId(id), hour * 60 + minute, 60, QLatin1String(coach), QLatin1String(client), isRecorded};
}

std::vector<LedgeSession> harbourDay()
{
    return {sessionAt(1, 7, 0, "Ines", "Lars Pemberley", true), sessionAt(2, 9, 0, "Ines", "Joaquin Ferro"),
            sessionAt(3, 9, 0, "Ines", "Adaeze Quill"), sessionAt(4, 10, 30, "Tobias", "Dmitri Oake")};
}

std::vector<BarState> statesOf(const LedgeDay& day)
{
    std::vector<BarState> states;
    for (const LedgeBar& bar : day.bars) {
        states.push_back(bar.state);
    }
    return states;
}

}  // namespace

TEST(LedgeDay, OneBarPerSlotAndOneRowPerCoach)
{
    const LedgeDay day = ledgeDayOf(harbourDay(), 8 * 60 + 42);
    ASSERT_EQ(day.bars.size(), 3U);
    EXPECT_EQ(day.rows, 2);
    EXPECT_EQ(day.bars[1].clients, (QStringList{QStringLiteral("Ferro"), QStringLiteral("Quill")}));
    EXPECT_EQ(day.bars[1].row, 0);
    EXPECT_EQ(day.bars[2].row, 1);
    EXPECT_EQ(statesOf(day), (std::vector<BarState>{BarState::Over, BarState::Present, BarState::Ahead}));
}

TEST(LedgeDay, SaysWhatIsNextNowAndOver)
{
    EXPECT_EQ(ledgeDayOf(harbourDay(), 8 * 60 + 42).sentence.toStdString(), "Next <b>09:00</b> Ines: Ferro, Quill · in 18 min");
    EXPECT_EQ(ledgeDayOf(harbourDay(), 9 * 60).sentence.toStdString(), "Now <b>09:00</b> Ines: Ferro, Quill · until 10:00");
    EXPECT_EQ(ledgeDayOf(harbourDay(), 6 * 60 + 55).sentence.toStdString(), "Next <b>09:00</b> Ines: Ferro, Quill · in 2 h 05 min");
    EXPECT_EQ(ledgeDayOf(harbourDay(), 10 * 60).sentence.toStdString(), "Next <b>10:30</b> Tobias: Oake · in 30 min");
    EXPECT_EQ(ledgeDayOf(harbourDay(), 20 * 60).sentence.toStdString(), "No more sessions today");
    EXPECT_EQ(ledgeDayOf({}, 600).sentence.toStdString(), "No sessions today");
    EXPECT_FALSE(ledgeDayOf(harbourDay(), 20 * 60).hasPresent);
}

TEST(LedgeDay, AClickOpensTheFirstThatIsNotRecorded)
{
    std::vector<LedgeSession> sessions = harbourDay();
    EXPECT_EQ(ledgeDayOf(sessions, 540).bars[1].first, base::SessionId(2));
    sessions[1].isRecorded = true;
    EXPECT_EQ(ledgeDayOf(sessions, 540).bars[1].first, base::SessionId(3));
    EXPECT_EQ(ledgeDayOf(sessions, 540).bars[1].state, BarState::Present);
    sessions[2].isRecorded = true;
    EXPECT_EQ(ledgeDayOf(sessions, 540).bars[1].state, BarState::Over);
}

TEST(LedgeDay, TheLineSpansEarlyAndLateSessions)
{
    const LedgeDay usual = ledgeDayOf(harbourDay(), 540);
    EXPECT_EQ(usual.firstHour, 7);
    EXPECT_EQ(usual.lastHour, 20);
    const std::vector<LedgeSession> wide{sessionAt(1, 5, 30, "Ines", "A B"), sessionAt(2, 23, 30, "Ines", "C D")};
    EXPECT_EQ(ledgeDayOf(wide, 540).firstHour, 5);
    EXPECT_EQ(ledgeDayOf(wide, 540).lastHour, 24);
}

TEST(LedgeDay, NamesStayText)
{
    const std::vector<LedgeSession> sessions{sessionAt(1, 9, 0, "Ines <b>", "Bo <i>")};
    EXPECT_TRUE(ledgeDayOf(sessions, 480).sentence.contains(QStringLiteral("Ines &lt;b&gt;: &lt;i&gt;")));
}

TEST(LedgeDay, LeavesOutWhatDoesNotTakePlace)
{
    std::vector<store::NamedSession> named;
    for (const sessions::SessionState state :
         {sessions::SessionState::Planned, sessions::SessionState::Printed, sessions::SessionState::Recorded,
          sessions::SessionState::Missed, sessions::SessionState::CancelledInTime, sessions::SessionState::CancelledLate}) {
        store::NamedSession session;
        session.session.state = state;
        session.clientName = "Ana Berg";
        session.coachName = "Ines";
        named.push_back(session);
    }
    const std::vector<LedgeSession> shown = ledgeSessionsOf(named);
    ASSERT_EQ(shown.size(), 3U);
    EXPECT_FALSE(shown[1].isRecorded);
    EXPECT_TRUE(shown[2].isRecorded);
}

}  // namespace chalk::ui::shell
