#include "core/clients/health_question.h"

#include "core/base/enum_keys.h"

namespace chalk::clients {

namespace {

using lifts::CautionTag;

struct MarkRow {
    HealthMark mark;
    std::string_view key;
    HealthQuestion question;
    HealthWeight weight;
    std::optional<CautionTag> caution;
};

/// In the order of the enumeration; the rows of a question stand together. Which diseases and which symptoms count is from the published
/// algorithm (Riebe et al. 2015: cardiac, peripheral vascular and cerebrovascular disease, diabetes, renal disease; lung disease and high
/// blood pressure alone no longer refer). The rest is common practice, on the cautious side.
constexpr std::array<MarkRow, kHealthMarkCount> kMarks{{
    {HealthMark::HeartDisease, "heart_disease", HealthQuestion::HeartOrPressure, HealthWeight::KnownDisease, std::nullopt},
    {HealthMark::ArteryDiseaseOrStroke, "artery_disease_or_stroke", HealthQuestion::HeartOrPressure, HealthWeight::KnownDisease, std::nullopt},
    {HealthMark::HighBloodPressure, "high_blood_pressure", HealthQuestion::HeartOrPressure, HealthWeight::Limit, CautionTag::BloodPressure},
    {HealthMark::ChestPainAtRest, "chest_pain_at_rest", HealthQuestion::ChestPain, HealthWeight::SeekCareNow, std::nullopt},
    {HealthMark::ChestPainOnEffort, "chest_pain_on_effort", HealthQuestion::ChestPain, HealthWeight::Symptom, std::nullopt},
    {HealthMark::BreathlessOnLightEffort, "breathless_on_light_effort", HealthQuestion::Breathless, HealthWeight::Symptom, std::nullopt},
    {HealthMark::BreathlessAtNight, "breathless_at_night", HealthQuestion::Breathless, HealthWeight::Symptom, std::nullopt},
    {HealthMark::AnkleSwelling, "ankle_swelling", HealthQuestion::Breathless, HealthWeight::Symptom, std::nullopt},
    {HealthMark::Palpitations, "palpitations", HealthQuestion::Breathless, HealthWeight::Symptom, std::nullopt},
    {HealthMark::LegPainOnWalking, "leg_pain_on_walking", HealthQuestion::Breathless, HealthWeight::Symptom, std::nullopt},
    {HealthMark::Fainted, "fainted", HealthQuestion::FaintOrDizzy, HealthWeight::SeekCareNow, CautionTag::Balance},
    {HealthMark::Dizzy, "dizzy", HealthQuestion::FaintOrDizzy, HealthWeight::Symptom, CautionTag::Balance},
    {HealthMark::Diabetes, "diabetes", HealthQuestion::DiabetesKidneyLung, HealthWeight::KnownDisease, std::nullopt},
    {HealthMark::KidneyDisease, "kidney_disease", HealthQuestion::DiabetesKidneyLung, HealthWeight::KnownDisease, std::nullopt},
    {HealthMark::LungDisease, "lung_disease", HealthQuestion::DiabetesKidneyLung, HealthWeight::Limit, std::nullopt},
    {HealthMark::Neck, "neck", HealthQuestion::JointBoneBack, HealthWeight::Limit, CautionTag::Neck},
    {HealthMark::Shoulder, "shoulder", HealthQuestion::JointBoneBack, HealthWeight::Limit, CautionTag::Shoulder},
    {HealthMark::Elbow, "elbow", HealthQuestion::JointBoneBack, HealthWeight::Limit, CautionTag::Elbow},
    {HealthMark::Wrist, "wrist", HealthQuestion::JointBoneBack, HealthWeight::Limit, CautionTag::Wrist},
    {HealthMark::LowerBack, "lower_back", HealthQuestion::JointBoneBack, HealthWeight::Limit, CautionTag::LowerBack},
    {HealthMark::Hip, "hip", HealthQuestion::JointBoneBack, HealthWeight::Limit, CautionTag::Hip},
    {HealthMark::Knee, "knee", HealthQuestion::JointBoneBack, HealthWeight::Limit, CautionTag::Knee},
    {HealthMark::Ankle, "ankle", HealthQuestion::JointBoneBack, HealthWeight::Limit, CautionTag::Ankle},
    {HealthMark::Osteoporosis, "osteoporosis", HealthQuestion::JointBoneBack, HealthWeight::Limit, CautionTag::BoneDensity},
    {HealthMark::Operation, "operation", HealthQuestion::OperationOrInjury, HealthWeight::AskDoctor, std::nullopt},
    {HealthMark::Injury, "injury", HealthQuestion::OperationOrInjury, HealthWeight::Limit, std::nullopt},
    {HealthMark::Pregnant, "pregnant", HealthQuestion::Pregnancy, HealthWeight::AskDoctor, CautionTag::Pregnancy},
    {HealthMark::GaveBirth, "gave_birth", HealthQuestion::Pregnancy, HealthWeight::Limit, CautionTag::PelvicFloor},
    {HealthMark::Medicine, "medicine", HealthQuestion::MedicineOrOther, HealthWeight::Note, std::nullopt},
    {HealthMark::OtherCondition, "other_condition", HealthQuestion::MedicineOrOther, HealthWeight::Limit, std::nullopt},
    {HealthMark::Supervised, "supervised", HealthQuestion::SupervisedOnly, HealthWeight::AskDoctor, std::nullopt},
    {HealthMark::Smokes, "smokes", HealthQuestion::Smoking, HealthWeight::Note, std::nullopt},
    {HealthMark::FamilyHeartTrouble, "family_heart_trouble", HealthQuestion::FamilyHistory, HealthWeight::Note, std::nullopt},
}};

constexpr std::array<std::string_view, kHealthQuestionCount> kQuestionKeys{
    "heart_or_pressure", "chest_pain", "breathless",        "faint_or_dizzy",  "diabetes_kidney_lung", "joint_bone_back",
    "operation_or_injury", "pregnancy", "medicine_or_other", "supervised_only", "smoking",              "family_history"};

/// The marks alone, so that those of a question are a stretch of an array.
constexpr std::array<HealthMark, kHealthMarkCount> marksAlone()
{
    std::array<HealthMark, kHealthMarkCount> marks{};
    for (std::size_t i = 0; i < kMarks.size(); ++i) {
        marks[i] = kMarks[i].mark;
    }
    return marks;
}

constexpr std::array<HealthMark, kHealthMarkCount> kMarksAlone = marksAlone();

const MarkRow& rowOf(HealthMark mark)
{
    return kMarks[static_cast<std::size_t>(mark)];
}

}  // namespace

std::span<const HealthMark> marksOf(HealthQuestion question)
{
    const auto isAsked = [question](const MarkRow& row) { return row.question == question; };
    const auto first = std::find_if(kMarks.begin(), kMarks.end(), isAsked);
    const auto last = std::find_if_not(first, kMarks.end(), isAsked);
    return std::span(kMarksAlone).subspan(static_cast<std::size_t>(first - kMarks.begin()), static_cast<std::size_t>(last - first));
}

HealthWeight weightOf(HealthMark mark)
{
    return rowOf(mark).weight;
}

std::optional<lifts::CautionTag> cautionTagOf(HealthMark mark)
{
    return rowOf(mark).caution;
}

std::string_view keyOf(HealthQuestion question)
{
    return base::keyIn(kQuestionKeys, question);
}

std::string_view keyOf(HealthMark mark)
{
    return rowOf(mark).key;
}

std::optional<HealthQuestion> healthQuestionOf(std::string_view key)
{
    return base::enumOf<HealthQuestion>(kQuestionKeys, key);
}

std::optional<HealthMark> healthMarkOf(std::string_view key)
{
    const auto found = std::find_if(kMarks.begin(), kMarks.end(), [key](const MarkRow& row) { return row.key == key; });
    return found == kMarks.end() ? std::nullopt : std::optional(found->mark);
}

}  // namespace chalk::clients
