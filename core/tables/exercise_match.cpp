#include "core/tables/exercise_match.h"

#include "core/tables/folded_text.h"

#include <algorithm>
#include <array>

namespace chalk::tables {

namespace {

/// Words that say what an exercise is loaded with: `barbell`, `dumbbells` …
bool isLoadWord(const std::string& word)
{
    constexpr std::array<std::string_view, 8> kLoadWords{"barbell", "bb", "dumbbell", "dumbbells", "db", "kettlebell", "kb", "machine"};
    return std::find(kLoadWords.begin(), kLoadWords.end(), word) != kLoadWords.end();
}

std::string joinedWithoutLoad(std::string_view name)
{
    std::vector<std::string> words = wordsOf(name);
    std::erase_if(words, isLoadWord);
    std::sort(words.begin(), words.end());
    std::string joined;
    for (const std::string& word : words) {
        joined += joined.empty() ? word : ' ' + word;
    }
    return joined;
}

}  // namespace

ExerciseMatch exerciseNamed(std::string_view name, const lifts::Catalogue& catalogue)
{
    const std::string words = sortedWords(name);
    for (const lifts::Exercise& exercise : catalogue.exercises()) {
        if (!words.empty() && (words == sortedWords(exercise.name) || words == sortedWords(exercise.key))) {
            return {&exercise, true};
        }
    }
    const std::string bare = joinedWithoutLoad(name);
    ExerciseMatch nearest;
    constexpr std::size_t kLeastLetters = 6;
    constexpr int kMostErrors = 2;
    int distance = kMostErrors + 1;
    for (const lifts::Exercise& exercise : catalogue.exercises()) {
        const std::string own = joinedWithoutLoad(exercise.name);
        const int errors = own.empty() || bare.size() < kLeastLetters ? kMostErrors + 1 : editDistance(bare, own, kMostErrors);
        if (errors < distance) {
            distance = errors;
            nearest = {&exercise, false};
        }
    }
    return nearest;
}

}  // namespace chalk::tables
