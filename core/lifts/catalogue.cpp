#include "core/lifts/catalogue.h"

#include <algorithm>
#include <cstdlib>
#include <set>

namespace chalk::lifts {

namespace {

using Fault = std::optional<CatalogueFault>;

Fault faultOfNeighbours(const Exercise& exercise, const std::vector<std::string>& keys, bool isHarder, const std::vector<Exercise>& all)
{
    for (const std::string& key : keys) {
        const auto found = std::find_if(all.begin(), all.end(), [&key](const Exercise& other) { return other.key == key; });
        if (found == all.end()) {
            return CatalogueFault{exercise.key, "its neighbour " + key + " is unknown"};
        }
        if (found->pattern != exercise.pattern) {
            return CatalogueFault{exercise.key, "its neighbour " + key + " is of another pattern"};
        }
        if (isHarder ? found->rung <= exercise.rung : found->rung >= exercise.rung) {
            return CatalogueFault{exercise.key, "its neighbour " + key + " is on the wrong side"};
        }
    }
    return std::nullopt;
}

Fault faultOf(const Exercise& exercise, const std::vector<Exercise>& all)
{
    if (exercise.key.empty() || exercise.name.empty()) {
        return CatalogueFault{exercise.key, "needs a key and a name"};
    }
    if (exercise.cues.size() < 2 || exercise.cues.size() > 3) {
        return CatalogueFault{exercise.key, "needs two or three cues"};
    }
    if (auto fault = faultOfNeighbours(exercise, exercise.easier, false, all)) {
        return fault;
    }
    return faultOfNeighbours(exercise, exercise.harder, true, all);
}

}  // namespace

tl::expected<Catalogue, CatalogueFault> Catalogue::of(std::vector<Exercise> exercises)
{
    std::set<std::string> keys;
    for (const Exercise& exercise : exercises) {
        if (!keys.insert(exercise.key).second) {
            return tl::make_unexpected(CatalogueFault{exercise.key, "is there twice"});
        }
        if (auto fault = faultOf(exercise, exercises)) {
            return tl::make_unexpected(*std::move(fault));
        }
    }
    return Catalogue(std::move(exercises));
}

const Exercise* Catalogue::find(std::string_view key) const
{
    const auto found = std::find_if(m_exercises.begin(), m_exercises.end(), [key](const Exercise& exercise) { return exercise.key == key; });
    return found == m_exercises.end() ? nullptr : &*found;
}

std::vector<const Exercise*> Catalogue::of(Pattern pattern) const
{
    std::vector<const Exercise*> found;
    for (const Exercise& exercise : m_exercises) {
        if (exercise.pattern == pattern) {
            found.push_back(&exercise);
        }
    }
    std::stable_sort(found.begin(), found.end(), [](const Exercise* a, const Exercise* b) { return a->rung < b->rung; });
    return found;
}

std::vector<const Exercise*> Catalogue::alternativesTo(const Exercise& exercise, std::span<const EquipmentKind> kinds,
                                                       std::span<const CautionTag> cautions) const
{
    std::vector<const Exercise*> found = of(exercise.pattern);
    std::erase_if(found, [&](const Exercise* other) {
        const bool canBeDone = other->equipment == EquipmentKind::None || std::find(kinds.begin(), kinds.end(), other->equipment) != kinds.end();
        return other->key == exercise.key || !canBeDone || isRuledOut(*other, cautions);
    });
    std::stable_sort(found.begin(), found.end(), [&exercise](const Exercise* a, const Exercise* b) {
        return std::abs(a->rung - exercise.rung) < std::abs(b->rung - exercise.rung);
    });
    return found;
}

bool isRuledOut(const Exercise& exercise, std::span<const CautionTag> cautions)
{
    return std::any_of(exercise.ruledOutBy.begin(), exercise.ruledOutBy.end(),
                       [&cautions](CautionTag tag) { return std::find(cautions.begin(), cautions.end(), tag) != cautions.end(); });
}

}  // namespace chalk::lifts
