#include "core/lifts/catalogue_fault.h"

#include <algorithm>
#include <map>
#include <set>

#include <fmt/core.h>

namespace chalk::lifts {

namespace {

/// A field and what is wrong with it.
struct FieldFault {
    const char* field;
    std::string reason;
};
using MaybeFault = std::optional<FieldFault>;
using ByKey = std::map<std::string_view, const Exercise*>;

bool isSnakeCase(const std::string& key)
{
    return !key.empty() && key.front() >= 'a' && key.front() <= 'z' &&
           std::all_of(key.begin(), key.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_'; });
}

bool isPair(EquipmentKind kind)
{
    return kind == EquipmentKind::DumbbellPair || kind == EquipmentKind::KettlebellPair;
}

bool isBodyLoaded(EquipmentKind kind)
{
    return kind == EquipmentKind::None || kind == EquipmentKind::AddedToBody;
}

MaybeFault faultOfNumbers(const Exercise& exercise)
{
    if (exercise.rung < 1) {
        return FieldFault{"rung", "must be 1 or more"};
    }
    if (exercise.pieces != (isPair(exercise.equipment) ? 2 : 1)) {
        return FieldFault{"pieces", "must be 2 for a pair and 1 for anything else"};
    }
    if (exercise.bodyShare.value() < 0 || exercise.bodyShare.value() > 1000) {
        return FieldFault{"body_share", "must be 0 to 1"};
    }
    if (exercise.bodyShare.value() > 0 && !isBodyLoaded(exercise.equipment)) {
        return FieldFault{"body_share", "must be 0 where the equipment is the load"};
    }
    if ((exercise.measure == Measure::Metres) != (exercise.station == Station::Lane)) {
        return FieldFault{"station", "must be the lane for metres, and for nothing else"};
    }
    return std::nullopt;
}

MaybeFault faultOfTexts(const Exercise& exercise)
{
    if (exercise.name.empty()) {
        return FieldFault{"name", "is empty"};
    }
    if (exercise.cues.size() < 2 || exercise.cues.size() > 3) {
        return FieldFault{"cues", "must be two or three"};
    }
    if (std::any_of(exercise.cues.begin(), exercise.cues.end(), [](const std::string& cue) { return cue.empty(); })) {
        return FieldFault{"cues", "must not be empty texts"};
    }
    return std::nullopt;
}

MaybeFault faultOfCautions(const Exercise& exercise)
{
    std::set<CautionTag> seen;
    for (const CautionTag tag : exercise.care) {
        if (!seen.insert(tag).second) {
            return FieldFault{"care", fmt::format("names {} twice", keyOf(tag))};
        }
    }
    for (const CautionTag tag : exercise.ruledOutBy) {
        if (!seen.insert(tag).second) {
            return FieldFault{"ruled_out_by", fmt::format("names {} twice, or care names it too", keyOf(tag))};
        }
    }
    return std::nullopt;
}

MaybeFault faultOfNeighbours(const Exercise& exercise, bool isHarder, const ByKey& all)
{
    const char* field = isHarder ? "harder" : "easier";
    const std::vector<std::string>& keys = isHarder ? exercise.harder : exercise.easier;
    std::set<std::string_view> seen;
    for (const std::string& key : keys) {
        if (!seen.insert(key).second) {
            return FieldFault{field, fmt::format("names {} twice", key)};
        }
        const auto found = all.find(key);
        if (found == all.end()) {
            return FieldFault{field, fmt::format("names {}, which is not there", key)};
        }
        const Exercise& other = *found->second;
        if (other.pattern != exercise.pattern) {
            return FieldFault{field, fmt::format("names {}, which is of another pattern", key)};
        }
        if (isHarder ? other.rung <= exercise.rung : other.rung >= exercise.rung) {
            return FieldFault{field, fmt::format("names {}, whose rung is on the other side", key)};
        }
        const std::vector<std::string>& back = isHarder ? other.easier : other.harder;
        if (std::find(back.begin(), back.end(), exercise.key) == back.end()) {
            return FieldFault{field, fmt::format("names {}, which does not name it in return", key)};
        }
    }
    return std::nullopt;
}

MaybeFault faultOfOne(const Exercise& exercise, const ByKey& all)
{
    for (const auto& check : {faultOfTexts, faultOfNumbers, faultOfCautions}) {
        if (auto fault = check(exercise)) {
            return fault;
        }
    }
    if (auto fault = faultOfNeighbours(exercise, false, all)) {
        return fault;
    }
    return faultOfNeighbours(exercise, true, all);
}

}  // namespace

std::optional<CatalogueFault> faultOf(std::span<const Exercise> exercises)
{
    ByKey all;
    for (std::size_t i = 0; i < exercises.size(); ++i) {
        if (!isSnakeCase(exercises[i].key)) {
            return CatalogueFault{i, "key", "must be lower-case letters, digits and _"};
        }
        if (!all.emplace(exercises[i].key, &exercises[i]).second) {
            return CatalogueFault{i, "key", exercises[i].key + " is there twice"};
        }
    }
    for (std::size_t i = 0; i < exercises.size(); ++i) {
        if (auto fault = faultOfOne(exercises[i], all)) {
            return CatalogueFault{i, fault->field, exercises[i].key + ": " + fault->reason};
        }
    }
    return std::nullopt;
}

}  // namespace chalk::lifts
