#include "ui/floor/floor_desk.h"

#include "tests/support/cut_connection.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/server_on_test.h"
#include "tests/ui/floor/floor_fixture.h"
#include "ui/common/write_desk.h"
#include "ui/floor/lift_row_words.h"

namespace chalk::ui::floor {

using progression::Stage;
using progression::Verdict;

class FloorDeskTest : public test::FloorTest {
protected:
    FloorDeskTest() { m_desk.read(); }

    QString says() const { return m_desk.message().lead + QLatin1Char(' ') + m_desk.message().text; }

    FloorDesk m_desk{m_presenter, m_clock, m_acts};
};

TEST_F(FloorDeskTest, BeginsWhereWorkIsOpen)
{
    EXPECT_EQ(m_desk.slotIndex(), 0);
    ASSERT_NE(m_desk.lift(), nullptr);
    EXPECT_EQ(m_desk.lift()->exercise.key, "back_squat");
    EXPECT_TRUE(m_desk.isToday());
    EXPECT_TRUE(m_desk.isSlotOpen());
}

TEST_F(FloorDeskTest, SaysWhatFollowsAtEveryKey)
{
    m_desk.type(QStringLiteral("8 8 r2"));
    EXPECT_EQ(m_desk.message().lead, QStringLiteral("Next time 2 × 5–10 at 55 kg."));
    m_desk.type(QStringLiteral("8 8 r0"));
    EXPECT_EQ(m_desk.message().lead, QStringLiteral("Next time Rep build: 2 × 7 at 50 kg."));
    m_desk.type(QStringLiteral("8 8 r2 s"));
    EXPECT_EQ(m_desk.message().lead, QStringLiteral("Next time 2 × 5–10 at 50 kg, again."));
    EXPECT_TRUE(m_desk.message().text.contains(QStringLiteral("shaky")));
    m_desk.type(QStringLiteral("8 8 r2 p5"));
    EXPECT_EQ(m_desk.message().signal, common::Signal::Pain);
    EXPECT_TRUE(says().contains(QStringLiteral("Pain 5 of 10")));
    EXPECT_EQ(entriesOf(m_desk.lift()->id), 5U) << "nothing is written while typing";
}

TEST_F(FloorDeskTest, SavesAndGoesToTheNextOpenLift)
{
    const base::LiftId squat = m_desk.lift()->id;
    m_desk.type(QStringLiteral("8 8 r2"));
    EXPECT_EQ(m_desk.save(), SaveState::Saved);
    EXPECT_EQ(entriesOf(squat), 6U);
    EXPECT_EQ(m_desk.lift()->exercise.key, "dumbbell_bench_press") << "the deadlift is on hold";
    ASSERT_TRUE(m_acts.lastDone());
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("Back squat recorded for Ada"));
    EXPECT_TRUE(m_desk.run().front().isRecorded());
}

TEST_F(FloorDeskTest, WhatTheServerDoesNotTakeIsKeptOnceAndReadWhenItWasSent)
{
    if (!m_studio.database().isOnServer()) {
        GTEST_SKIP() << "this is about a server";
    }
    tests::ScriptedDialogs dialogs;
    common::WriteDesk writes(m_studio.database(), dialogs, test::someMoment, m_studio.folder() + QStringLiteral("/waiting.jsonl"));
    m_presenter.writeThrough(writes);
    const base::LiftId squat = m_desk.lift()->id;
    m_desk.type(QStringLiteral("8 8 r2"));
    const QString pid = m_studio.rows(QStringLiteral("SELECT pg_backend_pid()")).at(0);
    test::runOnServer(m_studio.file(), QStringLiteral("SELECT pg_terminate_backend(%1)").arg(pid));
    const tests::CutConnection cut;
    EXPECT_EQ(m_desk.save(), SaveState::Waits);
    EXPECT_NE(m_desk.lift()->id, squat) << "the work goes on";
    m_desk.chooseLift(0);
    EXPECT_EQ(says(), QStringLiteral("Kept here. It is sent as soon as the server answers."));
    EXPECT_EQ(m_desk.save(), SaveState::Waits);
    EXPECT_EQ(writes.waiting().size(), 1U) << "not twice";
    const auto connected = m_studio.database().reconnect();
    ASSERT_TRUE(connected);
    writes.sendWaiting();
    m_desk.read();
    m_desk.chooseLift(0);
    EXPECT_EQ(entriesOf(squat), 6U);
    EXPECT_FALSE(m_desk.lift()->saved.isNone());
}

