#include "core/tables/exercise_match.h"

#include <gtest/gtest.h>

namespace chalk::tables {
namespace {

lifts::Catalogue catalogueOfNames()
{
    std::vector<lifts::Exercise> exercises;
    int rung = 1;
    for (const auto& [key, name] : std::vector<std::pair<std::string, std::string>>{{"back_squat", "Back squat"}, {"front_squat", "Front squat"}}) {
        lifts::Exercise exercise;
        exercise.key = key;
        exercise.name = name;
        exercise.equipment = lifts::EquipmentKind::Barbell;
        exercise.station = lifts::Station::Rack;
        exercise.rung = rung++;
        exercise.cues = {"one", "two"};
        exercises.push_back(exercise);
    }
    auto catalogue = lifts::Catalogue::of(exercises);
    EXPECT_TRUE(catalogue) << catalogue.error().field << catalogue.error().reason;
    return *catalogue;
}

TEST(ExerciseMatch, KnowsTheSameWordsAndSuggestsTheNearest)
{
    const lifts::Catalogue catalogue = catalogueOfNames();
    EXPECT_EQ(exerciseNamed("squat, back", catalogue), (ExerciseMatch{catalogue.find("back_squat"), true}));
    EXPECT_EQ(exerciseNamed("front_squat", catalogue), (ExerciseMatch{catalogue.find("front_squat"), true}));
    EXPECT_EQ(exerciseNamed("Barbell back squat", catalogue), (ExerciseMatch{catalogue.find("back_squat"), false}));
    EXPECT_EQ(exerciseNamed("Front sqaut", catalogue), (ExerciseMatch{catalogue.find("front_squat"), false}));
    EXPECT_EQ(exerciseNamed("Cycling", catalogue), ExerciseMatch());
    EXPECT_EQ(exerciseNamed("", catalogue), ExerciseMatch());
}

}  // namespace
}  // namespace chalk::tables
