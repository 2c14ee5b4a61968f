#include "core/exchange/client_plan_json.h"

#include "core/exchange/block_plan_json.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/studio_fields.h"
#include "core/lifts/equipment.h"

#include <QJsonArray>

#include <algorithm>

namespace chalk::exchange {

namespace {

using direction::ClientPlan;
using direction::PlanSingle;

constexpr int kLoadDecimals = 2;
constexpr double kCenti = 100;  // loads are hundredths

JsonResult<PlanSingle> readSingle(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"load", "tested"});
    PlanSingle single;
    single.load = base::Load::fromCenti(reader.decimal("load", kLoadDecimals, 0, lifts::kMaxLoadCenti));
    single.isTested = reader.flag("tested", false);
    return resultOf(reader, single);
}

PlanContent readContent(ObjectReader& reader)
{
    PlanContent content{taken(reader, readBlockPlan(reader.required("plan"), reader.pathOf("plan"))), {}};
    const QJsonArray singles = reader.array("singles");
    for (qsizetype i = 0; i < singles.size() && reader.isSound(); ++i) {
        content.singles.push_back(taken(reader, readSingle(singles[i], fmt::format("{}[{}]", reader.pathOf("singles"), i))));
    }
    return content;
}

ClientPlan readPlan(ObjectReader& reader, const DocumentClient& client, base::Date today)
{
    reader.allowOnly({"begun", "ended", "note", "plan", "singles"});
    ClientPlan plan;
    plan.begunOn = dayAt(reader, "begun");
    plan.endedOn = optionalDayAt(reader, "ended");
    plan.note = proseAt(reader, "note");
    PlanContent content = readContent(reader);
    plan.plan = std::move(content.plan);
    plan.singles = std::move(content.singles);
    if (reader.isSound() && plan.begunOn > today) {
        reader.fail("begun", "lies after the studio's day");
    }
    const auto isMissing = [&client](const direction::PlannedLift& lift) { return lift.lift.value() > static_cast<std::int64_t>(client.lifts.size()); };
    if (std::any_of(plan.plan.wishes.lifts.begin(), plan.plan.wishes.lifts.end(), isMissing)) {
        reader.fail("plan", "names a lift that this client has not");
    }
    if (const auto fault = reader.isSound() ? direction::faultOf(plan) : std::nullopt) {
        reader.take({reader.pathOf(fault->field.c_str()), std::string(fault->reason)});
    }
    return plan;
}

DocumentTest readTest(ObjectReader& reader, const DocumentClient& client)
{
    reader.allowOnly({"lift", "day", "load", "reps", "end", "note"});
    DocumentTest test;
    test.lift = wordAt(reader, "lift", lifts::patternOf, "a pattern");
    test.day = dayAt(reader, "day");
    test.load = base::Load::fromCenti(reader.decimal("load", kLoadDecimals, -lifts::kMaxLoadCenti, lifts::kMaxLoadCenti));
    test.reps = base::Reps(reader.wholeNumber("reps", 1, direction::kMostTestReps));
    test.end = wordAt(reader, "end", direction::testEndOf, "found, pain, too_many, equipment_ends or stopped");
    test.note = proseAt(reader, "note");
    const auto isIts = [&test](const DocumentLift& lift) { return lift.pattern == test.lift; };
    if (reader.isSound() && std::none_of(client.lifts.begin(), client.lifts.end(), isIts)) {
        reader.fail("lift", "is no lift of this client");
    }
    return test;
}

}  // namespace

JsonResult<PlanContent> readPlanContent(const QJsonObject& object, const std::string& path)
{
    ObjectReader reader(object, path);
    reader.allowOnly({"plan", "singles"});
    PlanContent content = readContent(reader);
    return resultOf(reader, std::move(content));
}

QJsonObject planContentToJson(const ClientPlan& plan)
{
    QJsonArray singles;
    for (const PlanSingle& single : plan.singles) {
        QJsonObject one{{QStringLiteral("load"), single.load.centi() / kCenti}};
        if (single.isTested) {
            put(one, "tested", true);
        }
        singles.append(one);
    }
    return {{QStringLiteral("plan"), toJson(plan.plan)}, {QStringLiteral("singles"), singles}};
}

void readDirection(ObjectReader& reader, DocumentClient& client, base::Date today)
{
    if (reader.has("plans")) {
        eachOf(reader, "plans", [&](ObjectReader& item) { client.plans.push_back(readPlan(item, client, today)); });
    }
    if (reader.has("tested_maxima")) {
        eachOf(reader, "tested_maxima", [&](ObjectReader& item) { client.tests.push_back(readTest(item, client)); });
    }
}

QJsonObject toJson(const ClientPlan& plan)
{
    QJsonObject object = planContentToJson(plan);
    put(object, "begun", textOf(plan.begunOn.toString()));
    if (plan.endedOn) {
        put(object, "ended", textOf(plan.endedOn->toString()));
    }
    put(object, "note", textOf(plan.note));
    return object;
}

QJsonObject toJson(const DocumentTest& test)
{
    return {{QStringLiteral("lift"), textOf(lifts::keyOf(test.lift))},
            {QStringLiteral("day"), textOf(test.day.toString())},
            {QStringLiteral("load"), test.load.centi() / kCenti},
            {QStringLiteral("reps"), test.reps.value()},
            {QStringLiteral("end"), textOf(direction::keyOf(test.end))},
            {QStringLiteral("note"), textOf(test.note)}};
}

}  // namespace chalk::exchange
