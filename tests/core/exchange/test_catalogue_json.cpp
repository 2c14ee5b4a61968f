#include "core/exchange/catalogue_json.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace chalk::exchange {

namespace {

using lifts::CautionTag;
using lifts::EquipmentKind;
using lifts::Exercise;

constexpr int kCautionTags = static_cast<int>(CautionTag::GripStrength) + 1;

/// `shoulder: pull_up` and the like for every caution that leaves nothing in a pattern that `isWanted`.
template <class Wanted>
std::set<std::string> holesOf(const lifts::Catalogue& catalogue, Wanted&& isWanted)
{
    std::set<std::string> holes;
    for (int tag = 0; tag < kCautionTags; ++tag) {
        const std::array cautions{static_cast<CautionTag>(tag)};
        for (const lifts::Pattern pattern : lifts::kPatterns) {
            const auto exercises = catalogue.of(pattern);
            const bool isLeft = std::any_of(exercises.begin(), exercises.end(),
                                            [&](const Exercise* exercise) { return isWanted(*exercise) && !isRuledOut(*exercise, cautions); });
            if (!isLeft) {
                holes.insert(std::string(keyOf(cautions[0])) + ": " + std::string(keyOf(pattern)));
            }
        }
    }
    return holes;
}

/// One sound exercise as it stands in a file.
QByteArray oneExercise()
{
    return R"({"key": "a", "name": "A", "pattern": "squat", "region": "lower", "measure": "reps", "equipment": "none",
        "station": "floor", "rung": 1, "easier": [], "harder": [], "cues": ["b", "c"], "care": [], "ruled_out_by": []})";
}

/// `place: reason` of the fault of a catalogue with these exercises.
std::string catalogueFaultOf(const QByteArray& exercises)
{
    const auto read = readCatalogue("{\"exercises\": [" + exercises + "]}");
    return read ? std::string("none") : read.error().field + ": " + read.error().reason;
}

std::string catalogueFaultAfter(const char* sound, const char* spoilt)
{
    const QByteArray one = oneExercise();
    EXPECT_TRUE(one.contains(sound)) << sound;
    return catalogueFaultOf(QByteArray(one).replace(sound, spoilt));
}

}  // namespace

TEST(BuiltInCatalogue, EveryPatternGoesFromUnloadedToLoaded)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        const auto exercises = catalogue.of(pattern);
        EXPECT_GE(exercises.size(), 6U) << keyOf(pattern);
        EXPECT_EQ(exercises.front()->equipment, EquipmentKind::None) << keyOf(pattern);
        EXPECT_NE(exercises.back()->equipment, EquipmentKind::None) << keyOf(pattern);
        std::set<int> rungs;
        for (const Exercise* exercise : exercises) {
            rungs.insert(exercise->rung);
        }
        EXPECT_EQ(*rungs.rbegin(), static_cast<int>(rungs.size())) << "rungs without a gap in " << keyOf(pattern);
    }
}

TEST(BuiltInCatalogue, EveryExerciseIsReachedFromTheEasiestOnes)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    std::set<std::string> reached;
    std::vector<const Exercise*> open;
    for (const Exercise& exercise : catalogue.exercises()) {
        if (exercise.rung == 1) {
            EXPECT_EQ(exercise.equipment, EquipmentKind::None) << exercise.key;
            open.push_back(&exercise);
        }
    }
    while (!open.empty()) {
        const Exercise* exercise = open.back();
        open.pop_back();
        if (reached.insert(exercise->key).second) {
            const auto harder = catalogue.harderThan(*exercise);
            open.insert(open.end(), harder.begin(), harder.end());
        }
    }
    for (const Exercise& exercise : catalogue.exercises()) {
        EXPECT_TRUE(reached.contains(exercise.key)) << exercise.key;
    }
}

TEST(BuiltInCatalogue, NoTwoExercisesShareANameAndTextsAreOneLine)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    std::set<std::string> names;
    for (const Exercise& exercise : catalogue.exercises()) {
        EXPECT_TRUE(names.insert(exercise.name).second) << exercise.name;
        EXPECT_LE(exercise.name.size(), 32U) << exercise.name;
        for (const std::string& cue : exercise.cues) {
            EXPECT_LE(cue.size(), 70U) << exercise.key << ": " << cue;
            EXPECT_EQ(cue.find_first_of("\n!"), std::string::npos) << cue;
            EXPECT_NE(cue.back(), '.') << cue;
        }
    }
}

TEST(BuiltInCatalogue, EverySingleCautionLeavesALoadedExerciseInEveryPattern)
{
    const std::set<std::string> holes =
        holesOf(builtInCatalogue(), [](const Exercise& exercise) { return exercise.equipment != EquipmentKind::None; });
    EXPECT_EQ(holes, std::set<std::string>());
}

TEST(BuiltInCatalogue, EverySingleCautionLeavesAnUnloadedExerciseInEveryPattern)
{
    const std::set<std::string> holes =
        holesOf(builtInCatalogue(), [](const Exercise& exercise) { return exercise.equipment == EquipmentKind::None; });
    EXPECT_EQ(holes, std::set<std::string>());
}

