#include "core/store/record_writer.h"

#include "core/store/client_reader.h"
#include "core/store/history_reader.h"
#include "core/store/session_reader.h"
#include "core/store/statement.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <limits>

namespace chalk::store {

using progression::Stage;
using test::exposureOf;
using test::kilos;

/// Writes into the small studio, and reads what came of it.
class RecordWriterTest : public ::testing::Test {
protected:
    CachedLift lift(lifts::Pattern pattern)
    {
        const ClientFile file = ClientReader(m_studio.database()).read(m_ada, test::smallStudioDay()).value();
        for (const ClientLift& one : file.lifts) {
            if (one.lift.pattern == pattern) {
                return one.lift;
            }
        }
        throw std::runtime_error("no such lift");
    }
    CachedLift squat() { return lift(lifts::Pattern::Squat); }
    std::vector<HistoryEntry> squatHistory() { return HistoryReader(m_studio.database()).read(m_squat).value(); }
    std::size_t versionsOf(base::EventId entry) { return HistoryReader(m_studio.database()).versions(entry).value().size(); }
    sessions::Session today() { return SessionReader(m_studio.database()).on(test::smallStudioDay()).value().front().session; }
    Result<ActOutcome> recordSquat(const progression::EventBody& body, int daysAgo = 0, base::SessionId session = {})
    {
        return m_writer.record(m_ada, session, {{m_squat, {test::smallStudioDay() - daysAgo, body}}});
    }
    ActOutcome recordToday(const progression::EventBody& body) { return recordSquat(body, 0, today().id).value(); }
    /// The message of a refusal that left everything as it was.
    std::string refusalOf(const std::function<Result<ActOutcome>()>& write)
    {
        const QStringList before = m_studio.rows(QStringLiteral("SELECT (SELECT count(*) FROM act), (SELECT count(*) FROM event), (SELECT count(*) FROM "
                                                                "event_set), (SELECT count(*) FROM session_change)")) +
                                   m_studio.cacheRows();
        const auto outcome = write();
        EXPECT_EQ(before, m_studio.rows(QStringLiteral("SELECT (SELECT count(*) FROM act), (SELECT count(*) FROM event), (SELECT count(*) FROM event_set), "
                                                       "(SELECT count(*) FROM session_change)")) +
                              m_studio.cacheRows());
        if (outcome) {
            return "it was not refused";
        }
        EXPECT_EQ(outcome.error().kind, StoreError::Kind::Refused);
        return outcome.error().message.toStdString();
    }
    void expectCachesAsRebuilt()
    {
        const QStringList before = m_studio.cacheRows();
        m_studio.rebuildCaches();
        EXPECT_EQ(before, m_studio.cacheRows());
    }

    test::StudioOnTest m_studio;
    RecordWriter m_writer{m_studio.database(), test::someMoment, base::CoachId(1)};
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
    base::LiftId m_squat = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat);
};

TEST_F(RecordWriterTest, RecordsAndSaysWhatFollows)
{
    ASSERT_EQ(squat().machine.state().stage, Stage::LoadBuild);
    const ActOutcome outcome = recordToday(exposureOf({{45, 5, 2}, {45, 6, 2}}));
    ASSERT_EQ(outcome.lifts.size(), 1U);
    EXPECT_EQ(test::namesOf(outcome.lifts[0].rules), "L-2");
    EXPECT_EQ(outcome.lifts[0].before.stage, Stage::LoadBuild);
    EXPECT_EQ(outcome.lifts[0].after.stage, Stage::RepBuild);
    EXPECT_EQ(outcome.lifts[0].stateAfter, squat().machine.state());
    EXPECT_TRUE(outcome.changed.empty());
    EXPECT_EQ(today().state, sessions::SessionState::Recorded);
    expectCachesAsRebuilt();
}

