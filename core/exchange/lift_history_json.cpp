#include "core/exchange/lift_history_json.h"

#include "core/exchange/equipment_json.h"
#include "core/exchange/event_json.h"
#include "core/exchange/policy_json.h"

#include <QJsonArray>

#include <algorithm>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using progression::LiftSetup;
using progression::Stage;

base::MassUnit readUnit(ObjectReader& reader)
{
    const std::string unit = reader.text("unit");
    if (unit != "kg" && unit != "lb") {
        reader.fail("unit", "must be kg or lb");
    }
    return unit == "lb" ? base::MassUnit::Pound : base::MassUnit::Kilogram;
}

/// The enumerator that a text field names; `fallback` where it is absent.
template <class Enum, class Find>
Enum readKey(ObjectReader& reader, const char* field, Enum fallback, Find&& find, const char* expected)
{
    if (!reader.has(field)) {
        return fallback;
    }
    const std::optional<Enum> value = find(reader.text(field));
    if (!value) {
        reader.fail(field, expected);
    }
    return value.value_or(fallback);
}

template <class T>
void readInto(T& target, ObjectReader& reader, JsonResult<T> result)
{
    if (result) {
        target = *std::move(result);
    } else {
        reader.take(result.error());
    }
}

LiftSetup readSetup(ObjectReader& reader)
{
    LiftSetup setup;
    setup.unit = readUnit(reader);
    if (const auto region = lifts::regionOf(reader.text("region"))) {
        setup.region = *region;
    } else {
        reader.fail("region", "must be upper or lower");
    }
    if (const auto centi = reader.optionalDecimal("body_mass", 2, 1, lifts::kMaxLoadCenti)) {
        setup.bodyMass = base::Load::fromCenti(*centi);
    }
    setup.kit.bodyShare = base::Milli(reader.optionalDecimal("body_share", 3, 0, 1000).value_or(0));
    setup.kit.measure = readKey(reader, "measure", lifts::Measure::Reps, lifts::measureOf, "must be reps, seconds or metres");
    readInto(setup.kit.equipment, reader, readEquipment(reader.required("equipment"), "equipment"));
    if (const auto centi = reader.optionalDecimal("start_load", 2, -lifts::kMaxLoadCenti, lifts::kMaxLoadCenti)) {
        setup.kit.startLoad = base::Load::fromCenti(*centi);
    }
    setup.startStage = readKey(reader, "stage", Stage::Pattern, progression::stageOf, "must be pattern, control or base_load");
    setup.policy = progression::Policy::defaultsFor(setup.unit);
    if (reader.has("policy")) {
        readInto(setup.policy, reader, readPolicy(reader.optional("policy"), "policy", setup.policy));
    }
    return setup;
}

std::optional<base::Date> readAsOf(ObjectReader& reader, const std::vector<progression::Event>& events)
{
    if (!reader.has("as_of")) {
        return std::nullopt;
    }
    const auto day = base::Date::parse(reader.text("as_of"));
    const auto isAfter = [&day](const progression::Event& event) { return event.date > *day; };
    if (!day) {
        reader.fail("as_of", "must be a day, YYYY-MM-DD");
    } else if (std::any_of(events.begin(), events.end(), isAfter)) {
        reader.fail("as_of", "must not be before the last event");
    }
    return day;
}

QJsonValue numberOrNull(bool isThere, double number)
{
    return isThere ? QJsonValue(number) : QJsonValue(QJsonValue::Null);
}

}  // namespace

JsonResult<LiftHistory> readLiftHistory(const QByteArray& text)
{
    const auto value = parseJson(text);
    if (!value) {
        return tl::make_unexpected(value.error());
    }
    ObjectReader reader(*value, {});
    reader.allowOnly({"unit", "region", "body_mass", "body_share", "measure", "equipment", "start_load", "stage", "policy", "events", "as_of"});
    LiftHistory history;
    history.setup = readSetup(reader);
    readInto(history.events, reader, readEvents(reader.array("events"), "events", history.setup.kit.measure));
    history.asOf = readAsOf(reader, history.events);
    return resultOf(reader, std::move(history));
}

QJsonArray toJson(const progression::RuleList& rules)
{
    QJsonArray names;
    for (const progression::Rule rule : rules) {
        names.append(QLatin1String(progression::nameOf(rule).data(), static_cast<qsizetype>(progression::nameOf(rule).size())));
    }
    return names;
}

QJsonObject toJson(const progression::Prescription& next, const QString& why)
{
    const auto text = [](std::string_view key) { return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size())); };
    const bool isWork = next.kind == progression::PrescriptionKind::Work;
    QStringList flags;
    for (const progression::Flag flag : progression::kFlags) {
        if (next.flags.has(flag)) {
            flags.append(text(progression::keyOf(flag)));
        }
    }
    flags.sort();
    QJsonObject object{{QStringLiteral("kind"), text(progression::keyOf(next.kind))},
            {QStringLiteral("stage"), text(progression::keyOf(next.stage))},
            {QStringLiteral("cycle"), next.cycle},
            {QStringLiteral("load"), numberOrNull(isWork, numberOf(next.load))},
            {QStringLiteral("sets"), numberOrNull(isWork, next.sets.value())},
            {QStringLiteral("reps_low"), numberOrNull(isWork, next.repsLow.value())},
            {QStringLiteral("reps_high"), numberOrNull(isWork, next.repsHigh.value())},
            {QStringLiteral("rest_s"), numberOrNull(isWork, next.rest.value())},
            {QStringLiteral("reserve"), numberOrNull(isWork, next.reserve)},
            {QStringLiteral("pause"), next.isPauseAsked},
            {QStringLiteral("flags"), QJsonArray::fromStringList(flags)},
            {QStringLiteral("rules"), toJson(next.rules)},
            {QStringLiteral("why"), why}};
    if (next.lighterUntil) {
        object.insert(QStringLiteral("lighter_until"), QString::fromStdString(next.lighterUntil->toString()));
    }
    if (next.block) {
        object.insert(QStringLiteral("block"), QJsonObject{{QStringLiteral("week"), next.block->week},
                                                           {QStringLiteral("weeks"), next.block->weeks},
                                                           {QStringLiteral("lighter"), next.block->isLighter},
                                                           {QStringLiteral("test"), next.block->isTest}});
    }
    return object;
}

}  // namespace chalk::exchange
