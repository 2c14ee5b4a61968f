#include "core/store/record_writer.h"

#include "core/store/client_reader.h"
#include "core/store/history_reader.h"
#include "core/store/roster_reader.h"
#include "core/store/session_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

using test::exposureOf;
using test::kilos;

class RecordWriterTest : public ::testing::Test {
protected:
    ClientFile ada()
    {
        const auto names = ClientReader(m_studio.database()).names().value();
        return ClientReader(m_studio.database()).read(names.front().first, test::smallStudioDay()).value();
    }
    const CachedLift& squat()
    {
        m_file = ada();
        return m_file.lifts.front().lift;
    }
    std::vector<HistoryEntry> squatHistory() { return HistoryReader(m_studio.database()).read(squat().id).value(); }
    sessions::Session today() { return SessionReader(m_studio.database()).on(test::smallStudioDay()).value().front().session; }
    ActOutcome recordToday(const progression::EventBody& body)
    {
        return m_writer.record(squat().client, today().id, {{squat().id, {test::smallStudioDay(), body}}}).value();
    }
    /// The cached states are what a full replay of the log gives.
    void expectCacheAsReplayed()
    {
        const ClientFile before = ada();
        Transaction transaction(m_studio.database());
        EventLog log(m_studio.database());
        LiftCache(m_studio.database(), log).rebuildAll();
        ASSERT_TRUE(transaction.commit());
        const ClientFile after = ada();
        for (std::size_t i = 0; i < before.lifts.size(); ++i) {
            EXPECT_EQ(before.lifts[i].lift.machine.state(), after.lifts[i].lift.machine.state());
            EXPECT_EQ(before.lifts[i].lift.decided, after.lifts[i].lift.decided);
            EXPECT_EQ(before.lifts[i].reached.size(), after.lifts[i].reached.size());
        }
    }

    test::StudioOnTest m_studio;
    RecordWriter m_writer{m_studio.database(), test::someMoment};
    ClientFile m_file;
};

TEST_F(RecordWriterTest, RecordsAndSaysWhatFollows)
{
    ASSERT_EQ(squat().machine.state().stage, progression::Stage::LoadBuild);
    const ActOutcome outcome = recordToday(exposureOf({{45, 5, 2}, {45, 6, 2}}));
    ASSERT_EQ(outcome.lifts.size(), 1U);
    EXPECT_EQ(test::namesOf(outcome.lifts[0].rules), "L-2");
    EXPECT_EQ(outcome.lifts[0].after.stage, progression::Stage::RepBuild);
    EXPECT_EQ(squat().machine.state().stage, progression::Stage::RepBuild);
    EXPECT_EQ(today().state, sessions::SessionState::Recorded);
    expectCacheAsReplayed();
}

TEST_F(RecordWriterTest, UndoAppendsAndRedoToo)
{
    const auto before = squat().machine.state();
    const auto entries = squatHistory().size();
    const ActOutcome recorded = recordToday(exposureOf({{45, 5, 2}, {45, 6, 2}}));
    const auto after = squat().machine.state();
    const auto undone = m_writer.undo(recorded.act);
    ASSERT_TRUE(undone) << undone.error().message.toStdString();
    EXPECT_EQ(squat().machine.state(), before);
    EXPECT_EQ(squatHistory().size(), entries);
    EXPECT_EQ(today().state, sessions::SessionState::Planned);
    EXPECT_FALSE(m_writer.undo(recorded.act)) << "undone already";
    const auto redone = m_writer.undo(undone->act);
    ASSERT_TRUE(redone) << redone.error().message.toStdString();
    EXPECT_EQ(squat().machine.state(), after);
    EXPECT_EQ(today().state, sessions::SessionState::Recorded);
    EXPECT_EQ(HistoryReader(m_studio.database()).versions(squatHistory().back().id).value().size(), 3U) << "every version stays readable";
    expectCacheAsReplayed();
}

TEST_F(RecordWriterTest, ACorrectionKeepsItsPlaceAndSaysWhatItChanged)
{
    const auto history = squatHistory();
    const HistoryEntry& early = history[2];
    ASSERT_EQ(test::namesOf(early.rules), "L-1");
    const auto outcome = m_writer.correct(early.id, {early.event.date, exposureOf({{35, 4, 2}, {35, 4, 2}})});
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    EXPECT_EQ(test::namesOf(outcome->lifts[0].rules), "L-3");
    const auto corrected = squatHistory();
    ASSERT_EQ(corrected.size(), history.size());
    EXPECT_TRUE(corrected[2].isCorrected);
    EXPECT_EQ(HistoryReader(m_studio.database()).versions(corrected[2].id).value().size(), 2U);
    EXPECT_FALSE(m_writer.correct(early.id, {early.event.date, early.event.body})) << "not the last version any more";
    expectCacheAsReplayed();
    ASSERT_TRUE(m_writer.undo(outcome->act));
    EXPECT_EQ(squatHistory()[2].event, early.event);
    expectCacheAsReplayed();
}

