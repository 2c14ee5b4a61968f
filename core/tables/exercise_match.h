#pragma once

#include "core/lifts/catalogue.h"

#include <string_view>

namespace chalk::tables {

/// An exercise of the catalogue for a name that somebody wrote.
struct ExerciseMatch {
    const lifts::Exercise* exercise = nullptr;  ///< of the catalogue; null where none is like it
    bool isCertain = false;                     ///< the same words as its name or its key; else a suggestion

    bool operator==(const ExerciseMatch&) const = default;
};

/// By the same words in any order first, where a word more may say what it is loaded with (`Barbell back squat`); then by a typing error or two.
/// The catalogue outlives the answer.
[[nodiscard]] ExerciseMatch exerciseNamed(std::string_view name, const lifts::Catalogue& catalogue);

}  // namespace chalk::tables
