#pragma once

#include "core/lifts/exercise.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace chalk::clients {

/// The yes-or-no questions of the health intake, in the order in which they are asked. The topics are those of published intakes; the
/// words are in the screens.
enum class HealthQuestion : std::uint8_t {
    HeartOrPressure,    ///< a heart or artery problem, a stroke, tablets for heart or blood pressure
    ChestPain,
    Breathless,         ///< and other signs that go with effort
    FaintOrDizzy,
    DiabetesKidneyLung,
    JointBoneBack,
    OperationOrInjury,  ///< in the last 12 months
    Pregnancy,          ///< or a birth in the last 12 months
    MedicineOrOther,    ///< prescribed medicine, another condition under treatment
    SupervisedOnly,     ///< told to exercise only under supervision
    Smoking,
    FamilyHistory       ///< a parent, brother or sister with heart trouble early in life
};

constexpr int kHealthQuestionCount = 12;

/// What a yes to a question can mean in particular. Several may be marked.
enum class HealthMark : std::uint8_t {
    HeartDisease,
    ArteryDiseaseOrStroke,
    HighBloodPressure,
    ChestPainAtRest,
    ChestPainOnEffort,
    BreathlessOnLightEffort,
    BreathlessAtNight,
    AnkleSwelling,
    Palpitations,
    LegPainOnWalking,
    Fainted,
    Dizzy,
    Diabetes,
    KidneyDisease,
    LungDisease,
    Neck,
    Shoulder,
    Elbow,
    Wrist,
    LowerBack,
    Hip,
    Knee,
    Ankle,
    Osteoporosis,
    Operation,
    Injury,
    Pregnant,
    GaveBirth,
    Medicine,
    OtherCondition,
    Supervised,
    Smokes,
    FamilyHeartTrouble
};

constexpr int kHealthMarkCount = 33;

/// What a mark leads to, the gravest last.
enum class HealthWeight : std::uint8_t {
    Note,          ///< kept and shown, changes nothing
    Limit,         ///< train with care: a caution
    AskDoctor,     ///< a doctor's view first, by common practice; the published algorithm does not ask for it
    KnownDisease,  ///< cardiovascular, metabolic or renal: goes into the published algorithm
    Symptom,       ///< a sign or symptom of one: goes into the published algorithm
    SeekCareNow    ///< a symptom that ends the conversation: medical care now
};

/// The marks that belong to a question, in the order in which they are shown.
[[nodiscard]] std::span<const HealthMark> marksOf(HealthQuestion question);
[[nodiscard]] HealthWeight weightOf(HealthMark mark);
/// The caution that a mark suggests; nothing where it suggests none.
[[nodiscard]] std::optional<lifts::CautionTag> cautionTagOf(HealthMark mark);

[[nodiscard]] std::string_view keyOf(HealthQuestion question);
[[nodiscard]] std::string_view keyOf(HealthMark mark);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<HealthQuestion> healthQuestionOf(std::string_view key);
[[nodiscard]] std::optional<HealthMark> healthMarkOf(std::string_view key);

}  // namespace chalk::clients
