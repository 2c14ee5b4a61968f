#include "core/tables/past_lifts.h"

#include "core/planning/lift_choice.h"

#include <algorithm>
#include <set>

namespace chalk::tables {

namespace {

using base::Load;
using lifts::EquipmentKind;
using lifts::Exercise;
using progression::SetRecord;

PastExposure& exposureOf(PastSession& session, const Exercise& exercise)
{
    const auto found = std::find_if(session.done.begin(), session.done.end(), [&exercise](const PastExposure& one) { return one.exercise == &exercise; });
    return found != session.done.end() ? *found : session.done.emplace_back(PastExposure{&exercise, {}});
}

SetRecord recordOf(const ListedSet& set, base::MassUnit unit)
{
    SetRecord record;
    record.load = set.unit == unit ? set.load : base::Mass::of(set.load, set.unit).in(unit);
    record.amount = set.amount;
    record.rir = set.rir;
    record.restSeconds = set.restSeconds;
    return record;
}

/// The loads that were done of an exercise, lightest first; those of the first day apart.
struct LoadsDone {
    std::set<Load> all;
    std::optional<Load> firstDayTop;
};

LoadsDone loadsDone(const Exercise& exercise, const std::vector<PastSession>& past)
{
    LoadsDone done;
    for (const PastSession& session : past) {
        std::optional<Load> top;
        for (const PastExposure& one : session.done) {
            for (const SetRecord& set : one.exercise == &exercise ? one.exposure.sets : std::vector<SetRecord>()) {
                done.all.insert(set.load);
                top = std::max(top.value_or(set.load), set.load);
            }
        }
        if (!done.firstDayTop) {
            done.firstDayTop = top;
        }
    }
    return done;
}

lifts::Equipment equipmentOfLoads(const Exercise& exercise, std::set<Load> loads)
{
    if (exercise.equipment == EquipmentKind::AddedToBody || exercise.equipment == EquipmentKind::None) {
        loads.insert(Load());
        return lifts::BodyAdded{{loads.begin(), loads.end()}};
    }
    std::erase_if(loads, [](Load load) { return load <= Load(); });
    return loads.empty() ? lifts::Equipment(lifts::BodyAdded{{Load()}}) : lifts::Equipment(lifts::FixedSet{{loads.begin(), loads.end()}});
}

}  // namespace

std::vector<PastSession> pastSessionsOf(const TableContent& content, std::int32_t person, std::span<const ListedSet> sets, const ExerciseChoice& choice,
                                        base::MassUnit unit)
{
    std::vector<ListedSet> ordered(sets.begin(), sets.end());
    const bool areNumbered = std::all_of(ordered.begin(), ordered.end(), [](const ListedSet& set) { return set.number > 0; });
    std::stable_sort(ordered.begin(), ordered.end(), [](const ListedSet& a, const ListedSet& b) { return a.day < b.day; });
    std::vector<PastSession> sessions;
    for (const ListedSet& set : ordered) {
        const Exercise* exercise = choice(set.exercise);
        if (exercise == nullptr) {
            continue;
        }
        if (sessions.empty() || sessions.back().day != set.day) {
            PastSession& session = sessions.emplace_back();
            session.day = set.day;
            if (const auto said = content.sessions.find({person, set.day}); said != content.sessions.end()) {
                session.note = said->second.note;
                session.minutes = said->second.minutes.value_or(session.minutes);
            }
        }
        auto& records = exposureOf(sessions.back(), *exercise).exposure.sets;
        const auto place = areNumbered && set.number <= static_cast<int>(records.size()) ? records.begin() + set.number - 1 : records.end();
        records.insert(place, static_cast<std::size_t>(set.count), recordOf(set, unit));
    }
    return sessions;
}

PastSetup pastSetupOf(const Exercise& exercise, base::MassUnit unit, std::optional<Load> bodyMass, std::span<const planning::EquipmentOnHand> equipment,
                      const std::vector<PastSession>& past)
{
    const LoadsDone done = loadsDone(exercise, past);
    planning::PlanRequest request;
    request.equipment.assign(equipment.begin(), equipment.end());
    const planning::EquipmentOnHand* onHand = exercise.equipment == EquipmentKind::None ? nullptr : planning::equipmentFor(exercise, request);
    PastSetup begun;
    begun.equipmentKey = onHand == nullptr ? std::string() : onHand->key;
    progression::LiftSetup& setup = begun.setup;
    setup.unit = unit;
    setup.region = exercise.region;
    setup.bodyMass = bodyMass;
    setup.policy = progression::Policy::defaultsFor(unit);
    setup.kit.equipment = onHand == nullptr ? equipmentOfLoads(exercise, done.all) : onHand->equipment;
    setup.kit.bodyShare = bodyMass ? exercise.bodyShare : base::Milli();
    setup.kit.measure = exercise.measure;
    setup.kit.exerciseKey = exercise.key;
    setup.kit.pieces = exercise.pieces;
    const bool isLoaded = exercise.equipment != EquipmentKind::None || (done.firstDayTop && *done.firstDayTop > Load());
    setup.startStage = isLoaded ? progression::Stage::BaseLoad : progression::Stage::Pattern;
    const auto table = lifts::LoadTable::of(setup.kit.equipment);
    if (table && isLoaded && done.firstDayTop) {
        setup.kit.startLoad = table->atMost(*done.firstDayTop);
    }
    return begun;
}

progression::Swap swapToKit(const progression::Kit& kit)
{
    progression::Swap swap;
    swap.equipment = kit.equipment;
    swap.startLoad = kit.startLoad;
    swap.bodyShare = kit.bodyShare;
    swap.measure = kit.measure;
    swap.exerciseKey = kit.exerciseKey;
    swap.pieces = kit.pieces;
    return swap;
}

}  // namespace chalk::tables
