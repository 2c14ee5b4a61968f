#pragma once

#include "core/base/quantity.h"
#include "core/lifts/pattern.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::lifts {

/// What an exercise is loaded with. `None` is the unloaded movement.
enum class EquipmentKind : std::uint8_t { None, Barbell, TrapBar, Dumbbell, DumbbellPair, Kettlebell, KettlebellPair, Bag, Stack, AddedToBody };

/// Where in the studio an exercise is done; the week and the rotation count these.
enum class Station : std::uint8_t { Floor, Rack, Bench, Machine, PullUpBar, Lane };

/// Body regions and conditions that a caution can name, and that can rule an exercise out.
enum class CautionTag : std::uint8_t {
    LowerBack,
    Neck,
    Shoulder,
    Elbow,
    Wrist,
    Hip,
    Knee,
    Ankle,
    PelvicFloor,
    Pregnancy,
    BloodPressure,
    BoneDensity,
    Balance,
    GripStrength
};

/// One exercise of the catalogue.
struct Exercise {
    std::string key;   ///< stable, snake_case, unique: `back_squat`
    std::string name;  ///< for people: `Back squat`
    Pattern pattern = Pattern::Squat;
    Region region = Region::Lower;
    Measure measure = Measure::Reps;
    EquipmentKind equipment = EquipmentKind::None;
    Station station = Station::Floor;
    int rung = 0;                         ///< difficulty inside the pattern, 1 the easiest
    base::Milli bodyShare;                ///< share of the body mass that is lifted, 0 to 1000
    int pieces = 1;                       ///< 2 where a pair is held: shown as `2 × 12 kg`
    std::vector<std::string> easier;      ///< keys of easier neighbours in the same pattern
    std::vector<std::string> harder;      ///< keys of harder neighbours in the same pattern
    std::vector<std::string> cues;        ///< two or three, in plain words
    std::vector<CautionTag> care;         ///< to be taken care with
    std::vector<CautionTag> ruledOutBy;   ///< a client's caution that takes the exercise out of the plan
};

[[nodiscard]] std::string_view keyOf(EquipmentKind kind);
[[nodiscard]] std::string_view keyOf(Station station);
[[nodiscard]] std::string_view keyOf(CautionTag tag);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<EquipmentKind> equipmentKindOf(std::string_view key);
[[nodiscard]] std::optional<Station> stationOf(std::string_view key);
[[nodiscard]] std::optional<CautionTag> cautionTagOf(std::string_view key);

}  // namespace chalk::lifts