TEST_F(RecordWriterTest, SeveralLiftsAreOneAct)
{
    const base::LiftId press = lift(lifts::Pattern::HorizontalPush).id;
    const auto outcome = m_writer.record(m_ada, today().id,
                                         {{m_squat, {test::smallStudioDay(), exposureOf({{45, 8, 2}, {45, 8, 2}})}},
                                          {press, {test::smallStudioDay(), exposureOf({{8, 10, 4}, {8, 10, 4}})}}});
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    EXPECT_EQ(outcome->lifts.size(), 2U);
    EXPECT_EQ(SessionReader(m_studio.database()).entriesIn(today().id).value().size(), 2U);
    ASSERT_TRUE(m_writer.undo(outcome->act));
    EXPECT_TRUE(SessionReader(m_studio.database()).entriesIn(today().id).value().empty());
    expectCachesAsRebuilt();
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
    EXPECT_EQ(refusalOf([&] { return m_writer.undo(recorded.act); }), "There is nothing to take back");
    const auto redone = m_writer.undo(undone->act);
    ASSERT_TRUE(redone) << redone.error().message.toStdString();
    EXPECT_EQ(squat().machine.state(), after);
    EXPECT_EQ(today().state, sessions::SessionState::Recorded);
    EXPECT_EQ(versionsOf(squatHistory().back().id), 3U) << "every version stays readable";
    expectCachesAsRebuilt();
    ASSERT_TRUE(m_writer.undo(redone->act)) << "and back again";
    EXPECT_EQ(squat().machine.state(), before);
    expectCachesAsRebuilt();
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
    EXPECT_EQ(versionsOf(corrected[2].id), 2U);
    const auto again = m_writer.correct(early.id, {early.event.date, early.event.body});
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, StoreError::Kind::Conflict);
    EXPECT_EQ(again.error().message.toStdString(), "Ines changed this in the meantime: nothing was written");
    expectCachesAsRebuilt();
    ASSERT_TRUE(m_writer.undo(outcome->act));
    EXPECT_EQ(squatHistory()[2].event, early.event);
    expectCachesAsRebuilt();
}

TEST_F(RecordWriterTest, ACorrectionNamesTheDecisionsThatItMadeDifferent)
{
    // Hard at 35 already: the lift was in Rep build from then on, and the later exposures were judged there.
    const auto history = squatHistory();
    const auto outcome = m_writer.correct(history[2].id, {history[2].event.date, exposureOf({{35, 5, 2}, {35, 6, 2}})});
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    ASSERT_EQ(outcome->changed.size(), 2U);
    EXPECT_EQ(outcome->changed[0].date, history[3].event.date);
    EXPECT_EQ(test::namesOf(outcome->changed[0].before), "L-1");
    EXPECT_EQ(test::namesOf(outcome->changed[0].after), "R-2");
    EXPECT_EQ(outcome->changed[0].dueAfter.stage, Stage::RepBuild);
    EXPECT_EQ(outcome->changed[1].entry, history[4].id);
    EXPECT_EQ(outcome->lifts[0].stateBefore.stage, Stage::LoadBuild);
    EXPECT_EQ(outcome->lifts[0].stateAfter.stage, Stage::RepBuild);
}

TEST_F(RecordWriterTest, ACorrectionMayMoveTheDay)
{
    const auto history = squatHistory();
    const base::Date day = history[1].event.date - 2;
    ASSERT_TRUE(m_writer.correct(history[2].id, {day, history[2].event.body}));
    EXPECT_EQ(squatHistory()[1].event.date, day);
    expectCachesAsRebuilt();
}

TEST_F(RecordWriterTest, EntriesOfOneDayKeepTheOrderInWhichTheyWereEntered)
{
    recordToday(exposureOf({{45, 8, 2}, {45, 8, 2}}));
    recordToday(exposureOf({{47.5, 8, 2}, {47.5, 8, 2}}));
    const auto history = squatHistory();
    const HistoryEntry& first = history[history.size() - 2];
    ASSERT_TRUE(m_writer.correct(first.id, {first.event.date, exposureOf({{45, 9, 2}, {45, 9, 2}})}));
    const auto corrected = squatHistory();
    EXPECT_EQ(corrected[corrected.size() - 2].event.body, progression::EventBody(exposureOf({{45, 9, 2}, {45, 9, 2}}))) << "not after the second";
}

