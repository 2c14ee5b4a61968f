#include "core/exchange/plateau_csv.h"

#include "core/plateau/detector.h"

#include <QByteArrayList>

#include <algorithm>
#include <array>
#include <string_view>

namespace chalk::exchange {

namespace {

using plateau::LoggedExposure;
using progression::Stage;

constexpr std::int32_t kMostHundredths = 10'000'000;
constexpr int kMostSetsOfExposure = 99;
constexpr int kMostTargetReps = 999;
constexpr int kMostTypedReps = 9999;
constexpr int kMostReserveOfExposure = 999;
constexpr int kSecondsOfADay = 86'400;
constexpr int kMostSessionsOfACheck = 999;

/// The short keys of the loaded stages, in their order.
constexpr std::array<std::string_view, 5> kShortStages{"base", "load", "rep", "set", "rest"};

Stage stageAt(CsvReader& reader)
{
    const std::string key = reader.text("stage");
    const auto found = std::find(kShortStages.begin(), kShortStages.end(), key);
    const auto stage = found != kShortStages.end() ? std::optional(static_cast<Stage>(progression::numberOf(Stage::BaseLoad) + (found - kShortStages.begin())))
                                                   : progression::stageOf(key);
    if (!stage || !progression::isLoaded(*stage)) {
        reader.fail("stage", "must be base, load, rep, set or rest");
        return Stage::BaseLoad;
    }
    return *stage;
}

/// The reps of every set, which the columns of the first one and of their number must agree with.
std::vector<base::Reps> repsAt(CsvReader& reader)
{
    const int sets = reader.wholeNumber("sets", 1, kMostSetsOfExposure);
    const int first = reader.wholeNumber("reps", 0, kMostTypedReps);
    std::vector<base::Reps> reps;
    for (const QByteArray& part : reader.raw("reps_each").split('|')) {
        bool isNumber = false;
        const int one = part.toInt(&isNumber);
        if (!isNumber || one < 0 || one > kMostTypedReps || part.trimmed().size() != part.size()) {
            reader.fail("reps_each", "must be the reps of every set, such as 10|10|8");
            return {base::Reps(0)};
        }
        reps.emplace_back(one);
    }
    if (reps.front().value() != first) {
        reader.fail("reps", "must be the first of reps_each");
    }
    if (static_cast<int>(reps.size()) != sets) {
        reader.fail("sets", "must be as many as reps_each has");
    }
    return reps;
}

LoggedExposure exposureAt(CsvReader& reader)
{
    LoggedExposure exposure;
    exposure.date = reader.date("date");
    exposure.variation = reader.text("variant");
    exposure.stage = stageAt(reader);
    exposure.targetLoad = base::Load::fromCenti(reader.hundredths("target_load", 1, kMostHundredths));
    exposure.targetSets = base::Sets(reader.wholeNumber("target_sets", 1, kMostSetsOfExposure));
    exposure.targetReps = base::Reps(reader.wholeNumber("target_reps", 1, kMostTargetReps));
    exposure.targetRest = base::Seconds(reader.wholeNumber("target_rest", 0, kSecondsOfADay));
    exposure.load = base::Load::fromCenti(reader.hundredths("load", 0, kMostHundredths));
    exposure.reps = repsAt(reader);
    exposure.reserve = reader.optionalWholeNumber("rir", -kMostReserveOfExposure, kMostReserveOfExposure);
    if (const auto rest = reader.optionalWholeNumber("rest", 0, kSecondsOfADay)) {
        exposure.rest = base::Seconds(*rest);
    }
    exposure.isSteady = reader.flag("control");
    exposure.hasPain = reader.flag("pain");
    exposure.isLighterWeek = reader.flag("deload");
    return exposure;
}

LiftOfClient liftAt(CsvReader& reader)
{
    std::string client = reader.text("client");
    return {std::move(client), reader.text("lift")};
}

}  // namespace

CsvResult<LiftLogs> readExposuresCsv(const QByteArray& text)
{
    const auto table = parseCsv(text);
    if (!table) {
        return tl::make_unexpected(table.error());
    }
    CsvReader reader(*table);
    reader.needs({"client", "lift", "date", "variant", "stage", "target_load", "target_sets", "target_reps", "target_rest", "load", "sets", "reps",
                  "reps_each", "rir", "rest", "control", "pain", "deload"});
    LiftLogs logs;
    while (reader.next()) {
        const LiftOfClient lift = liftAt(reader);
        logs[lift].push_back(exposureAt(reader));
    }
    if (reader.fault()) {
        return tl::make_unexpected(*reader.fault());
    }
    for (auto& [lift, log] : logs) {
        std::stable_sort(log.begin(), log.end(), [](const LoggedExposure& a, const LoggedExposure& b) { return a.date < b.date; });
    }
    return logs;
}

CsvResult<std::vector<LiftCheck>> readCheckinsCsv(const QByteArray& text)
{
    const auto table = parseCsv(text);
    if (!table) {
        return tl::make_unexpected(table.error());
    }
    CsvReader reader(*table);
    reader.needs({"client", "lift", "check_date", "planned_28d", "attended_28d"});
    std::vector<LiftCheck> checks;
    while (reader.next()) {
        LiftCheck check;
        check.lift = liftAt(reader);
        check.day.date = reader.date("check_date");
        check.day.plannedSessions = reader.wholeNumber("planned_28d", 0, kMostSessionsOfACheck);
        check.day.attendedSessions = reader.wholeNumber("attended_28d", 0, kMostSessionsOfACheck);
        checks.push_back(std::move(check));
    }
    return reader.fault() ? CsvResult<std::vector<LiftCheck>>(tl::make_unexpected(*reader.fault())) : std::move(checks);
}

std::vector<JudgedCheck> judgeAll(const LiftLogs& logs, const std::vector<LiftCheck>& checks)
{
    std::map<LiftOfClient, std::vector<plateau::CleanExposure>> cleanLogs;
    for (const auto& [lift, log] : logs) {
        cleanLogs[lift] = plateau::cleaned(log);
    }
    std::vector<JudgedCheck> judged;
    judged.reserve(checks.size());
    for (const LiftCheck& check : checks) {
        const auto& log = cleanLogs[check.lift];
        const plateau::Judgement judgement = plateau::judge(log, check.day);
        judged.push_back({check, judgement, plateau::evidenceFor(judgement, log, check.day)});
    }
    return judged;
}

}  // namespace chalk::exchange
