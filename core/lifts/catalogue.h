#pragma once

#include "core/lifts/exercise.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::lifts {

/// What is wrong with a list of exercises: which one, counted from 0, its field by the name in files (`harder`), and why.
struct CatalogueFault {
    std::size_t index = 0;
    std::string field;
    std::string reason;  ///< begins with the key of the exercise where it has one
};

/// All exercises that a studio chooses from. Never changes once made.
class Catalogue {
public:
    /// Fails where a key is no snake_case word or is there twice; where a neighbour is unknown, of another pattern, on a rung
    /// of the wrong side or does not name the exercise in return; where cues are not two or three texts; where the pieces, the
    /// body share or the station do not fit the equipment or the measure; and where a caution is named twice.
    [[nodiscard]] static tl::expected<Catalogue, CatalogueFault> of(std::vector<Exercise> exercises);

    [[nodiscard]] std::span<const Exercise> exercises() const { return m_exercises; }
    /// Nothing where the key is unknown. Lives as long as the catalogue.
    [[nodiscard]] const Exercise* find(std::string_view key) const;
    /// Those of a pattern, the easiest first.
    [[nodiscard]] std::vector<const Exercise*> of(Pattern pattern) const;
    /// The neighbours of an exercise of this catalogue, in the order in which it names them.
    [[nodiscard]] std::vector<const Exercise*> easierThan(const Exercise& exercise) const;
    [[nodiscard]] std::vector<const Exercise*> harderThan(const Exercise& exercise) const;
    /// Those that could take the place of `exercise` (itself left out): same pattern, done with one of `kinds` or with nothing,
    /// and ruled out by none of `cautions`; the nearest in difficulty first, the easier one of two as near.
    [[nodiscard]] std::vector<const Exercise*> alternativesTo(const Exercise& exercise, std::span<const EquipmentKind> kinds,
                                                              std::span<const CautionTag> cautions) const;

private:
    explicit Catalogue(std::vector<Exercise> exercises) : m_exercises(std::move(exercises)) {}
    [[nodiscard]] std::vector<const Exercise*> allOf(const std::vector<std::string>& keys) const;
    std::vector<Exercise> m_exercises;
};

/// Whether any of the cautions takes the exercise out of the plan.
[[nodiscard]] bool isRuledOut(const Exercise& exercise, std::span<const CautionTag> cautions);

/// Those of the cautions that the exercise asks to be minded in, in the order of `cautions`.
[[nodiscard]] std::vector<CautionTag> caresOf(const Exercise& exercise, std::span<const CautionTag> cautions);

}  // namespace chalk::lifts