TEST_F(RecordWriterTest, WhatIsTakenBackDoesNotCount)
{
    const auto history = squatHistory();
    const auto outcome = m_writer.takeBack(history.back().id);
    ASSERT_TRUE(outcome);
    EXPECT_EQ(squatHistory().size(), history.size() - 1);
    EXPECT_TRUE(outcome->lifts[0].rules.isEmpty());
    EXPECT_EQ(versionsOf(history.back().id), 2U);
    expectCachesAsRebuilt();
    ASSERT_TRUE(m_writer.undo(outcome->act));
    EXPECT_EQ(squatHistory().size(), history.size());
    expectCachesAsRebuilt();
}

TEST_F(RecordWriterTest, ALateEntryReplaysTheHistoryAndSaysWhatItChanged)
{
    const auto outcome = recordSquat(exposureOf({{40, 4, 2}, {40, 4, 2}}), 24);
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    EXPECT_EQ(squatHistory()[3].event.date, test::smallStudioDay() - 24);
    EXPECT_EQ(test::namesOf(outcome->lifts[0].rules), "L-3");
    EXPECT_TRUE(outcome->changed.empty()) << "a made exposure clears the miss";
    EXPECT_FALSE(recordSquat(exposureOf({{35, 5, 2}, {35, 5, 2}}), 23)->changed.empty());
    expectCachesAsRebuilt();
}

TEST_F(RecordWriterTest, UndoRefusesWhatWasChangedSince)
{
    const ActOutcome recorded = recordToday(exposureOf({{45, 8, 2}, {45, 8, 2}}));
    const base::EventId entry = squatHistory().back().id;
    const auto corrected = m_writer.correct(entry, {test::smallStudioDay(), exposureOf({{45, 7, 2}, {45, 7, 2}})});
    ASSERT_TRUE(corrected);
    EXPECT_EQ(refusalOf([&] { return m_writer.undo(recorded.act); }), "This was changed since: take that change back first");
    const auto uncorrected = m_writer.undo(corrected->act);
    ASSERT_TRUE(uncorrected);
    const auto undone = m_writer.undo(recorded.act);
    ASSERT_TRUE(undone) << "what came later was taken back: " << undone.error().message.toStdString();
    expectCachesAsRebuilt();
    // And all the way forward again.
    ASSERT_TRUE(m_writer.undo(undone->act));
    ASSERT_TRUE(m_writer.undo(uncorrected->act));
    EXPECT_EQ(squatHistory().back().event.body, progression::EventBody(exposureOf({{45, 7, 2}, {45, 7, 2}})));
    expectCachesAsRebuilt();
}

TEST_F(RecordWriterTest, SessionsAreMarkedAndUndone)
{
    const auto outcome = m_writer.setSessionState(today().id, sessions::SessionState::CancelledLate);
    ASSERT_TRUE(outcome);
    EXPECT_EQ(outcome->client, m_ada);
    EXPECT_EQ(today().state, sessions::SessionState::CancelledLate);
    const auto again = m_writer.setSessionState(today().id, sessions::SessionState::Missed);
    EXPECT_EQ(refusalOf([&] { return m_writer.undo(outcome->act); }), "The session was changed since: take that change back first");
    ASSERT_TRUE(m_writer.undo(again->act));
    ASSERT_TRUE(m_writer.undo(outcome->act));
    EXPECT_EQ(today().state, sessions::SessionState::Planned);
    EXPECT_EQ(refusalOf([&] { return m_writer.setSessionState(base::SessionId(99), sessions::SessionState::Missed); }), "There is no session 99");
    EXPECT_EQ(refusalOf([&] { return m_writer.setSessionStates({}, sessions::SessionState::Missed); }), "There is no session to change");
}

