#include "core/exchange/policy_json.h"

#include "core/exchange/equipment_json.h"

#include <QJsonArray>

#include <type_traits>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using progression::Policy;

constexpr int kMostWhole = 100'000;

/// One field of a policy, by name and member; what a member's type means is in the overloads of `read` and `write`.
template <class T>
struct Field {
    const char* name;
    T Policy::*member;
};
template <class T>
Field(const char*, T Policy::*) -> Field<T>;  // clang needs to be told

/// Calls `visit` with every field of a policy.
template <class Visit>
void eachField(Visit&& visit)
{
    visit(Field{"rep_floor", &Policy::repFloor});
    visit(Field{"hard_reps", &Policy::hardReps});
    visit(Field{"rep_ceiling", &Policy::repCeiling});
    visit(Field{"rep_goal", &Policy::repGoal});
    visit(Field{"capacity_min", &Policy::capacityMin});
    visit(Field{"capacity_max", &Policy::capacityMax});
    visit(Field{"reserve", &Policy::reserve});
    visit(Field{"base_sets", &Policy::baseSets});
    visit(Field{"top_sets", &Policy::topSets});
    visit(Field{"least_sets_to_pass", &Policy::leastSetsToPass});
    visit(Field{"base_rest_s", &Policy::baseRest});
    visit(Field{"rest_steps_s", &Policy::restSteps});
    visit(Field{"control_reps", &Policy::controlReps});
    visit(Field{"step_upper", &Policy::stepUpper});
    visit(Field{"step_lower", &Policy::stepLower});
    visit(Field{"jump_cap", &Policy::jumpCap});
    visit(Field{"back_off", &Policy::backOff});
    visit(Field{"miss_limit", &Policy::missLimit});
    visit(Field{"rep_miss_limit", &Policy::repMissLimit});
    visit(Field{"rep_tolerance", &Policy::repTolerance});
    visit(Field{"rest_tolerance_s", &Policy::restTolerance});
    visit(Field{"pain_hold", &Policy::painHold});
    visit(Field{"layoff_days", &Policy::layoffDays});
    visit(Field{"layoff_cuts", &Policy::layoffCuts});
    visit(Field{"lighter_days", &Policy::lighterDays});
    visit(Field{"lighter_sets", &Policy::lighterSets});
    visit(Field{"lighter_cut", &Policy::lighterCut});
    visit(Field{"seconds_per_rep", &Policy::secondsPerRep});
    visit(Field{"metres_per_rep", &Policy::metresPerRep});
}

JsonResult<std::int32_t> whole(const QJsonValue& value, const std::string& path)
{
    return exactDecimal(value, path, 0, -kMostWhole, kMostWhole);
}

template <class T>
JsonResult<T> readAs(const QJsonValue& value, const std::string& path)
{
    if constexpr (std::is_same_v<T, int>) {
        return whole(value, path);
    } else if constexpr (std::is_same_v<T, base::Load>) {
        return exactDecimal(value, path, 2, -lifts::kMaxLoadCenti, lifts::kMaxLoadCenti).map(base::Load::fromCenti);
    } else if constexpr (std::is_same_v<T, base::Milli>) {
        return exactDecimal(value, path, 3, -1'000'000, 1'000'000).map([](std::int32_t milli) { return base::Milli(milli); });
    } else {
        return whole(value, path).map([](std::int32_t number) { return T(number); });
    }
}

template <class T>
JsonResult<std::vector<T>> readList(const QJsonValue& value, const std::string& path)
{
    if (!value.isArray()) {
        return jsonFault(path, "must be a list");
    }
    std::vector<T> list;
    const QJsonArray array = value.toArray();
    for (qsizetype i = 0; i < array.size(); ++i) {
        const auto item = readAs<T>(array[i], fmt::format("{}[{}]", path, i));
        if (!item) {
            return tl::make_unexpected(item.error());
        }
        list.push_back(*item);
    }
    return list;
}

template <class T>
void read(T& member, const QJsonValue& value, ObjectReader& reader, const std::string& path)
{
    if (const auto result = readAs<T>(value, path)) {
        member = *result;
    } else {
        reader.take(result.error());
    }
}

template <class T>
void read(std::vector<T>& member, const QJsonValue& value, ObjectReader& reader, const std::string& path)
{
    if (auto list = readList<T>(value, path)) {
        member = *std::move(list);
    } else {
        reader.take(list.error());
    }
}

template <class T>
void read(std::array<T, 3>& member, const QJsonValue& value, ObjectReader& reader, const std::string& path)
{
    const auto list = readList<T>(value, path);
    if (!list) {
        reader.take(list.error());
    } else if (list->size() != member.size()) {
        reader.take({path, "must name three figures"});
    } else {
        std::copy(list->begin(), list->end(), member.begin());
    }
}

QJsonValue write(int value) { return value; }
QJsonValue write(base::Load value) { return numberOf(value); }
QJsonValue write(base::Milli value) { return static_cast<double>(value.value()) / 1000.0; }
template <class Tag>
QJsonValue write(base::Quantity<Tag> value)
{
    return value.value();
}
template <class List>
QJsonValue writeList(const List& list)
{
    QJsonArray array;
    for (const auto& item : list) {
        array.append(write(item));
    }
    return array;
}
template <class T>
QJsonValue write(const std::vector<T>& list)
{
    return writeList(list);
}
template <class T>
QJsonValue write(const std::array<T, 3>& list)
{
    return writeList(list);
}

/// Refuses names that no field has.
void refuseUnknown(ObjectReader& reader, const QJsonObject& object)
{
    for (auto it = object.constBegin(); it != object.constEnd(); ++it) {
        bool isKnown = it.key() == QLatin1String("pause_s");
        eachField([&it, &isKnown](const auto& field) { isKnown = isKnown || it.key() == QLatin1String(field.name); });
        if (!isKnown) {
            reader.fail(it.key().toUtf8().constData(), "is not a field that is known here");
            return;
        }
    }
}

}  // namespace

JsonResult<Policy> readPolicy(const QJsonValue& value, const std::string& path, const Policy& base)
{
    ObjectReader reader(value, path);
    Policy policy = base;
    refuseUnknown(reader, value.toObject());
    eachField([&reader, &policy](const auto& field) {
        if (reader.has(field.name)) {
            read(policy.*field.member, reader.optional(field.name), reader, reader.pathOf(field.name));
        }
    });
    if (const auto pauseMs = reader.optionalDecimal("pause_s", 3, -1'000'000, 100'000'000)) {
        policy.pauseMs = *pauseMs;
    }
    if (reader.isSound()) {
        if (const auto fault = progression::faultOf(policy)) {
            reader.fail(fault->field.c_str(), fault->reason);
        }
    }
    return resultOf(reader, std::move(policy));
}

QJsonObject differences(const Policy& policy, const Policy& base)
{
    QJsonObject object;
    eachField([&object, &policy, &base](const auto& field) {
        if (policy.*field.member != base.*field.member) {
            object.insert(QLatin1String(field.name), write(policy.*field.member));
        }
    });
    if (policy.pauseMs != base.pauseMs) {
        object.insert(QLatin1String("pause_s"), policy.pauseMs / 1000.0);
    }
    return object;
}

}  // namespace chalk::exchange
