#include "core/store/lift_log_codec.h"

#include "core/checkin/lift_log.h"
#include "core/store/history_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

namespace chalk::store {

namespace {

using plateau::LoggedExposure;

LoggedExposure fullRow()
{
    LoggedExposure row;
    row.date = *base::Date::parse("2026-11-24");
    row.variation = "1";
    row.stage = progression::Stage::RestCut;
    row.targetLoad = base::Load::fromCenti(8250);
    row.targetSets = base::Sets(5);
    row.targetReps = base::Reps(12);
    row.targetRest = base::Seconds(90);
    row.load = base::Load::fromCenti(0);
    row.reps = {base::Reps(12), base::Reps(0), base::Reps(3333)};
    row.reserve = 0;
    row.rest = base::Seconds(3600);
    row.isSteady = false;
    row.hasPain = true;
    row.isLighterWeek = true;
    return row;
}

bool isSame(const LoggedExposure& a, const LoggedExposure& b)
{
    return a.date == b.date && a.variation == b.variation && a.stage == b.stage && a.targetLoad == b.targetLoad && a.targetSets == b.targetSets &&
           a.targetReps == b.targetReps && a.targetRest == b.targetRest && a.load == b.load && a.reps == b.reps && a.reserve == b.reserve &&
           a.rest == b.rest && a.isSteady == b.isSteady && a.hasPain == b.hasPain && a.isLighterWeek == b.isLighterWeek && a.planSingle == b.planSingle;
}

/// The log that is kept of a lift.
std::vector<LoggedExposure> keptLog(test::StudioOnTest& studio, base::LiftId lift)
{
    Statement row(studio.database(), QStringLiteral("SELECT log FROM lift_log WHERE lift_id = ?"));
    EXPECT_TRUE(row.run(lift) && row.next());
    return loggedIn(row.bytes(0)).value();
}

}  // namespace

TEST(LiftLogCodec, EveryFieldComesBack)
{
    LoggedExposure plain = fullRow();
    plain.reserve.reset();
    plain.rest.reset();
    plain.isSteady = true;
    plain.hasPain = false;
    plain.isLighterWeek = false;
    plain.variation = "0";
    QByteArray log;
    addExposure(log, plain);
    addSwap(log);
    addExposure(log, fullRow());
    const auto read = loggedIn(log);
    ASSERT_TRUE(read);
    ASSERT_EQ(read->size(), 2U);
    EXPECT_TRUE(isSame((*read)[0], plain));
    EXPECT_TRUE(isSame((*read)[1], fullRow()));
    EXPECT_TRUE(loggedIn({})->empty());
    LoggedExposure planned = plain;
    planned.planSingle = base::Load::fromCenti(10250);
    QByteArray both;
    addExposure(both, planned);
    addExposure(both, plain);
    const auto inPlan = loggedIn(both);
    ASSERT_TRUE(inPlan);
    ASSERT_EQ(inPlan->size(), 2U);
    EXPECT_TRUE(isSame((*inPlan)[0], planned));
    EXPECT_TRUE(isSame((*inPlan)[1], plain));
}

TEST(LiftLogCodec, WhatIsDamagedIsNotRead)
{
    QByteArray log;
    addExposure(log, fullRow());
    for (int bytes = 1; bytes < log.size(); ++bytes) {
        EXPECT_FALSE(loggedIn(log.left(bytes))) << bytes;
    }
    for (const char mark : {'\0', '\3', '\x7f'}) {
        QByteArray wrong = log;
        wrong[0] = mark;
        EXPECT_FALSE(loggedIn(wrong));
    }
    QByteArray stage = log;
    stage[1] = 2;
    EXPECT_FALSE(loggedIn(stage)) << "a learning stage has no log";
}

TEST(LiftLogCodec, WhatIsKeptIsWhatAReplayGives)
{
    test::StudioOnTest studio;
    const base::ClientId ada = test::clientNamed(studio.database(), "Ada Lund");
    for (const lifts::Pattern pattern : {lifts::Pattern::Squat, lifts::Pattern::Hinge}) {
        const base::LiftId lift = test::liftOf(studio.database(), ada, pattern);
        EventLog events(studio.database());
        const auto fresh = LiftCache(studio.database(), events).readFresh(lift);
        ASSERT_TRUE(fresh);
        std::vector<progression::Event> done;
        for (const LogEntry& entry : events.presentEntries(lift)) {
            done.push_back(entry.event);
        }
        const auto replayed = checkin::logOf(fresh->machine, done);
        const auto kept = keptLog(studio, lift);
        ASSERT_FALSE(replayed.empty());
        ASSERT_EQ(kept.size(), replayed.size());
        for (std::size_t i = 0; i < kept.size(); ++i) {
            EXPECT_TRUE(isSame(kept[i], replayed[i])) << i;
        }
    }
}

}  // namespace chalk::store
