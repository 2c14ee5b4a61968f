#include "core/store/roster_reader.h"

#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

using sessions::SessionState;

std::vector<RosterEntry> rosterOf(test::StudioOnTest& studio, base::Date today = test::smallStudioDay())
{
    return RosterReader(studio.database()).read(today).value();
}

}  // namespace

TEST(RosterReader, ShowsEverybodyByName)
{
    test::StudioOnTest studio;
    const auto roster = rosterOf(studio);
    ASSERT_EQ(roster.size(), 2U);
    EXPECT_EQ(roster[0].client.name, "Ada Lund");
    EXPECT_EQ(roster[0].coachName, "Ines");
    ASSERT_EQ(roster[0].cautions.size(), 1U) << "the one that is over is left out";
    EXPECT_EQ(roster[0].cautions[0].bodyPart, "Lower back");
    EXPECT_FALSE(clients::isBlocked(roster[0].clearance, test::smallStudioDay()));
    EXPECT_TRUE(clients::isBlocked(roster[1].clearance, test::smallStudioDay()));
    EXPECT_TRUE(roster[1].lifts.empty());
    EXPECT_FALSE(roster[1].next);
    EXPECT_FALSE(roster[1].lastSession);
}

TEST(RosterReader, ShowsWhereEachLiftStands)
{
    test::StudioOnTest studio;
    const auto lifts = rosterOf(studio)[0].lifts;
    ASSERT_EQ(lifts.size(), 3U);
    EXPECT_EQ(lifts[0].pattern, lifts::Pattern::Squat);
    EXPECT_EQ(lifts[0].stage, progression::Stage::LoadBuild);
    EXPECT_EQ(lifts[0].stageSince, test::smallStudioDay() - 35);
    EXPECT_EQ(lifts[0].lastWork, test::smallStudioDay() - 7);
    EXPECT_EQ(lifts[0].firstWork, test::smallStudioDay() - 35);
    EXPECT_FALSE(lifts[0].isOnHold);
    EXPECT_TRUE(lifts[1].isOnHold);
    EXPECT_EQ(lifts[1].heldSince, test::smallStudioDay() - 14);
    EXPECT_EQ(lifts[1].holdPain, 5);
    EXPECT_EQ(lifts[2].exerciseKey, "dumbbell_bench_press");
}

TEST(RosterReader, ShowsMissesAndFlags)
{
    test::StudioOnTest studio;
    RecordWriter writer(studio.database(), test::someMoment);
    const base::LiftId squat = test::liftOf(studio.database(), base::ClientId(1), lifts::Pattern::Squat);
    ASSERT_TRUE(writer.record(base::ClientId(1), {}, {{squat, {test::smallStudioDay(), test::exposureOf({{50, 3, 2}, {50, 3, 2}})}}}));
    EXPECT_EQ(rosterOf(studio)[0].lifts[0].misses, 1);
    ASSERT_TRUE(writer.record(base::ClientId(1), {}, {{squat, {test::smallStudioDay() + 60, test::exposureOf({{50, 3, 2}, {50, 3, 2}})}}}));
    EXPECT_TRUE(rosterOf(studio)[0].lifts[0].flags.has(progression::Flag::Rescreen));
}

TEST(RosterReader, ShowsSessionsAndVolumes)
{
    test::StudioOnTest studio;
    const RosterEntry ada = rosterOf(studio)[0];
    ASSERT_TRUE(ada.next);
    EXPECT_EQ(ada.next->startMinute, 540);
    EXPECT_EQ(ada.nextTaken, 1);
    EXPECT_EQ(ada.lastSessions, (std::vector{SessionState::Recorded, SessionState::Missed, SessionState::Recorded}));
    EXPECT_EQ(ada.lastSession, test::smallStudioDay() - 7);
    // The week of 16 November: 45 kg × (8 + 7); the one of 9 November: 60 kg × 16 of the hinge.
    EXPECT_DOUBLE_EQ(ada.weekVolumes[7], 675);
    EXPECT_DOUBLE_EQ(ada.weekVolumes[6], 960);
    EXPECT_DOUBLE_EQ(ada.weekVolumes[8], 0);
}

TEST(RosterReader, TheNextSessionIsPlannedOrPrintedAndNotOver)
{
    test::StudioOnTest studio;
    RecordWriter writer(studio.database(), test::someMoment);
    const auto session = rosterOf(studio)[0].next->id;
    ASSERT_TRUE(writer.setSessionState(session, SessionState::Printed));
    EXPECT_TRUE(rosterOf(studio)[0].next);
    EXPECT_FALSE(rosterOf(studio, test::smallStudioDay() + 1)[0].next);
    EXPECT_EQ(rosterOf(studio, test::smallStudioDay() + 1)[0].lastSessions.size(), 3U) << "nobody has said what became of the last one";
    ASSERT_TRUE(writer.setSessionState(session, SessionState::CancelledInTime));
    EXPECT_FALSE(rosterOf(studio)[0].next);
    EXPECT_EQ(rosterOf(studio)[0].lastSessions.back(), SessionState::CancelledInTime);
}

TEST(RosterReader, AtMostTwelveSessionsOldestFirst)
{
    exchange::StudioDocument document = test::smallStudio();
    std::vector<sessions::Session>& sessions = document.clients[0].sessions;
    sessions::Session session = sessions.front();
    sessions.clear();
    for (int i = 0; i < 20; ++i) {
        session.date = test::smallStudioDay() - 100 + i;
        session.code = "X" + std::to_string(i);
        session.state = i == 19 ? SessionState::Missed : SessionState::Recorded;
        sessions.push_back(session);
    }
    for (exchange::DocumentLift& lift : document.clients[0].lifts) {
        for (exchange::DocumentEvent& event : lift.events) {
            event.sessionCode.reset();
        }
    }
    test::StudioOnTest studio(document);
    const RosterEntry ada = rosterOf(studio)[0];
    ASSERT_EQ(ada.lastSessions.size(), 12U);
    EXPECT_EQ(ada.lastSessions.back(), SessionState::Missed);
    EXPECT_EQ(ada.lastSession, test::smallStudioDay() - 82);
}

}  // namespace chalk::store
