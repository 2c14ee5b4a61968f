#include "core/exchange/block_plan_json.h"

#include "core/exchange/json_writing.h"
#include "core/exchange/studio_fields.h"
#include "core/exchange/word_reading.h"

#include <QJsonArray>

#include <fmt/core.h>

#include <limits>

namespace chalk::exchange {

namespace {

using direction::BlockPlan;
using direction::PlannedLift;
using direction::PlannedWork;
using direction::PlanWeek;

constexpr int kMostSets = 20;
constexpr int kMostRepsOfASet = 100;
constexpr int kLongestRest = 1800;
constexpr int kMostReserve = 10;
constexpr int kWholeShare = 1000;
constexpr int kSmallestShare = 1;
constexpr int kMostExposures = 7;

PlannedWork readWork(const QJsonValue& value, const std::string& path, ObjectReader& outer)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"aim", "sets", "reps", "reps_most", "percent", "rest_s", "reserve", "pause", "test"});
    PlannedWork work;
    work.aim = enumAt<direction::Aim>(reader, "aim", direction::aimOf);
    work.scheme.sets = base::Sets(reader.wholeNumber("sets", 1, kMostSets));
    work.scheme.reps = base::Reps(reader.wholeNumber("reps", 1, kMostRepsOfASet));
    work.repsMost = base::Reps(reader.optionalWholeNumber("reps_most", work.scheme.reps.value(), kMostRepsOfASet).value_or(work.scheme.reps.value()));
    work.scheme.share = base::Milli(reader.decimal("percent", 1, kSmallestShare, kWholeShare));
    work.scheme.rest = base::Seconds(reader.wholeNumber("rest_s", 0, kLongestRest));
    work.scheme.reserve = reader.wholeNumber("reserve", 0, kMostReserve);
    work.isPauseAsked = reader.flag("pause", false);
    work.isTest = reader.flag("test", false);
    if (reader.fault()) {
        outer.take(*reader.fault());
    }
    return work;
}

PlanWeek readPlanWeek(const QJsonValue& value, const std::string& path, ObjectReader& outer)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"monday", "phase", "kind", "work"});
    PlanWeek week;
    week.monday = dayAt(reader, "monday");
    week.phase = enumAt<direction::Phase>(reader, "phase", direction::phaseOf);
    week.kind = enumAt<direction::WeekKind>(reader, "kind", direction::weekKindOf);
    const QJsonArray lifts = reader.array("work");
    for (qsizetype i = 0; i < lifts.size(); ++i) {
        const std::string at = fmt::format("{}[{}]", reader.pathOf("work"), i);
        if (!lifts[i].isArray()) {
            reader.take({at, "must be a list of exposures"});
            break;
        }
        const QJsonArray exposures = lifts[i].toArray();
        auto& work = week.work.emplace_back();
        for (qsizetype j = 0; j < exposures.size(); ++j) {
            work.push_back(readWork(exposures[j], fmt::format("{}[{}]", at, j), reader));
        }
    }
    if (reader.fault()) {
        outer.take(*reader.fault());
    }
    return week;
}

PlannedLift readPlannedLift(const QJsonValue& value, const std::string& path, ObjectReader& outer)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"lift", "role", "exposures"});
    PlannedLift lift;
    lift.lift = base::LiftId(reader.wholeNumber("lift", 1, std::numeric_limits<int>::max()));
    lift.role = enumAt<direction::LiftRole>(reader, "role", direction::liftRoleOf);
    lift.exposures = reader.wholeNumber("exposures", 1, kMostExposures);
    if (reader.fault()) {
        outer.take(*reader.fault());
    }
    return lift;
}

direction::PlanWishes readPlanWishes(ObjectReader& reader)
{
    direction::PlanWishes wishes;
    wishes.direction = enumAt<direction::Direction>(reader, "direction", direction::directionOf);
    wishes.wave = enumAt<direction::Wave>(reader, "wave", direction::waveOf);
    wishes.weeks = reader.wholeNumber("weeks", direction::kLeastWeeks, direction::kMostWeeks);
    wishes.sessionsAWeek = reader.wholeNumber("sessions", 1, kMostExposures);
    wishes.endsWithTest = reader.flag("ends_with_test", false);
    wishes.start = dayAt(reader, "start");
    const QJsonArray lifts = reader.array("lifts");
    for (qsizetype i = 0; i < lifts.size(); ++i) {
        wishes.lifts.push_back(readPlannedLift(lifts[i], fmt::format("{}[{}]", reader.pathOf("lifts"), i), reader));
    }
    return wishes;
}

