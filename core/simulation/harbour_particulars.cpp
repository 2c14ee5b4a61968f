#include "core/simulation/harbour_people.h"

namespace chalk::simulation {

namespace {

void addCaution(studio::DocumentClient& client, const char* part, const char* text, const char* shortText, std::vector<lifts::CautionTag> tags,
                std::optional<base::Date> until = {})
{
    client.cautions.push_back({{}, part, text, shortText, std::move(tags), until});
}

void grant(studio::DocumentClient& client, base::Date on, const char* doctor, const char* reason, const char* limits)
{
    client.clearance = {clients::ClearanceState::Granted, reason, on - 9, on, on + 365, limits, doctor};
}

}  // namespace

void addParticulars(studio::DocumentClient& client, base::Date today)
{
    using lifts::CautionTag;
    const std::string& name = client.client.name;
    if (name == "Joaquin Ferro") {
        addCaution(client, "Lower back", "Disc irritation 2024. Cleared with limits by his doctor: no loaded rounding, hinge stays under 120 kg until the re-screen.",
                   "No loaded rounding. Hinge under 120 kg.", {CautionTag::LowerBack}, today + 80);
        grant(client, today - 104, "Dr Ames", "An old disc irritation", "No loaded rounding, hinge under 120 kg");
    } else if (name == "Adaeze Quill") {
        addCaution(client, "After birth", "Second child in March. No breath-holding; stop if it feels heavy.", "No breath-holding. Stop if it feels heavy.",
                   {CautionTag::PelvicFloor});
    } else if (name == "Hanne Skov-Adler") {
        addCaution(client, "Bone density", "Low bone density. No loaded rounding or twisting; steps stay small.", "No loaded rounding or twisting.", {CautionTag::BoneDensity});
        addCaution(client, "Shoulder", "Left shoulder sore overhead since last week.", "Left shoulder: nothing overhead.", {CautionTag::Shoulder}, today + 28);
    } else if (name == "Lars Pemberley") {
        addCaution(client, "Knee", "Left knee: no deep step. Rails within reach.", "Left knee: no deep step.", {CautionTag::Knee});
        addCaution(client, "Balance", "Unsteady on one leg: a support is always near.", "A support within reach.", {});
        grant(client, today - 180, "Dr Lund", "Blood pressure medicine", "Breathe out on effort");
        addCaution(client, "Blood pressure", "Takes blood pressure medicine. No breath-holding.", "No breath-holding.", {CautionTag::BloodPressure});
    } else if (name == "Beatrix Lowe") {
        addCaution(client, "Knee", "Right knee replaced in 2023: no kneeling, no jumps.", "Right knee: no kneeling.", {CautionTag::Knee});
    } else if (name == "Tomasz Wyre") {
        grant(client, today - 198, "Dr Iyer", "A shoulder repaired last winter", "Pain is the limit");
        addCaution(client, "Shoulder", "Right shoulder repaired last winter: stop before the end of the range.", "Right shoulder: stop short of the end.", {});
    } else if (name == "Osric Bell") {
        client.clearance = {clients::ClearanceState::Recommended, "Two health answers call for a doctor's view before any training", today - 6, {}, {}, {}};
    } else if (name == "Yara Hadley") {
        client.client.awayUntil = today + 9;
        grant(client, today - 36, "Ada Moss, midwife", "A pregnancy", "No lying flat, no breath-holding");
        addCaution(client, "Pregnancy", "Second third of a pregnancy, cleared by her midwife: no lying flat, no breath-holding.", "No lying flat, no breath-holding.",
                   {CautionTag::Pregnancy});
    } else if (name == "Ingrid Sollund") {
        addCaution(client, "Hip", "Left hip aches after long sitting: warm up longer.", "Left hip: longer warm-up.", {CautionTag::Hip});
        client.clearance = {clients::ClearanceState::StopAndSeek, "Palpitations on the evening of her first session back", today - 3, {}, {}, {}};
    } else if (name == "Priya Venn") {
        addCaution(client, "Elbow", "Inner elbow irritated by hard climbing weeks.", "Elbow: no grinding pulls.", {CautionTag::Elbow}, today + 14);
    } else if (name == "Mireille Dacosta") {
        addCaution(client, "Ankle", "Old sprain on the right, stiff in the morning.", "Right ankle: warm it up.", {CautionTag::Ankle});
        addCaution(client, "Grip", "Weak grip on the left since a fracture: straps when needed.", "Left grip: straps when needed.", {CautionTag::GripStrength});
    } else if (name == "Dmitri Oake") {
        addCaution(client, "Neck", "Neck pain after desk days: chin tucked, nothing on the neck.", "Neck: nothing on it.", {CautionTag::Neck});
    } else if (name == "Noor Castell") {
        addCaution(client, "Wrist", "Left wrist sore when bent back under load.", "Left wrist: keep it straight.", {CautionTag::Wrist}, today + 21);
    } else if (name == "Gwen Tarrant") {
        addCaution(client, "Balance", "Dizzy when standing up fast: rises slowly from the floor.", "Rises slowly from the floor.", {CautionTag::Balance});
    }
}

}  // namespace chalk::simulation
