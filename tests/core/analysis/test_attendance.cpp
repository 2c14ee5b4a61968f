#include "core/analysis/attendance.h"

#include <gtest/gtest.h>

#include <vector>

namespace chalk::test {

namespace {

using analysis::Attendance;
using analysis::attendanceOf;
using sessions::SessionState;

constexpr base::Date kFirstSession = base::Date::fromDays(20'000);

std::vector<sessions::Session> oneADay(const std::vector<SessionState>& states)
{
    std::vector<sessions::Session> sessions;
    for (const SessionState state : states) {
        sessions::Session session;
        session.date = kFirstSession + static_cast<int>(sessions.size());
        session.state = state;
        sessions.push_back(session);
    }
    return sessions;
}

}  // namespace

TEST(Attendance, CountsWhatIsOver)
{
    const auto sessions = oneADay({SessionState::Recorded, SessionState::Missed, SessionState::Recorded, SessionState::CancelledLate,
                                   SessionState::CancelledInTime, SessionState::Withdrawn, SessionState::Recorded, SessionState::Printed,
                                   SessionState::Planned});
    const Attendance all = attendanceOf(sessions, kFirstSession, kFirstSession + 100);
    EXPECT_EQ(all, (Attendance{3, 1, 1, 1}));
    EXPECT_EQ(all.counted(), 5);
    EXPECT_EQ(all.share(), 0.6);
}

TEST(Attendance, BothDaysOfTheSpanAreIn)
{
    const auto sessions = oneADay(std::vector<SessionState>(5, SessionState::Recorded));
    EXPECT_EQ(attendanceOf(sessions, kFirstSession + 1, kFirstSession + 3).came, 3);
    EXPECT_EQ(attendanceOf(sessions, kFirstSession + 3, kFirstSession + 1), Attendance());
}

TEST(Attendance, HasNoShareWhereNothingCounts)
{
    const auto sessions = oneADay({SessionState::CancelledInTime, SessionState::Planned});
    EXPECT_FALSE(attendanceOf(sessions, kFirstSession, kFirstSession + 9).share().has_value());
    EXPECT_EQ(attendanceOf(sessions, kFirstSession, kFirstSession + 9).cancelledInTime, 1);
}

TEST(Attendance, OfEveryStateTheTwoCountsAgree)
{
    for (const SessionState state : sessions::kSessionStates) {
        const Attendance one = attendanceOf(oneADay({state}), kFirstSession, kFirstSession);
        const auto came = analysis::wasComeTo(state);
        EXPECT_EQ(one.counted() == 1, came.has_value()) << keyOf(state);
        EXPECT_EQ(one.came == 1, came.value_or(false)) << keyOf(state);
    }
}

}  // namespace chalk::test