TEST_F(RecordWriterTest, ARunOfCardsIsOneAct)
{
    const auto all = SessionReader(m_studio.database()).of(m_ada).value();
    const auto outcome = m_writer.setSessionStates({all[0].session.id, all[1].session.id, all[0].session.id}, sessions::SessionState::Printed);
    ASSERT_TRUE(outcome) << outcome.error().message.toStdString();
    EXPECT_EQ(today().state, sessions::SessionState::Printed);
    ASSERT_TRUE(m_writer.undo(outcome->act));
    EXPECT_EQ(SessionReader(m_studio.database()).of(m_ada).value()[1].session.state, all[1].session.state);
}

TEST_F(RecordWriterTest, WhatTheCoachDoesIsUndoneToo)
{
    const auto hinge = lift(lifts::Pattern::Hinge);
    ASSERT_TRUE(hinge.machine.state().isOnHold);
    const auto released = m_writer.record(m_ada, {}, {{hinge.id, {test::smallStudioDay(), progression::Release{"seen by a physiotherapist"}}}});
    ASSERT_TRUE(released) << released.error().message.toStdString();
    EXPECT_EQ(test::namesOf(released->lifts[0].rules), "P-4");
    EXPECT_FALSE(lift(lifts::Pattern::Hinge).machine.state().isOnHold);
    progression::Swap swap;
    swap.equipment = test::fixedKit({8, 12, 16}).equipment;
    swap.startLoad = kilos(12);
    swap.exerciseKey = "kettlebell_deadlift";
    const auto swapped = m_writer.record(m_ada, {}, {{hinge.id, {test::smallStudioDay(), swap}}});
    ASSERT_TRUE(swapped) << swapped.error().message.toStdString();
    EXPECT_EQ(lift(lifts::Pattern::Hinge).machine.kit().exerciseKey, "kettlebell_deadlift");
    expectCachesAsRebuilt();
    progression::CoachSet set;
    set.stage = Stage::RepBuild;
    set.load = kilos(16);
    set.reason = "knows it well";
    const auto byHand = m_writer.record(m_ada, {}, {{hinge.id, {test::smallStudioDay(), set}}});
    ASSERT_TRUE(byHand) << byHand.error().message.toStdString();
    EXPECT_EQ(lift(lifts::Pattern::Hinge).machine.state().load, kilos(16));
    for (const auto& outcome : {byHand, swapped, released}) {
        ASSERT_TRUE(m_writer.undo(outcome->act));
    }
    EXPECT_EQ(lift(lifts::Pattern::Hinge).machine.state(), hinge.machine.state());
    EXPECT_EQ(lift(lifts::Pattern::Hinge).machine.kit(), hinge.machine.kit());
    expectCachesAsRebuilt();
}

TEST_F(RecordWriterTest, RefusesWhatBelongsToSomebodyElse)
{
    const auto work = exposureOf({{45, 8, 2}});
    EXPECT_EQ(refusalOf([&] { return m_writer.record(base::ClientId(99), {}, {{m_squat, {test::smallStudioDay(), work}}}); }),
              "Lift " + std::to_string(m_squat.value()) + " is not one of client 99");
    EXPECT_EQ(refusalOf([&] { return recordSquat(work, 0, base::SessionId(999)); }),
              "Session 999 is not one of client " + std::to_string(m_ada.value()));
    EXPECT_EQ(refusalOf([&] { return m_writer.record(m_ada, {}, {{base::LiftId(999), {test::smallStudioDay(), work}}}); }),
              "Lift 999 is not one of client " + std::to_string(m_ada.value()));
    EXPECT_EQ(refusalOf([&] { return m_writer.record(m_ada, {}, {}); }), "There is nothing to record");
    EXPECT_EQ(refusalOf([&] { return m_writer.undo(base::ActId(1)); }), "There is nothing to take back") << "the import";
    EXPECT_EQ(refusalOf([&] { return m_writer.undo(base::ActId(999)); }), "There is nothing to take back");
    EXPECT_EQ(refusalOf([&] { return m_writer.takeBack(base::EventId(999)); }), "That entry is not there any more: it was changed since");
}

