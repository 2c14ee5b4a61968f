#include "core/store/plan_starter.h"

#include "core/store/client_reader.h"
#include "core/store/client_writer.h"
#include "core/store/record_writer.h"
#include "core/store/session_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

using lifts::Pattern;

const base::Date kPlanDay = test::smallStudioDay();

NewLift newLift(Pattern pattern, progression::Stage stage = progression::Stage::Pattern)
{
    NewLift lift;
    lift.pattern = pattern;
    lift.equipmentKey = "bar";
    lift.setup = test::lowerLift();
    lift.setup.startStage = stage;
    lift.startedOn = kPlanDay;
    return lift;
}

/// Squat and hinge from today on, hinge first in the second session.
PlanToStart twoSessions(progression::Stage stage = progression::Stage::Pattern)
{
    return {base::CoachId(2), "Floor", {newLift(Pattern::Squat, stage), newLift(Pattern::Hinge, stage)},
            {{kPlanDay, 1080, 45, {Pattern::Squat, Pattern::Hinge}}, {kPlanDay + 2, 1080, 45, {Pattern::Hinge, Pattern::Squat}}}};
}

/// Cleo, who came today and may train with load.
class Beginner {
public:
    Beginner()
    {
        clients::Client client;
        client.name = "Cleo Marsh";
        client.coach = base::CoachId(2);
        client.startedOn = kPlanDay;
        id = ClientWriter(studio.database()).add(client, kPlanDay).value();
        setClearance("not_needed");
    }

    void setClearance(const char* state) { studio.rows(QStringLiteral("UPDATE clearance SET state = '%1' WHERE client_id = %2").arg(QLatin1String(state)).arg(id.value())); }
    Result<void> start(const PlanToStart& plan) { return starter.start(id, plan, kPlanDay); }
    QString refusalOf(const PlanToStart& plan)
    {
        const auto started = start(plan);
        return started ? QStringLiteral("started") : started.error().message;
    }
    ClientFile file() { return ClientReader(studio.database()).read(id, kPlanDay).value(); }
    sessions::Session firstSession() { return file().next.session.value(); }
    [[nodiscard]] QStringList ownRows()
    {
        const QString own = QString::number(id.value());
        return studio.rows(QStringLiteral("SELECT count(*) FROM lift WHERE client_id = ") + own) + studio.rows(QStringLiteral("SELECT count(*) FROM session WHERE client_id = ") + own) +
               studio.rows(QStringLiteral("SELECT count(*) FROM session_lift p JOIN session s ON s.id = p.session_id WHERE s.client_id = ") + own);
    }

    test::StudioOnTest studio;
    PlanStarter starter{studio.database(), randomSessionCode};
    base::ClientId id;
};

const QStringList kNothing{QStringLiteral("0"), QStringLiteral("0"), QStringLiteral("0")};

}  // namespace

TEST(PlanStarter, BeginsLiftsAndBooksSessionsWithTheirLiftsInOrder)
{
    Beginner cleo;
    ASSERT_TRUE(cleo.start(twoSessions(progression::Stage::BaseLoad)));
    const ClientFile file = cleo.file();
    ASSERT_EQ(file.lifts.size(), 2U);
    EXPECT_EQ(file.lifts[0].lift.machine.state().stage, progression::Stage::BaseLoad);
    const sessions::Session first = cleo.firstSession();
    EXPECT_EQ(first.date, kPlanDay);
    EXPECT_EQ(first.startMinute, 1080);
    EXPECT_EQ(first.minutes, 45);
    EXPECT_EQ(first.coach, base::CoachId(2));
    EXPECT_EQ(first.state, sessions::SessionState::Planned);
    SessionReader reader(cleo.studio.database());
    const base::LiftId squat = test::liftOf(cleo.studio.database(), cleo.id, Pattern::Squat);
    const base::LiftId hinge = test::liftOf(cleo.studio.database(), cleo.id, Pattern::Hinge);
    EXPECT_EQ(reader.plannedLifts(first.id).value(), (std::vector<base::LiftId>{squat, hinge}));
    const auto second = reader.on(kPlanDay + 2).value().front();
    EXPECT_EQ(reader.plannedLifts(second.session.id).value(), (std::vector<base::LiftId>{hinge, squat}));
    EXPECT_NE(second.session.code, first.code);
}

