#include "core/planning/lift_choice.h"

#include <algorithm>
#include <cstdlib>

namespace chalk::planning {

namespace {

using lifts::Catalogue;
using lifts::EquipmentKind;
using lifts::Exercise;
using progression::Stage;
using progression::StartState;

EquipmentKind singleOfPair(EquipmentKind kind)
{
    if (kind == EquipmentKind::DumbbellPair) {
        return EquipmentKind::Dumbbell;
    }
    return kind == EquipmentKind::KettlebellPair ? EquipmentKind::Kettlebell : kind;
}

const EquipmentOnHand* firstOfKind(const PlanRequest& request, EquipmentKind kind)
{
    const auto found = std::find_if(request.equipment.begin(), request.equipment.end(), [kind](const EquipmentOnHand& one) { return one.kind == kind; });
    return found == request.equipment.end() ? nullptr : &*found;
}

RehearseReason rehearseReasonFor(const PatternStanding& standing, bool isLoadBlocked)
{
    if (standing.state == StartState::NotScreened) {
        return RehearseReason::NotScreened;
    }
    if (standing.stage == Stage::Pattern) {
        return RehearseReason::PatternOpen;
    }
    if (standing.stage == Stage::Control) {
        return RehearseReason::ControlOpen;
    }
    return isLoadBlocked ? RehearseReason::LoadBlocked : RehearseReason::None;
}

/// Chooses the exercises of one pattern.
struct ExerciseSearch {
    lifts::Pattern pattern;
    const TemplateExercises& wanted;
    const PlanRequest& request;
    const Catalogue& catalogue;

    /// The first of the template's, or the easiest of the pattern that is allowed; nothing where none is.
    [[nodiscard]] const Exercise* rehearsed() const
    {
        for (const std::string& key : wanted.rehearsed) {
            if (const Exercise* exercise = catalogue.find(key); exercise != nullptr && !passOf(*exercise, request)) {
                return exercise;
            }
        }
        const auto allowed = allowedExercises(pattern, request, catalogue, true);
        return allowed.empty() ? nullptr : allowed.front();
    }

    /// The loaded exercise, written into `lift` with its reason; nothing where none is allowed.
    [[nodiscard]] const Exercise* loaded(PlannedLift& lift) const
    {
        for (const std::string& key : wanted.loaded) {
            const Exercise* exercise = catalogue.find(key);
            if (auto pass = passOf(*exercise, request)) {
                lift.passedOver.push_back(*std::move(pass));
            } else {
                lift.exerciseReason = lift.passedOver.empty() ? ExerciseReason::FirstChoice : ExerciseReason::NextChoice;
                return exercise;
            }
        }
        lift.exerciseReason = ExerciseReason::NearestFit;
        return nearest();
    }

    [[nodiscard]] const Exercise* nearest() const
    {
        auto allowed = allowedExercises(pattern, request, catalogue, false);
        std::erase_if(allowed, [](const Exercise* exercise) { return exercise->equipment == EquipmentKind::None; });
        const int rung = wanted.loaded.empty() ? 1 : catalogue.find(wanted.loaded.front())->rung;
        const auto found = std::min_element(allowed.begin(), allowed.end(), [rung](const Exercise* a, const Exercise* b) {
            return std::abs(a->rung - rung) < std::abs(b->rung - rung);
        });
        return found == allowed.end() ? nullptr : *found;
    }

    [[nodiscard]] PatternGap nothingAllowed(bool isUnloaded) const
    {
        PatternGap gap{pattern, GapReason::NothingAllowed, {}};
        for (const Exercise* exercise : catalogue.of(pattern)) {
            auto pass = isUnloaded && exercise->equipment != EquipmentKind::None ? std::nullopt : passOf(*exercise, request);
            if (pass) {
                gap.passedOver.push_back(*std::move(pass));
            }
        }
        return gap;
    }
};

void giveFirstLoad(PlannedLift& lift, const EquipmentOnHand* equipment, const PatternStanding& standing)
{
    const lifts::Equipment body = lifts::BodyAdded{{base::Load()}};
    const auto loads = lifts::LoadTable::of(equipment == nullptr ? body : equipment->equipment).value();
    lift.firstLoad = standing.startLoad ? loads.atMost(*standing.startLoad) : loads.lightest();
    if (!standing.startLoad) {
        lift.loadReason = FirstLoadReason::Lightest;
    } else {
        lift.loadReason = lift.firstLoad == standing.startLoad ? FirstLoadReason::StartLoad : FirstLoadReason::NearestUnderStart;
    }
}

}  // namespace

const EquipmentOnHand* equipmentFor(const Exercise& exercise, const PlanRequest& request)
{
    if (const EquipmentOnHand* same = firstOfKind(request, exercise.equipment)) {
        return same;
    }
    return firstOfKind(request, singleOfPair(exercise.equipment));
}

std::optional<PassedOver> passOf(const Exercise& exercise, const PlanRequest& request)
{
    for (const lifts::CautionTag caution : request.cautions) {
        if (std::find(exercise.ruledOutBy.begin(), exercise.ruledOutBy.end(), caution) != exercise.ruledOutBy.end()) {
            return PassedOver{exercise.key, PassReason::RuledOut, exercise.equipment, caution};
        }
    }
    if (exercise.equipment != EquipmentKind::None && equipmentFor(exercise, request) == nullptr) {
        return PassedOver{exercise.key, PassReason::NotOnHand, exercise.equipment, {}};
    }
    return std::nullopt;
}

tl::expected<PlannedLift, PatternGap> plannedLiftOf(lifts::Pattern pattern, const PlanTemplate& plan, const PlanRequest& request, const Catalogue& catalogue)
{
    const PatternStanding& standing = request.standings[static_cast<std::size_t>(pattern)];
    if (standing.state == StartState::OnHold) {
        return tl::make_unexpected(PatternGap{pattern, GapReason::OnHold, {}});
    }
    const ExerciseSearch search{pattern, plan.of(pattern), request, catalogue};
    PlannedLift lift;
    lift.pattern = pattern;
    lift.stage = standing.state == StartState::Starts ? standing.stage : Stage::Pattern;
    lift.rehearseReason = rehearseReasonFor(standing, request.isLoadBlocked);
    const bool isRehearsed = lift.rehearseReason != RehearseReason::None;
    const Exercise* unloaded = search.rehearsed();
    if (isRehearsed && unloaded == nullptr) {
        return tl::make_unexpected(search.nothingAllowed(true));
    }
    const Exercise* exercise = search.loaded(lift);
    if (exercise == nullptr) {
        exercise = unloaded;
        lift.exerciseReason = ExerciseReason::Unloaded;
    }
    if (exercise == nullptr) {
        return tl::make_unexpected(search.nothingAllowed(false));
    }
    const EquipmentOnHand* equipment = exercise->equipment == EquipmentKind::None ? nullptr : equipmentFor(*exercise, request);
    lift.exerciseKey = exercise->key;
    lift.equipmentKey = equipment == nullptr ? std::string() : equipment->key;
    lift.kind = isRehearsed ? PlannedKind::Rehearse : PlannedKind::Work;
    if (isRehearsed) {
        lift.rehearsalKey = unloaded->key;
    } else {
        giveFirstLoad(lift, equipment, standing);
    }
    lift.cares = lifts::caresOf(isRehearsed ? *unloaded : *exercise, request.cautions);
    return lift;
}

}  // namespace chalk::planning
