#include "tests/support/logged_lift.h"

#include <gtest/gtest.h>

#include <cmath>
#include <sstream>

namespace chalk::test {

namespace {

using plateau::LoggedExposure;
using progression::Stage;

const std::map<std::string, Stage>& loadedStages()
{
    static const std::map<std::string, Stage> stages{
        {"base", Stage::BaseLoad}, {"load", Stage::LoadBuild}, {"rep", Stage::RepBuild}, {"set", Stage::SetBuild}, {"rest", Stage::RestCut}};
    return stages;
}

base::Load loadIn(const TableRow& row, const std::string& column)
{
    return base::Load::fromCenti(static_cast<std::int32_t>(std::lround(std::stod(row.at(column)) * 100)));
}

std::vector<base::Reps> repsIn(const std::string& cell)
{
    std::vector<base::Reps> reps;
    std::istringstream parts(cell);
    for (std::string part; std::getline(parts, part, '|');) {
        reps.emplace_back(std::stoi(part));
    }
    return reps;
}

}  // namespace

base::Date firstLoggedDay()
{
    return *base::Date::fromYmd(2026, 1, 5);
}

base::Load loadOf(int units)
{
    return base::Load::fromCenti(100 * units);
}

void setReps(LoggedExposure& exposure, std::vector<int> reps)
{
    exposure.reps.clear();
    for (const int one : reps) {
        exposure.reps.emplace_back(one);
    }
}

LoggedExposure plainExposure(int day)
{
    LoggedExposure exposure;
    exposure.date = firstLoggedDay() + day;
    exposure.variation = "back squat";
    exposure.stage = Stage::LoadBuild;
    exposure.targetLoad = loadOf(40);
    exposure.targetSets = base::Sets(3);
    exposure.targetReps = base::Reps(8);
    exposure.targetRest = base::Seconds(120);
    exposure.load = exposure.targetLoad;
    setReps(exposure, {8, 8, 8});
    exposure.reserve = 2;
    exposure.rest = exposure.targetRest;
    return exposure;
}

std::vector<LoggedExposure> plainLog(int count)
{
    std::vector<LoggedExposure> log;
    for (int i = 0; i < count; ++i) {
        log.push_back(plainExposure(i / 2 * 7 + i % 2 * 3));
    }
    return log;
}

LoggedExposure exposureIn(const TableRow& row)
{
    LoggedExposure exposure;
    exposure.date = *base::Date::parse(row.at("date"));
    exposure.variation = row.at("variant");
    exposure.stage = loadedStages().at(row.at("stage"));
    exposure.targetLoad = loadIn(row, "target_load");
    exposure.targetSets = base::Sets(numberIn(row, "target_sets"));
    exposure.targetReps = base::Reps(numberIn(row, "target_reps"));
    exposure.targetRest = base::Seconds(numberIn(row, "target_rest"));
    exposure.load = loadIn(row, "load");
    exposure.reps = repsIn(row.at("reps_each"));
    if (!row.at("rir").empty()) {
        exposure.reserve = numberIn(row, "rir");
    }
    exposure.rest = base::Seconds(numberIn(row, "rest"));
    exposure.isSteady = numberIn(row, "control") == 1;
    exposure.hasPain = numberIn(row, "pain") == 1;
    exposure.isLighterWeek = numberIn(row, "deload") == 1;
    return exposure;
}

LiftName liftIn(const TableRow& row)
{
    return {row.at("client"), row.at("lift")};
}

std::map<LiftName, std::vector<LoggedExposure>> simulatedLogs()
{
    std::map<LiftName, std::vector<LoggedExposure>> logs;
    for (const TableRow& row : readTable("plateau/exposures.csv")) {
        logs[liftIn(row)].push_back(exposureIn(row));
    }
    return logs;
}

}  // namespace chalk::test
