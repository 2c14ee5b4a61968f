#include "core/exchange/plateau_csv.h"

#include <gtest/gtest.h>

#include <QByteArrayList>

#include <string>

namespace chalk::exchange {
namespace {

const QByteArray kColumns =
    "client,lift,date,variant,stage,target_load,target_sets,target_reps,target_rest,load,sets,reps,reps_each,rir,rest,control,pain,deload\n";

QByteArray exposureRow(const char* day, const char* load = "40")
{
    return QByteArray("Tove,squat,") + day + ",A,load,40,3,10,180," + load + ",3,10,10|10|8,2,175,1,0,0\n";
}

/// The fault of a row whose field `column` says `cell`.
std::string faultOfExposure(int column, const char* cell)
{
    QList<QByteArray> cells = exposureRow("2026-11-24").trimmed().split(',');
    cells[column] = cell;
    const auto logs = readExposuresCsv(kColumns + cells.join(',') + "\n");
    return logs ? "" : textOf(logs.error());
}

TEST(PlateauCsv, ReadsAnExposure)
{
    const auto logs = readExposuresCsv(kColumns + exposureRow("2026-11-24", "37.25"));
    ASSERT_TRUE(logs);
    const auto& log = logs->at({"Tove", "squat"});
    ASSERT_EQ(log.size(), 1U);
    const auto& one = log.front();
    EXPECT_EQ(one.date.toString(), "2026-11-24");
    EXPECT_EQ(one.variation, "A");
    EXPECT_EQ(one.stage, progression::Stage::LoadBuild);
    EXPECT_EQ(one.targetLoad.centi(), 4000);
    EXPECT_EQ(one.targetSets.value(), 3);
    EXPECT_EQ(one.targetReps.value(), 10);
    EXPECT_EQ(one.targetRest.value(), 180);
    EXPECT_EQ(one.load.centi(), 3725);
    EXPECT_EQ(one.reps, (std::vector{base::Reps(10), base::Reps(10), base::Reps(8)}));
    EXPECT_EQ(one.reserve, 2);
    EXPECT_EQ(one.rest, base::Seconds(175));
    EXPECT_TRUE(one.isSteady);
    EXPECT_FALSE(one.hasPain || one.isLighterWeek);
}

TEST(PlateauCsv, ReadsEveryStageByEitherKey)
{
    using progression::Stage;
    const std::vector<std::pair<const char*, Stage>> keys{{"base", Stage::BaseLoad}, {"load", Stage::LoadBuild}, {"rep", Stage::RepBuild},
                                                          {"set", Stage::SetBuild},  {"rest", Stage::RestCut},   {"base_load", Stage::BaseLoad},
                                                          {"rest_cut", Stage::RestCut}};
    for (const auto& [key, stage] : keys) {
        const auto logs = readExposuresCsv(kColumns + exposureRow("2026-11-24").replace(",load,", QByteArray("," + QByteArray(key) + ",")));
        ASSERT_TRUE(logs) << key;
        EXPECT_EQ(logs->begin()->second.front().stage, stage) << key;
    }
    EXPECT_EQ(faultOfExposure(4, "pattern"), "line 2, column 25: stage: must be base, load, rep, set or rest");
}

TEST(PlateauCsv, ColumnsStandInAnyOrderAndLogsAreByDate)
{
    const auto logs = readExposuresCsv(
        "note,deload,pain,control,rest,rir,reps_each,reps,sets,load,target_rest,target_reps,target_sets,target_load,stage,variant,date,lift,client\n"
        "x,0,1,0,,,8|8,8,2,41,120,8,2,40,rep,A,2026-11-26,squat,Tove\n"
        "x,0,0,0,,,8|8,8,2,42,120,8,2,40,rep,A,2026-11-24,squat,Tove\n"
        "x,1,0,0,,,8|8,8,2,43,120,8,2,40,rep,A,2026-11-26,squat,Tove\n");
    ASSERT_TRUE(logs) << textOf(logs.error());
    const auto& log = logs->at({"Tove", "squat"});
    EXPECT_EQ(log[0].load.centi(), 4200);
    EXPECT_EQ(log[1].load.centi(), 4100);
    EXPECT_EQ(log[2].load.centi(), 4300);
    EXPECT_TRUE(log[1].hasPain && log[2].isLighterWeek && !log[0].isSteady);
    EXPECT_FALSE(log[0].reserve || log[0].rest);
}

TEST(PlateauCsv, WhatMayHaveBeenTypedIsNoFault)
{
    EXPECT_EQ(faultOfExposure(13, "58"), "");
    EXPECT_EQ(faultOfExposure(13, "-1"), "");
    EXPECT_EQ(faultOfExposure(9, "0"), "");
    EXPECT_TRUE(readExposuresCsv(kColumns + "Tove,squat,2026-11-24,A,load,40,3,10,180,400,3,99,99|10|8,,,1,0,0\n"));
}

TEST(PlateauCsv, NamesTheFieldThatIsWrong)
{
    EXPECT_EQ(faultOfExposure(0, ""), "line 2, column 1: client: must not be empty");
    EXPECT_EQ(faultOfExposure(2, "24.11.2026"), "line 2, column 12: date: must be a day such as 2026-11-25");
    EXPECT_EQ(faultOfExposure(5, "0"), "line 2, column 30: target_load: must be a number from 0.01 to 100000 with two decimals at most");
    EXPECT_EQ(faultOfExposure(10, "2"), "line 2, column 45: sets: must be as many as reps_each has");
    EXPECT_EQ(faultOfExposure(11, "9"), "line 2, column 47: reps: must be the first of reps_each");
    EXPECT_EQ(faultOfExposure(12, "10||8"), "line 2, column 50: reps_each: must be the reps of every set, such as 10|10|8");
    EXPECT_EQ(faultOfExposure(12, "10| 10|8"), "line 2, column 50: reps_each: must be the reps of every set, such as 10|10|8");
    EXPECT_EQ(faultOfExposure(15, "2"), "line 2, column 64: control: must be a whole number from 0 to 1");
}

TEST(PlateauCsv, ReadsTheDaysOfChecks)
{
    const auto checks = readCheckinsCsv("client,lift,check_date,planned_28d,attended_28d\nTove,squat,2026-11-29,8,7\nOsric,bench,2026-11-22,0,0\n");
    ASSERT_TRUE(checks);
    ASSERT_EQ(checks->size(), 2U);
    EXPECT_EQ((*checks)[0].lift, (LiftOfClient{"Tove", "squat"}));
    EXPECT_EQ((*checks)[0].day.date.toString(), "2026-11-29");
    EXPECT_EQ((*checks)[0].day.plannedSessions, 8);
    EXPECT_EQ((*checks)[0].day.attendedSessions, 7);
    EXPECT_EQ((*checks)[1].lift.client, "Osric");
    const auto bad = readCheckinsCsv("client,lift,check_date,planned_28d,attended_28d\nTove,squat,2026-11-29,8,\n");
    ASSERT_FALSE(bad);
    EXPECT_EQ(textOf(bad.error()), "line 2, column 25: attended_28d: must be a whole number from 0 to 999");
}

TEST(PlateauCsv, JudgesInTheOrderOfTheChecks)
{
    const auto logs = readExposuresCsv(kColumns + exposureRow("2026-11-24"));
    const auto checks = readCheckinsCsv("client,lift,check_date,planned_28d,attended_28d\nTove,squat,2026-11-29,8,7\nOsric,bench,2026-11-22,0,0\nTove,squat,2026-11-22,8,7\n");
    const auto judged = judgeAll(*logs, *checks);
    ASSERT_EQ(judged.size(), 3U);
    EXPECT_EQ(judged[0].judgement.reason, plateau::PlateauReason::FewExposures);
    EXPECT_EQ(judged[1].judgement.reason, plateau::PlateauReason::NoExposures);
    EXPECT_EQ(judged[2].judgement.reason, plateau::PlateauReason::NoExposures);
}

}  // namespace
}  // namespace chalk::exchange