TEST(PlanStarter, ASessionThatNobodyPlannedHasNoPlannedLifts)
{
    test::StudioOnTest studio;
    EXPECT_TRUE(SessionReader(studio.database()).plannedLifts(base::SessionId(1)).value().empty());
}

TEST(PlanStarter, ClosesTheOpenPlan)
{
    Beginner cleo;
    ASSERT_TRUE(ClientWriter(cleo.studio.database()).saveForm(cleo.id, FormKind::StartingPlan, QJsonObject(), kPlanDay));
    ASSERT_TRUE(cleo.start(twoSessions()));
    EXPECT_TRUE(ClientForms(cleo.studio.database()).latest(cleo.id, FormKind::StartingPlan).value()->isFinished);
}

TEST(PlanStarter, NoLoadBeginsBeforeClearance)
{
    for (const char* state : {"recommended", "stop_and_seek", "unanswered"}) {
        Beginner cleo;
        cleo.setClearance(state);
        EXPECT_EQ(cleo.refusalOf(twoSessions(progression::Stage::BaseLoad)), QStringLiteral("Loaded work waits for clearance")) << state;
        EXPECT_EQ(cleo.ownRows(), kNothing) << state;
        EXPECT_EQ(cleo.refusalOf(twoSessions(progression::Stage::Control)), QStringLiteral("started")) << state;
    }
}

TEST(PlanStarter, WhatCannotBeIsRefusedAndNothingIsLeftBehind)
{
    Beginner cleo;
    PlanToStart twice = twoSessions();
    twice.visits[1].date = twice.visits[0].date;
    twice.visits[1].startMinute = 1110;
    EXPECT_EQ(cleo.refusalOf(twice), QStringLiteral("There is a session on 2026-11-24 at that time already"));
    PlanToStart late = twoSessions();
    late.lifts[1].setup.startStage = progression::Stage::LoadBuild;
    EXPECT_TRUE(cleo.refusalOf(late).startsWith(QLatin1String("hinge: "))) << cleo.refusalOf(late).toStdString();
    PlanToStart doubled = twoSessions();
    doubled.lifts[1].pattern = Pattern::Squat;
    EXPECT_EQ(cleo.refusalOf(doubled), QStringLiteral("squat has begun already"));
    EXPECT_EQ(cleo.ownRows(), kNothing);
}

TEST(PlanStarter, ATakenCodeIsAskedForAgain)
{
    Beginner cleo;
    std::vector<std::string> codes{"S1", "S1", "NEW1", "NEW1", "NEW2"};
    PlanStarter starter(cleo.studio.database(), [&codes] {
        const std::string code = codes.front();
        codes.erase(codes.begin());
        return code;
    });
    ASSERT_TRUE(starter.start(cleo.id, twoSessions(), kPlanDay));
    EXPECT_EQ(cleo.firstSession().code, "NEW1");
    PlanStarter hopeless(cleo.studio.database(), [] { return std::string("S1"); });
    const base::ClientId bo = test::clientNamed(cleo.studio.database(), "Bo Arden");
    EXPECT_EQ(hopeless.start(bo, twoSessions(), kPlanDay).error().message, QStringLiteral("No free session code was found"));
}

TEST(PlanStarter, IsTakenBackWhileNothingWasDone)
{
    Beginner cleo;
    EXPECT_FALSE(cleo.starter.canTakeBack(cleo.id).value()) << "there is no plan";
    ASSERT_TRUE(cleo.start(twoSessions()));
    EXPECT_TRUE(cleo.starter.canTakeBack(cleo.id).value());
    ASSERT_TRUE(cleo.starter.takeBack(cleo.id));
    EXPECT_EQ(cleo.ownRows(), kNothing);
    const QStringList caches = cleo.studio.cacheRows();
    cleo.studio.rebuildCaches();
    EXPECT_EQ(cleo.studio.cacheRows(), caches);
    EXPECT_TRUE(cleo.start(twoSessions())) << "it can begin again";
}

