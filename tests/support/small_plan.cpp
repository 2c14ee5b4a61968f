#include "tests/support/small_plan.h"

namespace chalk::test {

namespace {

using lifts::EquipmentKind;
using lifts::Pattern;

lifts::Exercise plainExercise(std::string key, Pattern pattern, int rung, EquipmentKind kind)
{
    lifts::Exercise exercise;
    exercise.name = key;
    exercise.key = std::move(key);
    exercise.pattern = pattern;
    exercise.rung = rung;
    exercise.equipment = kind;
    exercise.cues = {"One", "Two"};
    return exercise;
}

}  // namespace

lifts::Catalogue smallCatalogue()
{
    std::vector<lifts::Exercise> all{plainExercise("sit", Pattern::Squat, 1, EquipmentKind::None), plainExercise("bell", Pattern::Squat, 2, EquipmentKind::Kettlebell),
                                     plainExercise("bar", Pattern::Squat, 3, EquipmentKind::Barbell), plainExercise("bow", Pattern::Hinge, 1, EquipmentKind::None),
                                     plainExercise("dead", Pattern::Hinge, 5, EquipmentKind::Barbell)};
    all[1].care = {lifts::CautionTag::Wrist};
    all[2].ruledOutBy = {lifts::CautionTag::Shoulder};
    all[4].ruledOutBy = {lifts::CautionTag::LowerBack};
    for (const Pattern pattern : lifts::kPatterns) {
        if (pattern != Pattern::Squat && pattern != Pattern::Hinge) {
            all.push_back(plainExercise(std::string(keyOf(pattern)), pattern, 1, EquipmentKind::None));
        }
    }
    return lifts::Catalogue::of(std::move(all)).value();
}

planning::PlanTemplate templateOf(std::vector<std::vector<Pattern>> sessions)
{
    planning::PlanTemplate plan;
    plan.key = "small";
    plan.name = "Small";
    for (auto& patterns : sessions) {
        plan.sessions.push_back({std::string(1, static_cast<char>('A' + plan.sessions.size())), std::move(patterns)});
    }
    plan.exercises[static_cast<std::size_t>(Pattern::Squat)] = {{"bar", "bell"}, {"sit"}};
    return plan;
}

planning::PlanRequest readyRequest()
{
    planning::PlanRequest request;
    request.firstDay = *base::Date::fromYmd(2026, 3, 2);
    const auto kilos = [](int whole) { return base::Load::fromCenti(whole * 100); };
    request.equipment = {{"kettlebells", EquipmentKind::Kettlebell, lifts::FixedSet{{kilos(8), kilos(12), kilos(16)}}},
                         {"bar", EquipmentKind::Barbell, lifts::Barbell{kilos(20), {{kilos(5), 1}}}}};
    for (planning::PatternStanding& standing : request.standings) {
        standing.state = progression::StartState::Starts;
        standing.stage = progression::Stage::BaseLoad;
    }
    return request;
}

}  // namespace chalk::test
