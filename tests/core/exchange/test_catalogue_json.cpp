#include "core/exchange/catalogue_json.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace chalk::exchange {

TEST(Catalogue, HasSixOrMoreOfEachPatternFromUnloadedToLoaded)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const auto exercises = catalogue.of(pattern);
        EXPECT_GE(exercises.size(), 6U) << lifts::keyOf(pattern);
        EXPECT_EQ(exercises.front()->equipment, lifts::EquipmentKind::None) << lifts::keyOf(pattern);
        EXPECT_NE(exercises.back()->equipment, lifts::EquipmentKind::None) << lifts::keyOf(pattern);
        for (std::size_t i = 0; i < exercises.size(); ++i) {
            EXPECT_EQ(exercises[i]->rung, static_cast<int>(i) + 1) << exercises[i]->key;
        }
    }
}

TEST(Catalogue, NeighboursAreSymmetrical)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    for (const lifts::Exercise& exercise : catalogue.exercises()) {
        for (const std::string& key : exercise.harder) {
            const auto& back = catalogue.find(key)->easier;
            EXPECT_NE(std::find(back.begin(), back.end(), exercise.key), back.end()) << exercise.key << " and " << key;
        }
    }
}

TEST(Catalogue, EverySingleCautionLeavesALoadedExerciseInEveryPattern)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    for (int tag = 0; tag <= static_cast<int>(lifts::CautionTag::GripStrength); ++tag) {
        const std::array cautions{static_cast<lifts::CautionTag>(tag)};
        for (const lifts::Pattern pattern : lifts::kPatterns) {
            const auto exercises = catalogue.of(pattern);
            EXPECT_TRUE(std::any_of(exercises.begin(), exercises.end(),
                                    [&cautions](const lifts::Exercise* exercise) {
                                        return exercise->equipment != lifts::EquipmentKind::None && !lifts::isRuledOut(*exercise, cautions);
                                    }))
                << lifts::keyOf(cautions[0]) << " in " << lifts::keyOf(pattern);
        }
    }
}

TEST(Catalogue, AlternativesFitEquipmentAndCautions)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    const lifts::Exercise& press = *catalogue.find("overhead_press");
    const std::array kinds{lifts::EquipmentKind::Dumbbell, lifts::EquipmentKind::Stack, lifts::EquipmentKind::Barbell};
    const std::array cautions{lifts::CautionTag::Shoulder};
    std::set<std::string> keys;
    for (const lifts::Exercise* exercise : catalogue.alternativesTo(press, kinds, cautions)) {
        keys.insert(exercise->key);
    }
    EXPECT_EQ(keys, (std::set<std::string>{"landmine_press", "half_kneeling_reach", "wall_slide"}));
    EXPECT_EQ(catalogue.alternativesTo(press, kinds, {}).front()->key, "machine_overhead_press") << "the nearest first";
}

TEST(Catalogue, FaultsNameTheirPlace)
{
    const auto faultOf = [](QByteArray entry) {
        const auto read = readCatalogue("{\"exercises\": [" + entry + "]}");
        return read ? std::string("none") : read.error().field;
    };
    const QByteArray good = R"({"key": "a", "name": "A", "pattern": "squat", "region": "lower", "measure": "reps", "equipment": "none",
        "station": "floor", "rung": 1, "easier": [], "harder": [], "cues": ["b", "c"], "care": [], "ruled_out_by": []})";
    EXPECT_EQ(faultOf(good), "none");
    EXPECT_EQ(faultOf(QByteArray(good).replace("squat", "crawl")), "exercises[0].pattern");
    EXPECT_EQ(faultOf(QByteArray(good).replace("\"rung\": 1", "\"rung\": 1.5")), "exercises[0].rung");
    EXPECT_EQ(faultOf(QByteArray(good).replace("\"care\": []", "\"care\": [\"luck\"]")), "exercises[0].care");
    EXPECT_EQ(faultOf(QByteArray(good).replace(R"("harder": [])", R"("harder": ["z"])")), "a");
    EXPECT_EQ(faultOf(QByteArray(good).replace(R"(["b", "c"])", R"(["b"])")), "a");
    EXPECT_EQ(faultOf(good + "," + good), "a");
    EXPECT_EQ(faultOf(QByteArray(good).replace("\"name\"", "\"title\"")), "exercises[0].title");
    EXPECT_EQ(readCatalogue("{").error().reason.substr(0, 10), "is no JSON");
}

}  // namespace chalk::exchange
