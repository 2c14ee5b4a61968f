#include "core/lifts/catalogue.h"

#include <gtest/gtest.h>

#include <functional>

namespace chalk::lifts {

namespace {

Exercise exerciseOf(std::string key, int rung, EquipmentKind kind = EquipmentKind::None)
{
    Exercise exercise;
    exercise.key = std::move(key);
    exercise.name = exercise.key;
    exercise.rung = rung;
    exercise.equipment = kind;
    exercise.cues = {"One", "Two"};
    return exercise;
}

/// sit - box - bar, box - legs: four squats, the last two on one rung.
std::vector<Exercise> fourSquats()
{
    std::vector<Exercise> four{exerciseOf("sit", 1), exerciseOf("box", 2, EquipmentKind::Kettlebell), exerciseOf("bar", 3, EquipmentKind::Barbell),
                               exerciseOf("legs", 3, EquipmentKind::Stack)};
    four[0].harder = {"box"};
    four[1].easier = {"sit"};
    four[1].harder = {"bar", "legs"};
    four[2].easier = {"box"};
    four[3].easier = {"box"};
    return four;
}

std::vector<std::string> keysOf(const std::vector<const Exercise*>& exercises)
{
    std::vector<std::string> keys;
    for (const Exercise* exercise : exercises) {
        keys.push_back(exercise->key);
    }
    return keys;
}

/// `2.harder` for a fault of the third exercise's harder neighbours, after `spoil` has been at the four squats.
std::string placeAfter(const std::function<void(std::vector<Exercise>&)>& spoil)
{
    std::vector<Exercise> four = fourSquats();
    spoil(four);
    const auto catalogue = Catalogue::of(std::move(four));
    return catalogue ? "sound" : std::to_string(catalogue.error().index) + "." + catalogue.error().field;
}

using Keys = std::vector<std::string>;
using Squats = std::vector<Exercise>;

}  // namespace

TEST(LiftCatalogue, FindsByKeyPatternAndNeighbour)
{
    const auto catalogue = Catalogue::of(fourSquats()).value();
    ASSERT_NE(catalogue.find("box"), nullptr);
    EXPECT_EQ(catalogue.find("box")->rung, 2);
    EXPECT_EQ(catalogue.find("no_such_lift"), nullptr);
    EXPECT_EQ(keysOf(catalogue.of(Pattern::Squat)), (Keys{"sit", "box", "bar", "legs"}));
    EXPECT_TRUE(catalogue.of(Pattern::Hinge).empty());
    EXPECT_EQ(keysOf(catalogue.harderThan(*catalogue.find("box"))), (Keys{"bar", "legs"}));
    EXPECT_EQ(keysOf(catalogue.easierThan(*catalogue.find("bar"))), Keys{"box"});
}

TEST(LiftCatalogue, AlternativesAreTheNearestThatFit)
{
    std::vector<Exercise> four = fourSquats();
    four[3].ruledOutBy = {CautionTag::Pregnancy};
    const auto catalogue = Catalogue::of(std::move(four)).value();
    const Exercise& bar = *catalogue.find("bar");
    const std::array all{EquipmentKind::Barbell, EquipmentKind::Kettlebell, EquipmentKind::Stack};
    EXPECT_EQ(keysOf(catalogue.alternativesTo(bar, all, {})), (Keys{"legs", "box", "sit"}));
    const std::array kettlebell{EquipmentKind::Kettlebell};
    EXPECT_EQ(keysOf(catalogue.alternativesTo(bar, kettlebell, {})), (Keys{"box", "sit"}));
    EXPECT_EQ(keysOf(catalogue.alternativesTo(bar, {}, {})), Keys{"sit"}) << "nothing is needed for the unloaded one";
    const std::array cautions{CautionTag::Knee, CautionTag::Pregnancy};
    EXPECT_EQ(keysOf(catalogue.alternativesTo(bar, all, cautions)), (Keys{"box", "sit"}));
}

TEST(LiftCatalogue, CautionsRuleOutOrAskForCare)
{
    Exercise press = exerciseOf("press", 1);
    press.care = {CautionTag::Wrist, CautionTag::Elbow};
    press.ruledOutBy = {CautionTag::Shoulder};
    EXPECT_FALSE(isRuledOut(press, {}));
    const std::array careful{CautionTag::Elbow, CautionTag::Knee};
    EXPECT_FALSE(isRuledOut(press, careful));
    EXPECT_EQ(caresOf(press, careful), std::vector{CautionTag::Elbow});
    const std::array out{CautionTag::Knee, CautionTag::Shoulder};
    EXPECT_TRUE(isRuledOut(press, out));
    EXPECT_TRUE(caresOf(press, out).empty());
}

TEST(LiftCatalogue, FaultsOfKeysAndNeighboursNameTheirPlace)
{
    EXPECT_EQ(placeAfter([](Squats&) {}), "sound");
    EXPECT_EQ(placeAfter([](Squats& four) { four[1].key.clear(); }), "1.key");
    EXPECT_EQ(placeAfter([](Squats& four) { four[1].key = "Box"; }), "1.key");
    EXPECT_EQ(placeAfter([](Squats& four) { four[3].key = "bar"; }), "3.key");
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].harder = {"none"}; }), "2.harder");
    EXPECT_EQ(placeAfter([](Squats& four) { four[1].harder.push_back("bar"); }), "1.harder");
    EXPECT_EQ(placeAfter([](Squats& four) { four[3].pattern = Pattern::Hinge; }), "1.harder");
    EXPECT_EQ(placeAfter([](Squats& four) { four[0].rung = 2; }), "0.harder");
    EXPECT_EQ(placeAfter([](Squats& four) { four[0].harder.clear(); }), "1.easier") << "named on one side only";
}

TEST(LiftCatalogue, FaultsOfOneExerciseNameTheirPlace)
{
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].name.clear(); }), "2.name");
    EXPECT_EQ(placeAfter([](Squats& four) { four[0].rung = 0; }), "0.rung");
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].cues = {"One"}; }), "2.cues");
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].cues = {"One", "Two", "Three", "Four"}; }), "2.cues");
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].cues = {"One", ""}; }), "2.cues");
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].pieces = 2; }), "2.pieces");
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].equipment = EquipmentKind::DumbbellPair; }), "2.pieces");
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].bodyShare = base::Milli(640); }), "2.body_share");
    EXPECT_EQ(placeAfter([](Squats& four) { four[0].bodyShare = base::Milli(1001); }), "0.body_share");
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].measure = Measure::Metres; }), "2.station");
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].station = Station::Lane; }), "2.station");
    EXPECT_EQ(placeAfter([](Squats& four) { four[2].care = {CautionTag::Knee, CautionTag::Knee}; }), "2.care");
    EXPECT_EQ(placeAfter([](Squats& four) {
                  four[2].care = {CautionTag::Knee};
                  four[2].ruledOutBy = {CautionTag::Knee};
              }),
              "2.ruled_out_by");
}

}  // namespace chalk::lifts
