#include "core/lifts/exercise.h"

#include "core/base/enum_keys.h"

namespace chalk::lifts {

namespace {

constexpr std::array<std::string_view, 10> kEquipmentKeys{"none",       "barbell",         "trap_bar", "dumbbell", "dumbbell_pair",
                                                          "kettlebell", "kettlebell_pair", "bag",      "stack",    "added_to_body"};
constexpr std::array<std::string_view, 6> kStationKeys{"floor", "rack", "bench", "machine", "pull_up_bar", "lane"};
constexpr std::array<std::string_view, 14> kCautionKeys{
    "lower_back", "neck",         "shoulder",  "elbow",          "wrist",        "hip",     "knee",
    "ankle",      "pelvic_floor", "pregnancy", "blood_pressure", "bone_density", "balance", "grip_strength"};

}  // namespace

std::string_view keyOf(EquipmentKind kind)
{
    return base::keyIn(kEquipmentKeys, kind);
}

std::string_view keyOf(Station station)
{
    return base::keyIn(kStationKeys, station);
}

std::string_view keyOf(CautionTag tag)
{
    return base::keyIn(kCautionKeys, tag);
}

std::optional<EquipmentKind> equipmentKindOf(std::string_view key)
{
    return base::enumOf<EquipmentKind>(kEquipmentKeys, key);
}

std::optional<Station> stationOf(std::string_view key)
{
    return base::enumOf<Station>(kStationKeys, key);
}

std::optional<CautionTag> cautionTagOf(std::string_view key)
{
    return base::enumOf<CautionTag>(kCautionKeys, key);
}

}  // namespace chalk::lifts
