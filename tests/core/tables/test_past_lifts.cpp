#include "core/tables/past_lifts.h"

#include "core/progression/lift_machine.h"

#include <gtest/gtest.h>

namespace chalk::tables {
namespace {

lifts::Exercise exerciseLike(const std::string& key, lifts::EquipmentKind kind, int bodyShare = 0)
{
    lifts::Exercise exercise;
    exercise.key = key;
    exercise.equipment = kind;
    exercise.bodyShare = base::Milli(bodyShare);
    return exercise;
}

ListedSet setOf(int exercise, base::Date day, int centi, int amount, int number = 0)
{
    ListedSet set;
    set.exercise = exercise;
    set.day = day;
    set.load = base::Load::fromCenti(centi);
    set.amount = static_cast<std::int16_t>(amount);
    set.number = static_cast<std::int16_t>(number);
    return set;
}

const base::Date kFirst = *base::Date::fromYmd(2025, 4, 3);
const base::Date kSecond = *base::Date::fromYmd(2025, 4, 5);

TEST(PastLifts, GroupsSetsBySessionAndExercise)
{
    const lifts::Exercise squat = exerciseLike("back_squat", lifts::EquipmentKind::Barbell);
    const lifts::Exercise press = exerciseLike("bench_press", lifts::EquipmentKind::Barbell);
    TableContent content;
    content.sessions[{0, kFirst}] = {"late", 45};
    const std::vector<ListedSet> sets{setOf(1, kSecond, 5000, 8), setOf(0, kFirst, 8000, 8), setOf(1, kFirst, 5000, 9), setOf(0, kFirst, 8000, 7), setOf(2, kFirst, 1, 1)};
    const auto choice = [&](std::int32_t index) { return index == 0 ? &squat : index == 1 ? &press : nullptr; };
    const auto past = pastSessionsOf(content, 0, sets, choice, base::MassUnit::Kilogram);
    ASSERT_EQ(past.size(), 2U);
    EXPECT_EQ(past[0].day, kFirst);
    EXPECT_EQ(past[0].note, "late");
    EXPECT_EQ(past[0].minutes, 45);
    ASSERT_EQ(past[0].done.size(), 2U);
    EXPECT_EQ(past[0].done[0].exercise, &squat);
    ASSERT_EQ(past[0].done[0].exposure.sets.size(), 2U);
    EXPECT_EQ(past[0].done[0].exposure.sets[1].amount, 7);
    EXPECT_EQ(past[1].done[0].exercise, &press);
}

TEST(PastLifts, OrdersSetsByTheirNumbersAndChangesUnits)
{
    const lifts::Exercise squat = exerciseLike("back_squat", lifts::EquipmentKind::Barbell);
    const std::vector<ListedSet> sets{setOf(0, kFirst, 8000, 7, 2), setOf(0, kFirst, 8000, 8, 1)};
    const auto past = pastSessionsOf({}, 0, sets, [&](std::int32_t) { return &squat; }, base::MassUnit::Pound);
    const auto& records = past.at(0).done.at(0).exposure.sets;
    EXPECT_EQ(records[0].amount, 8);
    EXPECT_EQ(records[1].amount, 7);
    EXPECT_EQ(records[0].load, base::Load::fromCenti(17637));  // 80 kg: 1 lb is exactly 0.45359237 kg
}

TEST(PastLifts, BeginsALoadedLiftAtBaseLoadWithWhatTheEquipmentGives)
{
    const lifts::Exercise squat = exerciseLike("back_squat", lifts::EquipmentKind::Barbell);
    const std::vector<ListedSet> sets{setOf(0, kFirst, 8130, 8), setOf(0, kSecond, 9000, 8)};
    const auto past = pastSessionsOf({}, 0, sets, [&](std::int32_t) { return &squat; }, base::MassUnit::Kilogram);
    const lifts::Barbell bar{base::Load::fromCenti(2000), {{base::Load::fromCenti(2000), 2}, {base::Load::fromCenti(1000), 1}}};
    const std::vector<planning::EquipmentOnHand> equipment{{"olympic", lifts::EquipmentKind::Barbell, bar}};
    const PastSetup begun = pastSetupOf(squat, base::MassUnit::Kilogram, {}, equipment, past);
    EXPECT_EQ(begun.equipmentKey, "olympic");
    EXPECT_EQ(begun.setup.startStage, progression::Stage::BaseLoad);
    EXPECT_EQ(begun.setup.kit.startLoad, base::Load::fromCenti(8000));
    EXPECT_TRUE(progression::LiftMachine::create(begun.setup));
    // Without such equipment the loads that were done are what there is.
    const PastSetup without = pastSetupOf(squat, base::MassUnit::Kilogram, {}, {}, past);
    EXPECT_EQ(without.equipmentKey, "");
    EXPECT_EQ(without.setup.kit.equipment, lifts::Equipment(lifts::FixedSet{{base::Load::fromCenti(8130), base::Load::fromCenti(9000)}}));
    EXPECT_TRUE(progression::LiftMachine::create(without.setup));
}

TEST(PastLifts, BeginsWithoutLoadAtPatternAndWithoutBodyMassWithoutAShare)
{
    const lifts::Exercise drill = exerciseLike("hip_hinge_drill", lifts::EquipmentKind::None);
    const lifts::Exercise chin = exerciseLike("chin_up", lifts::EquipmentKind::AddedToBody, 1000);
    const std::vector<ListedSet> sets{setOf(0, kFirst, 0, 8)};
    const auto ofDrill = pastSessionsOf({}, 0, sets, [&](std::int32_t) { return &drill; }, base::MassUnit::Kilogram);
    EXPECT_EQ(pastSetupOf(drill, base::MassUnit::Kilogram, {}, {}, ofDrill).setup.startStage, progression::Stage::Pattern);
    const auto ofChin = pastSessionsOf({}, 0, sets, [&](std::int32_t) { return &chin; }, base::MassUnit::Kilogram);
    const PastSetup bare = pastSetupOf(chin, base::MassUnit::Kilogram, {}, {}, ofChin);
    EXPECT_EQ(bare.setup.kit.bodyShare, base::Milli(0));
    EXPECT_EQ(bare.setup.startStage, progression::Stage::BaseLoad);
    EXPECT_TRUE(progression::LiftMachine::create(bare.setup));
    EXPECT_EQ(pastSetupOf(chin, base::MassUnit::Kilogram, base::Load::fromCenti(7000), {}, ofChin).setup.kit.bodyShare, base::Milli(1000));
}

}  // namespace
}  // namespace chalk::tables
