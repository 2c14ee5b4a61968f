#include "core/lifts/catalogue.h"

#include "core/lifts/catalogue_fault.h"

#include <algorithm>
#include <cstdlib>

namespace chalk::lifts {

tl::expected<Catalogue, CatalogueFault> Catalogue::of(std::vector<Exercise> exercises)
{
    if (auto fault = faultOf(exercises)) {
        return tl::make_unexpected(*std::move(fault));
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

std::vector<const Exercise*> Catalogue::allOf(const std::vector<std::string>& keys) const
{
    std::vector<const Exercise*> found;
    for (const std::string& key : keys) {
        found.push_back(find(key));
    }
    return found;
}

std::vector<const Exercise*> Catalogue::easierThan(const Exercise& exercise) const
{
    return allOf(exercise.easier);
}

std::vector<const Exercise*> Catalogue::harderThan(const Exercise& exercise) const
{
    return allOf(exercise.harder);
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

std::vector<CautionTag> caresOf(const Exercise& exercise, std::span<const CautionTag> cautions)
{
    std::vector<CautionTag> cares;
    std::copy_if(cautions.begin(), cautions.end(), std::back_inserter(cares), [&exercise](CautionTag tag) {
        return std::find(exercise.care.begin(), exercise.care.end(), tag) != exercise.care.end();
    });
    return cares;
}

}  // namespace chalk::lifts