TEST(PlanStarter, IsNotTakenBackAfterARecordNorAfterItWasUndone)
{
    Beginner cleo;
    ASSERT_TRUE(cleo.start(twoSessions()));
    RecordWriter writer(cleo.studio.database(), test::someMoment);
    const base::LiftId squat = test::liftOf(cleo.studio.database(), cleo.id, Pattern::Squat);
    const auto recorded = writer.record(cleo.id, cleo.firstSession().id, {{squat, {kPlanDay, test::goodRehearsal()}}});
    ASSERT_TRUE(recorded) << recorded.error().message.toStdString();
    EXPECT_FALSE(cleo.starter.canTakeBack(cleo.id).value());
    ASSERT_TRUE(writer.undo(recorded->act));
    const QStringList before = cleo.ownRows();
    EXPECT_EQ(cleo.starter.takeBack(cleo.id).error().message, QStringLiteral("Something was recorded or printed already: the plan goes on"));
    EXPECT_EQ(cleo.ownRows(), before);
}

TEST(PlanStarter, IsNotTakenBackOnceACardIsPrinted)
{
    Beginner cleo;
    ASSERT_TRUE(cleo.start(twoSessions()));
    RecordWriter writer(cleo.studio.database(), test::someMoment);
    ASSERT_TRUE(writer.setSessionState(cleo.firstSession().id, sessions::SessionState::Printed));
    EXPECT_FALSE(cleo.starter.canTakeBack(cleo.id).value());
    EXPECT_FALSE(cleo.starter.takeBack(cleo.id));
}

TEST(PlanStarter, IsNotTakenBackOnceSomethingWasSaidOfASession)
{
    Beginner cleo;
    ASSERT_TRUE(cleo.start(twoSessions()));
    RecordWriter writer(cleo.studio.database(), test::someMoment);
    const auto said = writer.saveReport(cleo.firstSession().id, {{}, {}, {}, {}, {}, "comes with a friend"});
    ASSERT_TRUE(said) << said.error().message.toStdString();
    EXPECT_FALSE(cleo.starter.canTakeBack(cleo.id).value());
    EXPECT_FALSE(cleo.starter.takeBack(cleo.id));
}

TEST(PlanStarter, RandomCodesAreUnlikeEachOther)
{
    const std::string one = randomSessionCode();
    EXPECT_EQ(one.size(), 8U);
    EXPECT_EQ(one.find_first_of("01IOab"), std::string::npos);
    EXPECT_NE(one, randomSessionCode());
}

TEST(PlanStarter, OneMoreLiftBeginsAndJoinsTheSessionsAhead)
{
    Beginner cleo;
    ASSERT_TRUE(cleo.start(twoSessions()));
    ASSERT_TRUE(cleo.starter.beginLift(cleo.id, newLift(Pattern::SingleLeg), kPlanDay + 1));
    const base::LiftId single = cleo.file().lifts.back().lift.id;
    store::SessionReader reader(cleo.studio.database());
    const auto visits = reader.of(cleo.id).value();
    ASSERT_EQ(visits.size(), 2U);
    const auto later = reader.plannedLifts(visits[0].session.id).value();
    EXPECT_EQ(later.size(), 3U);
    EXPECT_EQ(later.back(), single);
    EXPECT_EQ(reader.plannedLifts(visits[1].session.id).value().size(), 2U) << "a session of an earlier day stays";
    EXPECT_FALSE(cleo.starter.beginLift(cleo.id, newLift(Pattern::SingleLeg), kPlanDay)) << "it has begun";
}

TEST(PlanStarter, OneMoreLoadedLiftWaitsForClearance)
{
    Beginner cleo;
    ASSERT_TRUE(cleo.start(twoSessions()));
    cleo.setClearance("needed");
    EXPECT_FALSE(cleo.starter.beginLift(cleo.id, newLift(Pattern::SingleLeg, progression::Stage::BaseLoad), kPlanDay));
    EXPECT_TRUE(cleo.starter.beginLift(cleo.id, newLift(Pattern::SingleLeg), kPlanDay)) << "without load it may begin";
}

}  // namespace chalk::store
