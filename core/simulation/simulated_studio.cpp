#include "core/simulation/simulated_studio.h"

#include <algorithm>
#include <stdexcept>

namespace chalk::simulation {

namespace {

using base::Load;
using base::MassUnit;
using studio::StudioEquipment;
using lifts::EquipmentKind;

Load whole(double value)
{
    return Load::fromCenti(static_cast<std::int32_t>(value * 100 + (value < 0 ? -0.5 : 0.5)));
}

std::vector<Load> range(double from, double to, double step)
{
    std::vector<Load> loads;
    for (double load = from; load <= to + 0.001; load += step) {
        loads.push_back(whole(load));
    }
    return loads;
}

lifts::Barbell barWith(double bar, std::initializer_list<std::pair<double, int>> plates)
{
    lifts::Barbell barbell{whole(bar), {}};
    for (const auto& [plate, pairs] : plates) {
        barbell.pairs.push_back({whole(plate), pairs});
    }
    return barbell;
}

/// One-repetition strength as a share of body mass, by pattern, for an untrained adult with a barbell or the like: a working figure
/// of the simulation, not a norm.
double shareOf(lifts::Pattern pattern)
{
    switch (pattern) {
    case lifts::Pattern::Squat:
        return 0.85;
    case lifts::Pattern::Hinge:
        return 1.05;
    case lifts::Pattern::HorizontalPush:
        return 0.58;
    case lifts::Pattern::HorizontalPull:
        return 0.55;
    case lifts::Pattern::VerticalPush:
        return 0.38;
    case lifts::Pattern::VerticalPull:
        return 0.6;
    case lifts::Pattern::SingleLeg:
        return 0.34;
    case lifts::Pattern::CarryBrace:
        return 0.5;
    }
    return 0.5;
}

}  // namespace

std::vector<StudioEquipment> studioEquipment()
{
    const auto kg = MassUnit::Kilogram;
    const auto lb = MassUnit::Pound;
    return {
        {"bar", "20 kg bar and plates", EquipmentKind::Barbell, kg,
         barWith(20, {{25, 2}, {20, 2}, {15, 1}, {10, 2}, {5, 2}, {2.5, 2}, {1.25, 1}})},
        {"light_bar", "10 kg bar and plates", EquipmentKind::Barbell, kg, barWith(10, {{10, 2}, {5, 2}, {2.5, 2}, {1.25, 1}})},
        {"trap_bar", "Trap bar and plates", EquipmentKind::TrapBar, kg, barWith(25, {{25, 2}, {20, 2}, {15, 1}, {10, 2}, {5, 2}, {2.5, 2}})},
        {"dumbbells", "Dumbbells in pairs", EquipmentKind::DumbbellPair, kg, lifts::FixedSet{range(2, 30, 2)}},
        {"dumbbell", "Dumbbells", EquipmentKind::Dumbbell, kg, lifts::FixedSet{range(2, 40, 2)}},
        {"kettlebells", "Kettlebells", EquipmentKind::Kettlebell, kg, lifts::FixedSet{range(8, 40, 4)}},
        {"pulldown_stack", "Pulldown stack", EquipmentKind::Stack, kg, lifts::Stack{whole(5), whole(100), whole(2.5)}},
        {"row_stack", "Row stack", EquipmentKind::Stack, kg, lifts::Stack{whole(5), whole(100), whole(5)}},
        {"press_stack", "Press stack", EquipmentKind::Stack, kg, lifts::Stack{whole(5), whole(45), whole(5)}},
        {"body", "Body and added plates", EquipmentKind::AddedToBody, kg,
         lifts::BodyAdded{{whole(0), whole(2.5), whole(5), whole(7.5), whole(10), whole(15), whole(20)}}},
        {"pull_up_help", "Pull-up bar, bands and belt", EquipmentKind::AddedToBody, kg, lifts::BodyAdded{range(-40, 20, 5)}},
        {"bar_lb", "45 lb bar and plates", EquipmentKind::Barbell, lb, barWith(45, {{45, 3}, {25, 1}, {10, 2}, {5, 1}, {2.5, 1}})},
        {"dumbbells_lb", "Dumbbells in pairs, lb", EquipmentKind::DumbbellPair, lb, lifts::FixedSet{range(5, 60, 5)}},
    };
}

progression::LiftSetup setupOf(const lifts::Exercise& exercise, const std::vector<StudioEquipment>& equipment, const char* equipmentKey,
                               const clients::Client& client)
{
    const auto item = std::find_if(equipment.begin(), equipment.end(), [equipmentKey](const StudioEquipment& one) { return one.key == equipmentKey; });
    if (item == equipment.end()) {
        throw std::invalid_argument(std::string("no equipment ") + equipmentKey);
    }
    progression::LiftSetup setup;
    setup.unit = item->unit;
    setup.region = exercise.region;
    if (client.bodyMass) {
        setup.bodyMass = base::Mass::of(*client.bodyMass, client.unit).in(item->unit);
    }
    setup.kit = {item->equipment, exercise.bodyShare, exercise.measure, {}, exercise.key, exercise.pieces};
    setup.policy = progression::Policy::defaultsFor(setup.unit);
    return setup;
}

Talent talentFor(const lifts::Exercise& exercise, const progression::LiftSetup& setup, double factor)
{
    const double bodyMass = setup.bodyMass.value_or(whole(70)).centi() / 100.0;
    Talent talent;
    talent.strength = bodyMass * shareOf(exercise.pattern) * factor / exercise.pieces;
    if (exercise.bodyShare.value() > 0) {
        talent.strength = bodyMass * exercise.bodyShare.value() / 1000.0 * (0.85 + 0.4 * factor);
    }
    return talent;
}

std::string sessionCode(Chance& chance)
{
    static constexpr char kLetters[] = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
    std::string code;
    for (int i = 0; i < 10; ++i) {
        code += kLetters[chance.below(32)];
    }
    return code;
}

}  // namespace chalk::simulation