TEST(BuiltInCatalogue, KeepsThePromisesThatCautionsMake)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    const auto isOut = [&catalogue](const char* key, CautionTag tag) {
        const Exercise* exercise = catalogue.find(key);
        return exercise != nullptr && isRuledOut(*exercise, std::array{tag});
    };
    for (const char* lyingFlatOrFaceDown : {"bench_press", "dumbbell_bench_press", "floor_press", "chest_rested_row", "plank", "hip_thrust"}) {
        EXPECT_TRUE(isOut(lyingFlatOrFaceDown, CautionTag::Pregnancy)) << lyingFlatOrFaceDown;
    }
    for (const char* overhead : {"overhead_press", "dumbbell_overhead_press", "machine_overhead_press", "pull_up", "scapular_hang"}) {
        EXPECT_TRUE(isOut(overhead, CautionTag::Shoulder)) << overhead;
    }
    for (const char* longLever : {"romanian_deadlift", "conventional_deadlift", "bent_row"}) {
        EXPECT_TRUE(isOut(longLever, CautionTag::LowerBack)) << longLever;
    }
    for (const char* barOnTheBack : {"box_squat", "back_squat", "tempo_back_squat"}) {
        EXPECT_TRUE(isOut(barOnTheBack, CautionTag::Neck)) << barOnTheBack;
    }
    EXPECT_TRUE(isOut("rear_foot_raised_split_squat", CautionTag::Balance));
    EXPECT_TRUE(isOut("conventional_deadlift", CautionTag::BoneDensity)) << "loaded rounding";
}

TEST(BuiltInCatalogue, BodySharesAreThoseInCommonUse)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    EXPECT_EQ(catalogue.find("push_up")->bodyShare, base::Milli(640)) << "as in the specification of progression";
    EXPECT_EQ(catalogue.find("pull_up")->bodyShare, base::Milli(1000));
    EXPECT_EQ(catalogue.find("back_squat")->bodyShare, base::Milli(0));
    const char* const ladder[] = {"wall_push_up", "raised_push_up", "kneeling_push_up", "push_up"};
    for (std::size_t i = 1; i < std::size(ladder); ++i) {
        EXPECT_LT(catalogue.find(ladder[i - 1])->bodyShare, catalogue.find(ladder[i])->bodyShare) << ladder[i];
    }
}

TEST(BuiltInCatalogue, AlternativesFitEquipmentAndCautions)
{
    const lifts::Catalogue catalogue = builtInCatalogue();
    const Exercise& press = *catalogue.find("overhead_press");
    const std::array kinds{EquipmentKind::Dumbbell, EquipmentKind::Stack, EquipmentKind::Barbell};
    for (const Exercise* exercise : catalogue.alternativesTo(press, kinds, std::array{CautionTag::Shoulder})) {
        EXPECT_EQ(exercise->pattern, lifts::Pattern::VerticalPush);
        EXPECT_NE(exercise->key, press.key);
        EXPECT_FALSE(isRuledOut(*exercise, std::array{CautionTag::Shoulder})) << exercise->key;
    }
    EXPECT_EQ(catalogue.alternativesTo(press, kinds, {}).front()->key, "machine_overhead_press") << "the nearest first";
}

TEST(CatalogueJson, FaultsNameTheirPlace)
{
    EXPECT_EQ(catalogueFaultOf(oneExercise()), "none");
    EXPECT_EQ(catalogueFaultAfter("squat", "crawl"), "exercises[0].pattern: is a word that is not known here");
    EXPECT_EQ(catalogueFaultAfter("\"floor\"", "\"moon\""), "exercises[0].station: is a word that is not known here");
    EXPECT_EQ(catalogueFaultAfter("\"rung\": 1", "\"rung\": 1.5"), "exercises[0].rung: must be a whole number");
    EXPECT_EQ(catalogueFaultAfter("\"rung\": 1", "\"rung\": 0"), "exercises[0].rung: must be 1 to 100");
    EXPECT_EQ(catalogueFaultAfter("\"care\": []", "\"care\": [\"luck\"]"), "exercises[0].care: luck is no caution that is known here");
    EXPECT_EQ(catalogueFaultAfter(R"("harder": [])", R"("harder": ["z"])"), "exercises[0].harder: a: names z, which is not there");
    EXPECT_EQ(catalogueFaultAfter(R"(["b", "c"])", R"(["b"])"), "exercises[0].cues: a: must be two or three");
    EXPECT_EQ(catalogueFaultAfter(R"(["b", "c"])", R"(["b", 3])"), "exercises[0].cues: must be a list of texts");
    EXPECT_EQ(catalogueFaultAfter("\"name\"", "\"title\"").substr(0, 18), "exercises[0].title");
    EXPECT_EQ(catalogueFaultOf(oneExercise() + "," + oneExercise()), "exercises[1].key: a is there twice");
    EXPECT_EQ(catalogueFaultOf("7"), "exercises[0]: must be an object");
}

TEST(CatalogueJson, TextThatIsNoCatalogueIsRefused)
{
    EXPECT_EQ(readCatalogue("{\n\"exercises\": [}").error().field.substr(0, 7), "line 2,");
    EXPECT_EQ(readCatalogue("").error().field, "line 1, column 1");
    EXPECT_EQ(readCatalogue("[]").error().field, "input");
    EXPECT_EQ(readCatalogue("{}").error().field, "exercises");
    EXPECT_TRUE(readCatalogue(R"({"exercises": []})").has_value());
}

}  // namespace chalk::exchange
