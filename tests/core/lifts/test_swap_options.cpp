#include "core/lifts/swap_options.h"

#include <gtest/gtest.h>

namespace chalk::lifts {

namespace {

Exercise squatOn(std::string key, int rung, EquipmentKind kind)
{
    Exercise exercise;
    exercise.key = std::move(key);
    exercise.name = exercise.key;
    exercise.rung = rung;
    exercise.equipment = kind;
    exercise.cues = {"One", "Two"};
    return exercise;
}

Catalogue squatsToSwap()
{
    Exercise knees = squatOn("split", 4, EquipmentKind::DumbbellPair);
    knees.pieces = 2;
    knees.ruledOutBy = {CautionTag::Knee};
    return Catalogue::of({squatOn("sit", 1, EquipmentKind::None), squatOn("goblet", 2, EquipmentKind::Kettlebell), squatOn("bar", 3, EquipmentKind::Barbell),
                          squatOn("front", 3, EquipmentKind::Barbell), squatOn("press", 3, EquipmentKind::Stack), knees})
        .value();
}

const Equipment kBar = Barbell{base::Load::fromCenti(2000), {}};
const Equipment kDumbbells = FixedSet{{base::Load::fromCenti(800), base::Load::fromCenti(1000)}};
const Equipment kBells = FixedSet{{base::Load::fromCenti(1200)}};

std::vector<std::string> optionsOf(std::span<const CautionTag> cautions)
{
    const std::vector<EquipmentAtHand> atHand{{"Bar", EquipmentKind::Barbell, kBar}, {"Bells", EquipmentKind::Kettlebell, kBells},
                                              {"Dumbbells", EquipmentKind::Dumbbell, kDumbbells}};
    static const Catalogue catalogue = squatsToSwap();
    std::vector<std::string> options;
    for (const SwapOption& option : swapOptions(catalogue, *catalogue.find("bar"), kBar, atHand, cautions)) {
        options.push_back(option.exercise->key + "/" + option.equipmentName);
    }
    return options;
}

}  // namespace

TEST(SwapOptions, OwnEquipmentFirstThenTheNearestAndNothingThatIsNotAtHand)
{
    EXPECT_EQ(optionsOf({}), (std::vector<std::string>{"front/Bar", "goblet/Bells", "split/Dumbbells", "sit/"}));
}

TEST(SwapOptions, WhatACautionRulesOutIsNone)
{
    EXPECT_EQ(optionsOf(std::vector{CautionTag::Knee}), (std::vector<std::string>{"front/Bar", "goblet/Bells", "sit/"}));
}

TEST(SwapOptions, WithNothingAtHandTheBodyIsLeft)
{
    const Catalogue catalogue = squatsToSwap();
    const auto options = swapOptions(catalogue, *catalogue.find("bar"), kBar, {}, {});
    ASSERT_EQ(options.size(), 1U);
    EXPECT_EQ(options.front().equipment, Equipment(BodyAdded{{base::Load()}}));
}

}  // namespace chalk::lifts