TEST_F(RecordWriterTest, WhatIsTakenBackDoesNotCount)
{
    const auto history = squatHistory();
    ASSERT_TRUE(m_writer.takeBack(history.back().id));
    EXPECT_EQ(squatHistory().size(), history.size() - 1);
    expectCacheAsReplayed();
}

TEST_F(RecordWriterTest, ALateEntryReplaysTheHistory)
{
    const base::Date day = test::smallStudioDay() - 24;
    const auto outcome = m_writer.record(squat().client, {}, {{squat().id, {day, exposureOf({{40, 8, 2}, {40, 8, 2}})}}});
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    EXPECT_EQ(squatHistory()[3].event.date, day);
    expectCacheAsReplayed();
}

TEST_F(RecordWriterTest, RefusesWhatMakesNoSenseAndChangesNothing)
{
    progression::CoachSet set;
    set.reason = "because";
    set.stage = progression::Stage::RepBuild;
    set.load = kilos(61);
    const auto before = squatHistory().size();
    const auto refused = m_writer.record(squat().client, {}, {{squat().id, {test::smallStudioDay(), set}}});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, StoreError::Kind::Refused);
    EXPECT_TRUE(refused.error().message.contains(QLatin1String("load")));
    EXPECT_EQ(squatHistory().size(), before);
    EXPECT_FALSE(m_writer.record(base::ClientId(99), {}, {{squat().id, {test::smallStudioDay(), exposureOf({})}}}));
    EXPECT_FALSE(m_writer.record(squat().client, base::SessionId(999), {{squat().id, {test::smallStudioDay(), exposureOf({{45, 5}})}}}));
    EXPECT_EQ(squatHistory().size(), before);
}

TEST_F(RecordWriterTest, SessionsAreMarkedAndUndone)
{
    const auto outcome = m_writer.setSessionState(today().id, sessions::SessionState::CancelledLate);
    ASSERT_TRUE(outcome);
    EXPECT_EQ(today().state, sessions::SessionState::CancelledLate);
    ASSERT_TRUE(m_writer.undo(outcome->act));
    EXPECT_EQ(today().state, sessions::SessionState::Planned);
}

TEST_F(RecordWriterTest, TheLogIsAppendOnly)
{
    ASSERT_TRUE(m_writer.setSessionState(today().id, sessions::SessionState::Missed));
    for (const char* sql : {"UPDATE event SET pain = 1", "DELETE FROM event", "UPDATE event_set SET amount = 1", "DELETE FROM event_set",
                            "UPDATE act SET kind = 'x'", "DELETE FROM act", "UPDATE session_change SET state_after = 'x'", "DELETE FROM session_change"}) {
        const Transaction transaction(m_studio.database());
        Statement statement(m_studio.database(), QLatin1String(sql));
        EXPECT_FALSE(statement.run()) << sql;
        EXPECT_TRUE(m_studio.database().failure()->message.contains(QLatin1String("append-only"))) << sql;
    }
}

TEST_F(RecordWriterTest, TheRosterShowsEverybody)
{
    const auto entries = RosterReader(m_studio.database()).read(test::smallStudioDay()).value();
    ASSERT_EQ(entries.size(), 2U);
    const RosterEntry& first = entries[0];
    EXPECT_EQ(first.client.name, "Ada Lund");
    EXPECT_EQ(first.coachName, "Ines");
    EXPECT_EQ(first.cautions.size(), 1U) << "the one that is over is left out";
    ASSERT_EQ(first.lifts.size(), 3U);
    EXPECT_EQ(first.lifts[0].pattern, lifts::Pattern::Squat);
    EXPECT_EQ(first.lifts[0].stage, progression::Stage::LoadBuild);
    EXPECT_EQ(first.lifts[0].stageSince, test::smallStudioDay() - 35);
    EXPECT_TRUE(first.lifts[1].isOnHold);
    EXPECT_EQ(first.lifts[2].exerciseKey, "dumbbell_bench_press");
    ASSERT_TRUE(first.next);
    EXPECT_EQ(first.next->startMinute, 540);
    EXPECT_EQ(first.nextTaken, 1);
    EXPECT_EQ(first.lastSessions, (std::vector{sessions::SessionState::Recorded, sessions::SessionState::Missed, sessions::SessionState::Recorded}));
    EXPECT_EQ(first.lastSession, test::smallStudioDay() - 7);
    // The week of 17 November: 45 kg × (8 + 7); the one of 10 November: 60 × 16 of the hinge.
    EXPECT_DOUBLE_EQ(first.weekVolumes[7], 675);
    EXPECT_DOUBLE_EQ(first.weekVolumes[6], 960);
    EXPECT_DOUBLE_EQ(first.weekVolumes[8], 0);
    EXPECT_TRUE(clients::isBlocked(entries[1].clearance, test::smallStudioDay()));
}

}  // namespace chalk::store