TEST_F(RecordWriterTest, ImpossibleNumbersAreNamedByTheirField)
{
    const auto refusalOfSet = [this](const std::function<void(progression::SetRecord&)>& spoil, int daysAgo = 0) {
        progression::Exposure exposure = exposureOf({{45, 8, 2}, {45, 8, 2}});
        spoil(exposure.sets[1]);
        return refusalOf([&] { return recordSquat(exposure, daysAgo); });
    };
    constexpr std::int32_t kHuge = std::numeric_limits<std::int32_t>::max();
    for (const int daysAgo : {0, 25}) {
        EXPECT_EQ(refusalOfSet([](auto& set) { set.load = base::Load::fromCenti(kHuge); }, daysAgo).substr(0, 22), "squat: sets[1].load mu");
        EXPECT_EQ(refusalOfSet([](auto& set) { set.amount = -1; }, daysAgo).substr(0, 14), "squat: sets[1]");
        EXPECT_EQ(refusalOfSet([](auto& set) { set.amount = kHuge; }, daysAgo).substr(0, 14), "squat: sets[1]");
        EXPECT_EQ(refusalOfSet([](auto& set) { set.rir = 11; }, daysAgo).substr(0, 18), "squat: sets[1].rir");
        EXPECT_EQ(refusalOfSet([](auto& set) { set.restSeconds = 30'000; }, daysAgo).substr(0, 21), "squat: sets[1].rest_s");
    }
    EXPECT_EQ(refusalOf([&] { return recordSquat(exposureOf({{45, 8, 2}}, 11)); }).substr(0, 11), "squat: pain");
    progression::Rehearsal rehearsal = test::goodRehearsal();
    rehearsal.reps = base::Reps(5000);
    EXPECT_EQ(refusalOf([&] { return recordSquat(rehearsal); }).substr(0, 11), "squat: reps");
    EXPECT_EQ(refusalOf([&] { return recordSquat(progression::Release{""}); }).substr(0, 11), "squat: note");
}

TEST_F(RecordWriterTest, WhatTheEquipmentCannotGiveIsRefused)
{
    progression::CoachSet set;
    set.reason = "because";
    set.stage = Stage::RepBuild;
    set.load = kilos(61);
    EXPECT_EQ(refusalOf([&] { return recordSquat(set); }), "squat: load is not a load that the equipment can give");
    EXPECT_NE(refusalOf([&] { return recordSquat(set, 25); }).find("cannot stand: load is not"), std::string::npos);
    set.load = kilos(60);
    set.rest = base::Seconds(90);
    EXPECT_EQ(refusalOf([&] { return recordSquat(set); }), "squat: rest_s has no use in this stage");
}

TEST_F(RecordWriterTest, ACorrectionThatALaterEntryCannotStandIsRefused)
{
    progression::Swap swap;
    swap.equipment = test::fixedKit({8, 12, 16}).equipment;
    ASSERT_TRUE(recordSquat(swap));
    const base::EventId swapped = squatHistory().back().id;
    progression::CoachSet set;
    set.reason = "because";
    set.stage = Stage::RepBuild;
    set.load = kilos(16);
    ASSERT_TRUE(recordSquat(set));
    swap.equipment = test::fixedKit({8, 12}).equipment;
    EXPECT_EQ(refusalOf([&] { return m_writer.correct(swapped, {test::smallStudioDay(), swap}); }),
              "The entry of 2026-11-24 cannot stand: load is not a load that the equipment can give");
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

TEST_F(RecordWriterTest, ABlockedStudioIsLeftAsItIs)
{
    const auto other = Database::open(m_studio.file(), OpenMode::MustExist).value();
    QSqlQuery(m_studio.database().connection()).exec(QStringLiteral("PRAGMA busy_timeout = 20"));
    const Transaction held(*other);
    const auto outcome = recordSquat(exposureOf({{45, 8, 2}}));
    ASSERT_FALSE(outcome);
    EXPECT_EQ(outcome.error().kind, StoreError::Kind::Busy);
    EXPECT_TRUE(outcome.error().message.contains(m_studio.file()));
}

}  // namespace chalk::store
