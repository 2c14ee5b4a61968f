#include "core/simulation/harbour_facts.h"

#include <algorithm>
#include <cassert>

namespace chalk::simulation {

namespace {

using clients::HealthMark;
using clients::HealthQuestion;
using lifts::EquipmentKind;

constexpr auto kWoman = clients::NormSex::Female;
constexpr auto kMan = clients::NormSex::Male;

std::vector<PersonFacts> factsOfInesPeople()
{
    return {
        {"Joaquin Ferro", kMan, 1790, "he", "Lifted in a club in his twenties, nothing since the back went", "Rosa Ferro, wife", false,
         {{HealthQuestion::JointBoneBack, {HealthMark::LowerBack}, "A disc, two years ago"}}},
        {"Adaeze Quill", kWoman, 1680, "she", "Ran two half marathons before the children", "Femi Quill, husband", false,
         {{HealthQuestion::Pregnancy, {HealthMark::GaveBirth}, "Second child in March"}}},
        {"Callum Strand", kMan, 1810, "he", "Football at school", "Moira Strand, mother", false,
         {{HealthQuestion::FamilyHistory, {HealthMark::FamilyHeartTrouble}, "Grandfather, at 49"}}},
        {"Marit Eskelin", kWoman, 1660, "she", "Walks every day, has never lifted", "Aino Eskelin, sister", false, {}, {}, 0, {EquipmentKind::Kettlebell}},
        {"Sefa Reid", kWoman, 1740, "", "Rows four times a week", "Tui Reid, partner", true, {}},
        {"Hanne Skov-Adler", kWoman, 1640, "she", "Gymnastics as a girl, gardening", "Per Skov, husband", false,
         {{HealthQuestion::JointBoneBack, {HealthMark::Osteoporosis, HealthMark::Shoulder}, "Bone scan last spring"},
          {HealthQuestion::MedicineOrOther, {HealthMark::Medicine}, "Calcium and vitamin D"}}},
        {"Noor Castell", kWoman, 1650, "they", "Two years of classes", "Iris Castell, mother", true, {}},
        {"Lars Pemberley", kMan, 1760, "he", "Sailed all his life", "Greta Pemberley, daughter", false,
         {{HealthQuestion::HeartOrPressure, {HealthMark::HighBloodPressure}, "Tablets since 2019"},
          {HealthQuestion::JointBoneBack, {HealthMark::Knee}, "Left, on stairs"}}},
        {"Beatrix Lowe", kWoman, 1630, "she", "Swam until the knee was replaced", "Hal Lowe, husband", false,
         {{HealthQuestion::JointBoneBack, {HealthMark::Knee}, "Right knee replaced in 2023"}}},
        {"Mireille Dacosta", kWoman, 1700, "she", "Skis each winter", "Paul Dacosta, brother", false,
         {{HealthQuestion::JointBoneBack, {HealthMark::Ankle, HealthMark::Wrist}, "Old sprain; a fracture on the left"}}, {}, 0, {EquipmentKind::DumbbellPair}},
        {"Ingrid Sollund", kWoman, 1670, "she", "Dancing, every week", "Nils Sollund, son", true,
         {{HealthQuestion::JointBoneBack, {HealthMark::Hip}, "Left, after long sitting"}},
         {{HealthQuestion::Breathless, {HealthMark::Palpitations}, "On the evening after the session"},
          {HealthQuestion::JointBoneBack, {HealthMark::Hip}, "Left, after long sitting"}}, 3},
    };
}

std::vector<PersonFacts> factsOfTobiasPeople()
{
    return {
        {"Dmitri Oake", kMan, 1830, "he", "Cycled to work until the office moved", "Lena Oake, wife", false,
         {{HealthQuestion::JointBoneBack, {HealthMark::Neck}, "After desk days"}}},
        {"Gwen Tarrant", kWoman, 1690, "she", "On and off, three studios in ten years", "Sian Tarrant, sister", false, {}},
        {"Osric Bell", kMan, 1770, "he", "None since the army", "Maud Bell, wife", false,
         {{HealthQuestion::HeartOrPressure, {HealthMark::HeartDisease}, "A stent, four years ago"},
          {HealthQuestion::Breathless, {HealthMark::BreathlessOnLightEffort}, "On the second flight of stairs"},
          {HealthQuestion::JointBoneBack, {HealthMark::Hip}, "Right, in the mornings"}}},
        {"Tomasz Wyre", kMan, 1840, "he", "Climbed and lifted before the shoulder", "Ania Wyre, wife", true,
         {{HealthQuestion::JointBoneBack, {HealthMark::Shoulder}, "Right"}, {HealthQuestion::OperationOrInjury, {HealthMark::Operation}, "Shoulder repaired last winter"}}},
        {"Priya Venn", kWoman, 1620, "she", "Climbs three times a week", "Dev Venn, brother", true, {}, {}, 0, {EquipmentKind::AddedToBody}},
        {"Yara Hadley", kWoman, 1710, "she", "Classes at lunch", "Sam Hadley, partner", true, {},
         {{HealthQuestion::Pregnancy, {HealthMark::Pregnant}, "Due in April"}}, 40},
        {"Pella Nakamura-Voss", kWoman, 1600, "", "Dance at university", "Jun Nakamura, father", false,
         {{HealthQuestion::Smoking, {HealthMark::Smokes}, "Stopped in September"}}},
    };
}

}  // namespace

const PersonFacts& factsOf(std::string_view name)
{
    static const std::vector<PersonFacts> everybody = [] {
        std::vector<PersonFacts> facts = factsOfInesPeople();
        for (PersonFacts& one : factsOfTobiasPeople()) {
            facts.push_back(std::move(one));
        }
        return facts;
    }();
    const auto found = std::find_if(everybody.begin(), everybody.end(), [name](const PersonFacts& one) { return one.name == name; });
    assert(found != everybody.end());
    return *found;
}

}  // namespace chalk::simulation