TEST_F(FloorDeskTest, TheOtherLiftsOfAnEarlierDayStayWhileItsSessionIsEntered)
{
    sessions::Session session = m_desk.client()->session;
    session.date = test::smallStudioDay() - 1;
    m_desk.goToDay(session.date);
    ASSERT_TRUE(m_desk.book(session)) << m_desk.runRefusal().toStdString();
    ASSERT_NE(m_desk.client(), nullptr);
    const std::size_t lifts = m_desk.client()->lifts.size();
    ASSERT_GT(lifts, 1U);
    m_desk.type(QStringLiteral("8 8 r2"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    EXPECT_EQ(m_desk.client()->lifts.size(), lifts);
    EXPECT_FALSE(m_desk.lift()->isDone()) << "it goes on to the next one";
}

TEST_F(FloorDeskTest, UndoTakesTheRecordBack)
{
    const base::LiftId squat = m_desk.lift()->id;
    m_desk.type(QStringLiteral("8 8 r2"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    m_acts.undo();
    m_desk.read();
    EXPECT_EQ(entriesOf(squat), 5U);
    EXPECT_TRUE(chooseLift(m_desk, "back_squat").saved.isNone());
    EXPECT_TRUE(m_desk.run().front().isOpen());
}

TEST_F(FloorDeskTest, ACorrectionSaysWhatItChanged)
{
    m_desk.type(QStringLiteral("8 8 r2"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    EXPECT_EQ(chooseLift(m_desk, "back_squat").line, QStringLiteral("8 8 r2"));
    m_desk.type(QStringLiteral("8 8 r0"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    EXPECT_EQ(m_desk.lift()->exercise.key, "back_squat");
    EXPECT_EQ(m_desk.message().lead, QStringLiteral("Corrected."));
    EXPECT_EQ(m_desk.message().text, QStringLiteral("Was 8, 8 at 50 kg, 2 left; is 8, 8 at 50 kg, 0 left. Due now 2 × 7 at 50 kg, before 2 × 5–10 at 55 kg. "
                                                    "No other decision is different."));
    EXPECT_EQ(entriesOf(m_desk.lift()->id), 6U) << "the former one is replaced, not joined";
}

TEST_F(FloorDeskTest, ACorrectionOfAnEarlierDaySaysWhichDecisionsChanged)
{
    m_desk.goToDay(test::smallStudioDay() - 21);
    EXPECT_FALSE(m_desk.isToday());
    EXPECT_EQ(chooseLift(m_desk, "back_squat").line, QStringLiteral("8 8 r2"));
    EXPECT_TRUE(says().contains(QStringLiteral("With what was recorded later, 2 × 5–10 at 50 kg is due now.")));
    m_desk.type(QStringLiteral("8 8 r0"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    EXPECT_TRUE(says().contains(QStringLiteral("Was 8, 8 at 40 kg, 2 left; is 8, 8 at 40 kg, 0 left."))) << says().toStdString();
    EXPECT_TRUE(says().contains(QStringLiteral("1 later decision"))) << says().toStdString();
    EXPECT_TRUE(says().contains(QStringLiteral("Tue 17 Nov led to"))) << says().toStdString();
}

TEST_F(FloorDeskTest, TheSameAgainWritesNothing)
{
    m_desk.type(QStringLiteral("8 8 r2"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    const auto act = m_acts.lastDone()->act;
    chooseLift(m_desk, "back_squat");
    EXPECT_EQ(m_desk.save(), SaveState::Saved);
    EXPECT_EQ(m_acts.lastDone()->act, act);
}

TEST_F(FloorDeskTest, AFaultIsNamedAndNothingIsWritten)
{
    m_desk.type(QStringLiteral("8 ß p12"));
    const EntryReading reading = m_desk.reading();
    EXPECT_EQ(reading.state, EntryState::Fault);
    EXPECT_EQ(reading.faultBegin, 2);
    EXPECT_EQ(reading.faultLength, 1);
    EXPECT_TRUE(says().contains(QStringLiteral("“ß” is not understood.")));
    EXPECT_EQ(m_desk.save(), SaveState::Refused);
    EXPECT_EQ(entriesOf(m_desk.lift()->id), 5U);
    EXPECT_EQ(m_desk.lift()->line, QStringLiteral("8 ß p12")) << "nothing is dropped";
}

TEST_F(FloorDeskTest, ADoubtIsAskedAboutOnce)
{
    m_desk.type(QStringLiteral("8 8 @500"));
    EXPECT_EQ(m_desk.save(), SaveState::Asked);
    EXPECT_EQ(m_desk.message().lead, QStringLiteral("Is that right?"));
    m_desk.type(QStringLiteral("8 8 @501"));
    EXPECT_EQ(m_desk.save(), SaveState::Asked) << "another entry is another question";
    EXPECT_EQ(m_desk.save(), SaveState::Saved);
}

TEST_F(FloorDeskTest, ALiftOnHoldTakesNothing)
{
    const base::LiftId id = chooseLift(m_desk, "trap_bar_deadlift").id;
    EXPECT_EQ(m_desk.reading().state, EntryState::OnHold);
    m_desk.type(QStringLiteral("8 8"));
    EXPECT_EQ(m_desk.save(), SaveState::Refused);
    EXPECT_EQ(entriesOf(id), 1U);
    EXPECT_FALSE(m_acts.lastDone());
}

TEST_F(FloorDeskTest, WhoWaitsForClearanceHasNothingToRecord)
{
    m_desk.chooseSlot(1);
    ASSERT_NE(m_desk.client(), nullptr);
    EXPECT_TRUE(m_desk.client()->isBlocked);
    EXPECT_FALSE(m_desk.isSlotOpen());
    EXPECT_EQ(m_desk.save(), SaveState::Refused);
}

TEST_F(FloorDeskTest, WhatIsTypedStaysWhereItWasTyped)
{
    m_desk.type(QStringLiteral("8 8"));
    EXPECT_TRUE(m_desk.moveLift(1));
    EXPECT_TRUE(m_desk.moveLift(-1));
    EXPECT_EQ(m_desk.lift()->line, QStringLiteral("8 8"));
    m_desk.goToDay(test::smallStudioDay() - 21);
    m_desk.goToDay(test::smallStudioDay());
    EXPECT_EQ(chooseLift(m_desk, "back_squat").line, QStringLiteral("8 8"));
    EXPECT_FALSE(m_desk.moveLift(-1));
    EXPECT_FALSE(m_desk.moveClient(1));
    EXPECT_TRUE(m_desk.moveSlot(1));
    EXPECT_FALSE(m_desk.moveSlot(1));
}

TEST_F(FloorDeskTest, ASkippedLiftIsLeftOutAndCanComeBack)
{
    m_desk.type(QStringLiteral("x"));
    EXPECT_EQ(m_desk.save(), SaveState::Skipped);
    EXPECT_EQ(m_desk.lift()->exercise.key, "dumbbell_bench_press");
    EXPECT_TRUE(chooseLift(m_desk, "back_squat").isSkipped);
    m_desk.read();
    EXPECT_TRUE(m_desk.lift()->isSkipped);
    m_desk.skip();
    EXPECT_FALSE(m_desk.lift()->isSkipped);
    EXPECT_FALSE(m_acts.lastDone());
}

TEST_F(FloorDeskTest, AnotherLiftCanBeAddedAndAllOthersStay)
{
    m_desk.goToDay(test::smallStudioDay() - 21);
    ASSERT_EQ(m_desk.client()->lifts.size(), 2U);
    const base::LiftId added = m_desk.client()->others.front().id;
    m_desk.addLift(added);
    EXPECT_EQ(m_desk.lift()->id, added);
    m_desk.type(QStringLiteral("8 8 r3"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    EXPECT_EQ(m_desk.client()->lifts.size(), 3U);
}

TEST_F(FloorDeskTest, ARehearsalIsJudgedPointByPoint)
{
    const base::LiftId id = chooseLift(m_desk, "split_squat").id;
    RehearsalDraft draft;
    draft.verdicts = {Verdict::Met, Verdict::Met, Verdict::Met, std::nullopt, Verdict::Met, Verdict::Met};
    draft.pauses = {QStringLiteral("1"), QStringLiteral("1,2"), QStringLiteral("1")};
    m_desk.judge(draft);
    EXPECT_EQ(m_desk.reading().state, EntryState::Waiting);
    EXPECT_TRUE(says().contains(QStringLiteral("Point 4"))) << says().toStdString();
    EXPECT_EQ(m_desk.save(), SaveState::Refused);
    EXPECT_EQ(entriesOf(id), 0U);
    draft.verdicts[3] = Verdict::Partly;
    m_desk.judge(draft);
    EXPECT_EQ(m_desk.message().lead, QStringLiteral("Next time Rehearse: Pattern, again."));
    draft.verdicts[3] = Verdict::Met;
    m_desk.judge(draft);
    EXPECT_EQ(m_desk.message().lead, QStringLiteral("Next time Base load: 2 × 5–10 at 2 × 6 kg."));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    const auto* saved = std::get_if<progression::Rehearsal>(&*chooseLift(m_desk, "split_squat").savedBody);
    ASSERT_NE(saved, nullptr);
    EXPECT_EQ(saved->criteria.size(), screens::kPointsPerPattern);
    EXPECT_EQ(saved->pauses.middleMs, 1200);
    EXPECT_EQ(m_desk.lift()->rehearsal.verdicts, draft.verdicts) << "ready to be corrected";
}

TEST_F(FloorDeskTest, WhatSomebodyElseCorrectedMeanwhileIsRefusedInWords)
{
    m_desk.type(QStringLiteral("8 8 r2"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    const FloorLift stale = chooseLift(m_desk, "back_squat");
    ASSERT_TRUE(store::RecordWriter(m_studio.database(), test::someMoment).takeBack(stale.saved));
    m_desk.type(QStringLiteral("8 8 r1"));
    EXPECT_EQ(m_desk.save(), SaveState::Refused);
    EXPECT_EQ(m_desk.message().lead, QStringLiteral("Not saved."));
    EXPECT_FALSE(m_desk.message().text.isEmpty());
    EXPECT_EQ(m_desk.lift()->line, QStringLiteral("8 8 r1"));
}

TEST_F(FloorDeskTest, ADayWithoutSessionsIsEmpty)
{
    m_desk.goToDay(test::smallStudioDay() + 1);
    EXPECT_TRUE(m_desk.run().empty());
    EXPECT_EQ(m_desk.client(), nullptr);
    EXPECT_EQ(m_desk.lift(), nullptr);
    EXPECT_EQ(m_desk.save(), SaveState::Refused);
    m_desk.type(QStringLiteral("8"));
    m_desk.skip();
    EXPECT_FALSE(m_desk.choose(base::ClientId(1), {}));
}

TEST_F(FloorDeskTest, ARecordIsDeletedAfterSayingWhatThatChanges)
{
    const base::LiftId squat = m_desk.lift()->id;
    m_desk.type(QStringLiteral("8 8 r2"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    m_desk.choosePattern(lifts::Pattern::Squat);
    EXPECT_EQ(m_desk.takeBack(), SaveState::Asked);
    EXPECT_EQ(entriesOf(squat), 6U) << "asked, not done";
    EXPECT_TRUE(says().contains(QStringLiteral("Without it 2 × 5–10 at 50 kg is due, not 2 × 5–10 at 55 kg."))) << says().toStdString();
    EXPECT_EQ(m_desk.takeBack(), SaveState::Saved);
    EXPECT_EQ(entriesOf(squat), 5U);
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("Back squat deleted for Ada"));
    EXPECT_TRUE(m_desk.run().front().isOpen()) << "nothing is left of the session";
    m_acts.undo();
    m_desk.read();
    EXPECT_TRUE(m_desk.run().front().isRecorded());
    EXPECT_EQ(entriesOf(squat), 6U);
}

TEST_F(FloorDeskTest, MovingOnForgetsTheQuestion)
{
    m_desk.type(QStringLiteral("8 8 r2"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    const auto choose = [this] { m_desk.choosePattern(lifts::Pattern::Squat); };
    choose();
    ASSERT_EQ(m_desk.takeBack(), SaveState::Asked);
    m_desk.moveLift(1);
    choose();
    EXPECT_EQ(m_desk.takeBack(), SaveState::Asked);
}

TEST_F(FloorDeskTest, NothingSavedIsNothingToDelete)
{
    EXPECT_EQ(m_desk.takeBack(), SaveState::Refused);
}

TEST_F(FloorDeskTest, ASessionIsMarkedAndUndoPlansItAgain)
{
    const sessions::Session ada = m_desk.run().front().sessions.front();
    ASSERT_TRUE(m_desk.setState(ada, sessions::SessionState::CancelledLate));
    EXPECT_TRUE(m_desk.run().front().isCalledOff());
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("Ada called off late"));
    m_acts.undo();
    m_desk.read();
    EXPECT_TRUE(m_desk.run().front().isOpen());
}

TEST_F(FloorDeskTest, ASessionThatNobodyPlannedIsAddedAndChosen)
{
    sessions::Session extra = m_desk.run().front().sessions.front();
    extra.startMinute = 20 * 60;
    const std::size_t before = m_desk.run().size();
    ASSERT_TRUE(m_desk.book(extra));
    EXPECT_EQ(m_desk.run().size(), before + 1);
    EXPECT_FALSE(m_desk.book(extra));
    EXPECT_TRUE(m_desk.runRefusal().contains(QStringLiteral("at that time already")));
    ASSERT_TRUE(m_desk.setState(m_desk.run().back().sessions.front(), sessions::SessionState::Withdrawn));
    EXPECT_EQ(m_desk.run().size(), before);
}

TEST_F(FloorDeskTest, WordsBehindAResultGoToTheSessionsNoteInTheSameAct)
{
    m_desk.type(QStringLiteral("8 8 r2  belt on"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    EXPECT_EQ(m_desk.client()->report.note, "Back squat: belt on");
    EXPECT_EQ(chooseLift(m_desk, "back_squat").line, QStringLiteral("8 8 r2")) << "they are no part of the result";
    m_desk.type(QStringLiteral("8 7 r2  knees out"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    EXPECT_EQ(m_desk.client()->report.note, "Back squat: belt on\nBack squat: knees out");
    m_acts.undo();
    m_desk.read();
    EXPECT_EQ(m_desk.client()->report.note, "Back squat: belt on");
    m_acts.undo();
    m_desk.read();
    EXPECT_TRUE(m_desk.client()->report.isEmpty());
    EXPECT_TRUE(chooseLift(m_desk, "back_squat").saved.isNone());
}

TEST_F(FloorDeskTest, ARemarkAloneIsNoCorrection)
{
    m_desk.type(QStringLiteral("8 8 r2"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    chooseLift(m_desk, "back_squat");
    m_desk.type(QStringLiteral("8 8 r2  belt on"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    EXPECT_EQ(m_desk.client()->report.note, "Back squat: belt on");
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("Note on Back squat for Ada"));
    EXPECT_EQ(chooseLift(m_desk, "back_squat").line, QStringLiteral("8 8 r2"));
}

TEST_F(FloorDeskTest, ASkippedLiftCanHaveARemark)
{
    m_desk.type(QStringLiteral("x  sore knee"));
    EXPECT_EQ(m_desk.save(), SaveState::Skipped);
    m_desk.read();
    EXPECT_EQ(m_desk.client()->report.note, "Back squat: sore knee");
    EXPECT_TRUE(chooseLift(m_desk, "back_squat").isSkipped);
}

TEST_F(FloorDeskTest, WhatIsSaidOfASessionIsOneActWithWords)
{
    const base::SessionId session = m_desk.client()->session.id;
    EXPECT_FALSE(m_desk.client()->isHealthKept);
    EXPECT_EQ(m_desk.saveReport(session, {{}, {}, {}, 75, 55, {}}), SaveState::Saved);
    EXPECT_EQ(m_desk.client()->report.effortTenths, 75);
    EXPECT_EQ(m_acts.lastDone()->words, QStringLiteral("How the session felt, for Ada"));
    EXPECT_EQ(m_desk.saveReport(session, {4, {}, {}, 75, 55, {}}), SaveState::Refused) << "nobody consented";
    EXPECT_TRUE(says().contains(QStringLiteral("consent"))) << says().toStdString();
    m_acts.undo();
    m_desk.read();
    EXPECT_TRUE(m_desk.client()->report.isEmpty());
}

TEST_F(FloorDeskTest, WhatIsSaidOfASessionWhileTheServerIsAwayIsKept)
{
    tests::ScriptedDialogs dialogs;
    common::WriteDesk writes(m_studio.database(), dialogs, test::someMoment, m_studio.folder() + QStringLiteral("/waiting.jsonl"));
    m_presenter.writeThrough(writes);
    m_desk.type(QStringLiteral("8 8 r2"));
    ASSERT_EQ(m_desk.save(), SaveState::Saved);
    chooseLift(m_desk, "back_squat");
    const base::SessionId session = m_desk.client()->session.id;
    writes.holdBack(true);
    EXPECT_EQ(m_desk.saveReport(session, {{}, {}, {}, 75, {}, {}}), SaveState::Waits);
    EXPECT_EQ(says(), QStringLiteral("Kept here. It is sent as soon as the server answers."));
    EXPECT_EQ(m_desk.client()->report.effortTenths, 75) << "what was said stays on show";
    EXPECT_EQ(m_desk.saveReport(session, {{}, {}, {}, 80, 55, {}}), SaveState::Waits);
    m_desk.type(QStringLiteral("8 8 r2  belt on"));
    EXPECT_EQ(m_desk.save(), SaveState::Saved) << "a remark goes on with what waits";
    EXPECT_EQ(writes.waiting().size(), 1U);
    writes.holdBack(false);
    writes.sendWaiting();
    m_desk.read();
    EXPECT_EQ(m_desk.client()->report.effortTenths, 80);
    EXPECT_EQ(m_desk.client()->report.minutes, 55);
    EXPECT_EQ(m_desk.client()->report.note, "Back squat: belt on");
    EXPECT_EQ(m_desk.saveReport(session, {{}, {}, {}, 70, 55, "Back squat: belt on"}), SaveState::Saved);
    EXPECT_TRUE(dialogs.asked.empty());
}

TEST_F(FloorDeskTest, ASkippedLiftAndItsReasonStayWithTheSession)
{
    m_desk.skip("no_time");
    FloorDesk later{m_presenter, m_clock, m_acts};
    later.read();
    const FloorLift& squat = chooseLift(later, "back_squat");
    EXPECT_TRUE(squat.isSkipped);
    EXPECT_EQ(squat.skipWhy, "no_time");
    EXPECT_EQ(m_studio.rows(QStringLiteral("SELECT left_out FROM session_lift WHERE left_out IS NOT NULL")), QStringList{QStringLiteral("no_time")})
        << "a key, in whatever language the screen is";
    EXPECT_EQ(liftRowOf(*later.client(), squat).skipWhy, QStringLiteral("no time"));
    const sessions::CardContent card = m_presenter.cardOf(*later.client());
    EXPECT_EQ(std::count_if(card.lifts.begin(), card.lifts.end(), [](const sessions::CardLift& one) { return one.name == "Back squat"; }), 0) << "it is not on the card";
    later.skip();
    EXPECT_FALSE(chooseLift(later, "back_squat").isSkipped);
    later.read();
    EXPECT_FALSE(chooseLift(later, "back_squat").isSkipped) << "taken in again";
}

TEST_F(FloorDeskTest, WhatGoesOnAfterADayIsNotSwappedOnIt)
{
    EXPECT_TRUE(m_desk.checkSwap());
    m_desk.goToDay(test::smallStudioDay() - 14);
    chooseLift(m_desk, "back_squat");
    EXPECT_FALSE(m_desk.checkSwap());
    EXPECT_TRUE(says().contains(QStringLiteral("goes on after this day"))) << says().toStdString();
}

TEST_F(FloorDeskTest, AnOrderThatSomebodyElseSetMeanwhileIsNotWrittenOver)
{
    const auto second = store::Database::open(m_studio.file(), store::OpenMode::MustExist).value();
    FloorPresenter elsewhere(*second, m_catalogue, m_screens, test::someMoment);
    FloorDesk theirs(elsewhere, m_clock, m_acts);
    theirs.read();
    theirs.shiftLift(1);
    const auto order = [](const FloorDesk& desk) {
        std::vector<std::string> keys;
        for (const FloorLift& one : desk.client()->lifts) {
            keys.push_back(one.exercise.key);
        }
        return keys;
    };
    const auto wanted = order(theirs);
    ASSERT_NE(order(m_desk), wanted);
    chooseLift(m_desk, "dumbbell_bench_press");
    m_desk.skip("no_time");
    EXPECT_EQ(order(m_desk), wanted) << "what the other one set is on show";
    EXPECT_FALSE(chooseLift(m_desk, "dumbbell_bench_press").isSkipped);

    tests::ScriptedDialogs dialogs;
    common::WriteDesk writes(m_studio.database(), dialogs, test::someMoment, m_studio.folder() + QStringLiteral("/waiting.jsonl"));
    m_presenter.writeThrough(writes);
    theirs.shiftLift(1);
    dialogs.answers = {1};
    m_desk.skip("no_time");
    ASSERT_EQ(dialogs.asked.size(), 1U) << "with somebody to ask, the person decides";
    EXPECT_TRUE(chooseLift(m_desk, "dumbbell_bench_press").isSkipped);
    theirs.read();
    EXPECT_EQ(order(theirs), wanted) << "one's own list was written";
    m_desk.skip();
    EXPECT_EQ(dialogs.asked.size(), 1U);
}

TEST_F(FloorDeskTest, TheOrderOfTodayStaysWithTheSession)
{
    const std::string second = m_desk.client()->lifts[1].exercise.key;
    m_desk.shiftLift(1);
    EXPECT_EQ(m_desk.liftIndex(), 1);
    FloorDesk later{m_presenter, m_clock, m_acts};
    later.read();
    EXPECT_EQ(later.client()->lifts[0].exercise.key, second);
    EXPECT_EQ(later.client()->lifts[1].exercise.key, "back_squat");
    m_desk.shiftLift(-5);
    EXPECT_EQ(m_desk.liftIndex(), 1) << "not beyond the end";
}

}  // namespace chalk::ui::floor
