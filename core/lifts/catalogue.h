#pragma once

#include "core/lifts/exercise.h"

#include <span>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::lifts {

/// What is wrong with a list of exercises: which one and why.
struct CatalogueFault {
    std::string exercise;
    std::string reason;
};

/// All exercises that a studio chooses from. Never changes once made.
class Catalogue {
public:
    /// Fails where a key is there twice, a neighbour is unknown, in another pattern or on the wrong side, or cues are not two or three.
    [[nodiscard]] static tl::expected<Catalogue, CatalogueFault> of(std::vector<Exercise> exercises);

    [[nodiscard]] std::span<const Exercise> exercises() const { return m_exercises; }
    /// Nothing where the key is unknown.
    [[nodiscard]] const Exercise* find(std::string_view key) const;
    /// Those of a pattern, the easiest first.
    [[nodiscard]] std::vector<const Exercise*> of(Pattern pattern) const;
    /// Those that could take the place of `exercise` (itself left out): same pattern, done with one of `kinds` or with nothing,
    /// and ruled out by none of `cautions`; the nearest in difficulty first.
    [[nodiscard]] std::vector<const Exercise*> alternativesTo(const Exercise& exercise, std::span<const EquipmentKind> kinds,
                                                              std::span<const CautionTag> cautions) const;

private:
    explicit Catalogue(std::vector<Exercise> exercises) : m_exercises(std::move(exercises)) {}
    std::vector<Exercise> m_exercises;
};

/// Whether any of the cautions takes the exercise out of the plan.
[[nodiscard]] bool isRuledOut(const Exercise& exercise, std::span<const CautionTag> cautions);

}  // namespace chalk::lifts
