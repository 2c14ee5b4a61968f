#include "core/store/lift_codec.h"

#include "core/exchange/equipment_json.h"
#include "core/exchange/event_json.h"
#include "core/exchange/policy_json.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStringList>

namespace chalk::store {

namespace {

using progression::EventBody;
using progression::Kit;
using progression::LiftState;
using progression::Stage;

QString compact(const QJsonObject& object)
{
    return QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
}

QJsonObject parsed(const QString& text)
{
    return QJsonDocument::fromJson(text.toUtf8()).object();
}

QLatin1String key(const char* name)
{
    return QLatin1String(name);
}

template <class T>
void putIf(QJsonObject& object, const char* name, const std::optional<T>& value)
{
    if (value) {
        object.insert(key(name), value->value());
    }
}

void putIf(QJsonObject& object, const char* name, const std::optional<base::Load>& load)
{
    if (load) {
        object.insert(key(name), load->centi());
    }
}

template <class T>
std::optional<T> numberIn(const QJsonObject& object, const char* name)
{
    const QJsonValue value = object.value(key(name));
    return value.isDouble() ? std::optional(T(value.toInt())) : std::nullopt;
}

std::optional<base::Load> loadIn(const QJsonObject& object, const char* name)
{
    const QJsonValue value = object.value(key(name));
    return value.isDouble() ? std::optional(base::Load::fromCenti(value.toInt())) : std::nullopt;
}

QJsonObject runJson(const progression::BlockRun& run)
{
    const QJsonObject plan = exchange::toJson({base::Date(), *run.block}, lifts::Measure::Reps);
    return {{key("plan"), plan},
            {key("single_centi"), run.single.centi()},
            {key("week"), run.week.daysSince1970()},
            {key("done"), run.done}};
}

std::optional<progression::BlockRun> runOf(const QJsonObject& object)
{
    const auto event = exchange::readEvent(object.value(key("plan")), "block", lifts::Measure::Reps);
    const auto* block = event ? std::get_if<progression::Block>(&event->body) : nullptr;
    if (block == nullptr || block->weeks.empty()) {
        return std::nullopt;
    }
    return progression::BlockRun{std::make_shared<const progression::Block>(*block), base::Load::fromCenti(object.value(key("single_centi")).toInt()),
                                 base::Date::fromDays(object.value(key("week")).toInt()), object.value(key("done")).toInt()};
}

/// Whether everything is there that the rules of the stage, or of the one that it returns to, read.
bool isWhole(const LiftState& state)
{
    const Stage stage = state.returnStage.value_or(state.stage);
    switch (stage) {
        case Stage::Pattern:
        case Stage::Control:
            return !state.returnStage;
        case Stage::BaseLoad:
        case Stage::LoadBuild:
        case Stage::RepBuild:
            return state.load.has_value();
        case Stage::SetBuild:
            return state.load && state.holdReps && state.sets;
        case Stage::RestCut:
            return state.load && state.holdReps && state.holdSets && state.rest;
    }
    return false;
}

}  // namespace

QString qstringOf(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString textOfKit(const Kit& kit)
{
    QJsonObject object{{key("equipment"), exchange::toJson(kit.equipment)},
                       {key("body_share_milli"), kit.bodyShare.value()},
                       {key("measure"), qstringOf(lifts::keyOf(kit.measure))},
                       {key("exercise"), qstringOf(kit.exerciseKey)},
                       {key("pieces"), kit.pieces}};
    putIf(object, "start_load_centi", kit.startLoad);
    return compact(object);
}

std::optional<Kit> kitOf(const QString& text)
{
    const QJsonObject object = parsed(text);
    const auto equipment = exchange::readEquipment(object.value(key("equipment")), "equipment");
    const auto measure = lifts::measureOf(object.value(key("measure")).toString().toStdString());
    if (!equipment || !measure) {
        return std::nullopt;
    }
    return Kit{*equipment,
               base::Milli(object.value(key("body_share_milli")).toInt()),
               *measure,
               loadIn(object, "start_load_centi"),
               object.value(key("exercise")).toString().toStdString(),
               object.value(key("pieces")).toInt(1)};
}

QString textOfPolicy(const progression::Policy& policy, base::MassUnit unit)
{
    return compact(exchange::differences(policy, progression::Policy::defaultsFor(unit)));
}

std::optional<progression::Policy> policyOf(const QString& text, base::MassUnit unit)
{
    const auto policy = exchange::readPolicy(parsed(text), "policy", progression::Policy::defaultsFor(unit));
    return policy ? std::optional(*policy) : std::nullopt;
}

QString textOfState(const LiftState& state)
{
    QJsonObject object{{key("stage"), progression::numberOf(state.stage)},
                       {key("cycle"), state.cycle},
                       {key("hold"), state.isOnHold},
                       {key("misses"), state.misses},
                       {key("best"), state.best.value()},
                       {key("return_cut"), state.isReturnCut},
                       {key("pause"), state.isPauseAsked},
                       {key("flags"), state.flags.bits()},
                       {key("gap_done"), state.isGapDealtWith}};
    putIf(object, "load", state.load);
    putIf(object, "last_made", state.lastMade);
    putIf(object, "bridge", state.bridgeTarget);
    putIf(object, "hold_reps", state.holdReps);
    putIf(object, "sets", state.sets);
    putIf(object, "hold_sets", state.holdSets);
    putIf(object, "rest", state.rest);
    if (state.returnStage) {
        object.insert(key("return_stage"), progression::numberOf(*state.returnStage));
    }
    if (state.lastWork) {
        object.insert(key("last_work"), state.lastWork->daysSince1970());
    }
    if (state.lighterUntil) {
        object.insert(key("lighter_until"), state.lighterUntil->daysSince1970());
    }
    if (state.block) {
        object.insert(key("block"), runJson(*state.block));
    }
    return compact(object);
}

std::optional<LiftState> stateOf(const QString& text)
{
    const QJsonObject object = parsed(text);
    const int stage = object.value(key("stage")).toInt();
    if (stage < 1 || stage > 7) {
        return std::nullopt;
    }
    LiftState state;
    state.stage = static_cast<Stage>(stage);
    state.cycle = object.value(key("cycle")).toInt(1);
    state.isOnHold = object.value(key("hold")).toBool();
    state.misses = object.value(key("misses")).toInt();
    state.best = base::Reps(object.value(key("best")).toInt());
    state.isReturnCut = object.value(key("return_cut")).toBool();
    state.isPauseAsked = object.value(key("pause")).toBool();
    state.flags = progression::Flags::fromBits(static_cast<std::uint8_t>(object.value(key("flags")).toInt()));
    state.isGapDealtWith = object.value(key("gap_done")).toBool();
    state.load = loadIn(object, "load");
    state.lastMade = loadIn(object, "last_made");
    state.bridgeTarget = numberIn<base::Reps>(object, "bridge");
    state.holdReps = numberIn<base::Reps>(object, "hold_reps");
    state.sets = numberIn<base::Sets>(object, "sets");
    state.holdSets = numberIn<base::Sets>(object, "hold_sets");
    state.rest = numberIn<base::Seconds>(object, "rest");
    if (const auto number = numberIn<int>(object, "return_stage")) {
        state.returnStage = static_cast<Stage>(*number);
    }
    if (const auto days = numberIn<int>(object, "last_work")) {
        state.lastWork = base::Date::fromDays(*days);
    }
    if (const auto days = numberIn<int>(object, "lighter_until")) {
        state.lighterUntil = base::Date::fromDays(*days);
    }
    if (object.contains(key("block"))) {
        state.block = runOf(object.value(key("block")).toObject());
        if (!state.block) {
            return std::nullopt;
        }
    }
    return isWhole(state) ? std::optional(state) : std::nullopt;
}

QString textOfRules(const progression::RuleList& rules)
{
    QStringList names;
    for (const progression::Rule rule : rules) {
        names.append(qstringOf(progression::nameOf(rule)));
    }
    return names.join(QLatin1Char(' '));
}

progression::RuleList rulesOf(const QString& text)
{
    progression::RuleList rules;
    for (const QString& name : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        if (const auto rule = progression::ruleOf(name.toStdString())) {
            rules.add(*rule);
        }
    }
    return rules;
}

QString textOfBody(const EventBody& body)
{
    if (std::holds_alternative<progression::Exposure>(body)) {
        return {};
    }
    return compact(exchange::toJson({base::Date(), body}, lifts::Measure::Reps));
}

std::optional<EventBody> bodyOf(const QString& type, const QString& text, int pain)
{
    if (type == key("exposure")) {
        return progression::Exposure{pain, {}};
    }
    const auto event = exchange::readEvent(parsed(text), "event", lifts::Measure::Reps, {true, true});
    return event ? std::optional(event->body) : std::nullopt;
}

base::MassUnit unitOf(const QString& text)
{
    return text == key("lb") ? base::MassUnit::Pound : base::MassUnit::Kilogram;
}

QString textOfUnit(base::MassUnit unit)
{
    return unit == base::MassUnit::Pound ? QStringLiteral("lb") : QStringLiteral("kg");
}

}  // namespace chalk::store