/// What no single field can tell: Mondays that rise, and work for every lift.
void checkWeeks(const BlockPlan& plan, ObjectReader& reader)
{
    for (std::size_t i = 0; i < plan.weeks.size() && reader.isSound(); ++i) {
        const std::string at = fmt::format("{}[{}]", reader.pathOf("plan"), i);
        if (plan.weeks[i].monday.weekday() != 0) {
            reader.take({at + ".monday", "must be a Monday"});
        } else if (i > 0 && plan.weeks[i].monday <= plan.weeks[i - 1].monday) {
            reader.take({at + ".monday", "must be later than the week before"});
        } else if (plan.weeks[i].work.size() != plan.wishes.lifts.size()) {
            reader.take({at + ".work", "must have a list for each lift"});
        }
    }
}

QJsonObject workJson(const PlannedWork& work)
{
    QJsonObject object;
    put(object, "aim", textOf(keyOf(work.aim)));
    put(object, "sets", work.scheme.sets.value());
    put(object, "reps", work.scheme.reps.value());
    if (work.repsMost != work.scheme.reps) {
        put(object, "reps_most", work.repsMost.value());
    }
    put(object, "percent", work.scheme.share.value() / 10.0);
    put(object, "rest_s", work.scheme.rest.value());
    put(object, "reserve", work.scheme.reserve);
    if (work.isPauseAsked) {
        put(object, "pause", true);
    }
    if (work.isTest) {
        put(object, "test", true);
    }
    return object;
}

QJsonObject planWeekJson(const PlanWeek& week)
{
    QJsonArray lifts;
    for (const auto& exposures : week.work) {
        QJsonArray written;
        for (const PlannedWork& work : exposures) {
            written.append(workJson(work));
        }
        lifts.append(written);
    }
    QJsonObject object;
    put(object, "monday", textOf(week.monday.toString()));
    put(object, "phase", textOf(keyOf(week.phase)));
    put(object, "kind", textOf(keyOf(week.kind)));
    put(object, "work", lifts);
    return object;
}

}  // namespace

JsonResult<BlockPlan> readBlockPlan(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"direction", "wave", "weeks", "sessions", "ends_with_test", "start", "lifts", "plan"});
    BlockPlan plan;
    plan.wishes = readPlanWishes(reader);
    if (const auto fault = reader.isSound() ? faultOf(plan.wishes) : std::nullopt) {
        reader.fail(std::string(fault->field).c_str(), std::string(fault->reason));
    }
    const QJsonArray weeks = reader.array("plan");
    for (qsizetype i = 0; i < weeks.size(); ++i) {
        plan.weeks.push_back(readPlanWeek(weeks[i], fmt::format("{}[{}]", reader.pathOf("plan"), i), reader));
    }
    checkWeeks(plan, reader);
    return resultOf(reader, std::move(plan));
}

QJsonObject toJson(const BlockPlan& plan)
{
    QJsonArray lifts;
    for (const PlannedLift& lift : plan.wishes.lifts) {
        lifts.append(QJsonObject{{QStringLiteral("lift"), static_cast<qint64>(lift.lift.value())},
                                 {QStringLiteral("role"), textOf(keyOf(lift.role))},
                                 {QStringLiteral("exposures"), lift.exposures}});
    }
    QJsonArray weeks;
    for (const PlanWeek& week : plan.weeks) {
        weeks.append(planWeekJson(week));
    }
    QJsonObject object;
    put(object, "direction", textOf(keyOf(plan.wishes.direction)));
    put(object, "wave", textOf(keyOf(plan.wishes.wave)));
    put(object, "weeks", plan.wishes.weeks);
    put(object, "sessions", plan.wishes.sessionsAWeek);
    put(object, "ends_with_test", plan.wishes.endsWithTest);
    put(object, "start", textOf(plan.wishes.start.toString()));
    put(object, "lifts", lifts);
    put(object, "plan", weeks);
    return object;
}

}  // namespace chalk::exchange
