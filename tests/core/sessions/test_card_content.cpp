#include "core/sessions/card_content.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::sessions {

namespace {

using lifts::CautionTag;
using progression::Lever;
using progression::LiftMachine;
using progression::PrescriptionKind;
using progression::Stage;
using test::kilos;

const base::Date kCardDay = *base::Date::parse("2026-11-24");

lifts::Exercise exerciseFor(std::string name, int rung, lifts::EquipmentKind kind)
{
    lifts::Exercise exercise;
    exercise.key = name;
    exercise.name = std::move(name);
    exercise.rung = rung;
    exercise.equipment = kind;
    exercise.cues = {"First cue", "Second cue"};
    return exercise;
}

/// A studio's worth of one client: easy and hard drill, bar squat, and what a request points at.
struct CardCase {
    clients::Client client;
    Session session;
    std::vector<clients::Caution> cautions;
    std::vector<LiftMachine> machines;
    std::vector<LiftDue> lifts;
    lifts::Catalogue catalogue = lifts::Catalogue::of(squats()).value();

    CardCase()
    {
        client.name = "Joaquin Ferro";
        session.date = kCardDay;
        session.startMinute = 540;
        session.place = "Rack 1";
        session.code = "ABC";
        machines.reserve(8);
    }

    static std::vector<lifts::Exercise> squats()
    {
        std::vector<lifts::Exercise> squats{exerciseFor("easy", 1, lifts::EquipmentKind::None), exerciseFor("hard", 2, lifts::EquipmentKind::None),
                                            exerciseFor("bar", 3, lifts::EquipmentKind::Barbell)};
        squats[1].care = {CautionTag::Knee};
        squats[0].ruledOutBy = {CautionTag::Balance};
        squats[1].ruledOutBy = {CautionTag::Balance};
        return squats;
    }

    void add(LiftMachine machine)
    {
        machines.push_back(std::move(machine));
        lifts.push_back({catalogue.find("bar"), &machines.back()});
    }
    void addIn(Stage stage, double load, progression::LiftSetup setup = test::lowerLift())
    {
        test::LiftOnTest lift(std::move(setup));
        lift.set(stage, load);
        add(lift.machine());
    }

    [[nodiscard]] CardContent card() const { return cardContentOf({client, session, "Ines", 58, cautions, lifts, catalogue}); }
};

}  // namespace

TEST(CardContent, SaysWhoWhenAndWhere)
{
    const CardContent card = CardCase().card();
    EXPECT_EQ(card.clientName, "Joaquin Ferro");
    EXPECT_EQ(card.date, kCardDay);
    EXPECT_EQ(card.startMinute, 540);
    EXPECT_EQ(card.coachName, "Ines");
    EXPECT_EQ(card.place, "Rack 1");
    EXPECT_EQ(card.sessionCode, "ABC");
    EXPECT_EQ(card.sessionNumber, 58);
    EXPECT_TRUE(card.lifts.empty());
}

TEST(CardContent, SaysThePrescriptionOfTheDay)
{
    CardCase one;
    one.addIn(Stage::RepBuild, 77.5);
    const CardLift lift = one.card().lifts.at(0);
    EXPECT_EQ(lift.kind, PrescriptionKind::Work);
    EXPECT_EQ(lift.stage, Stage::RepBuild);
    EXPECT_EQ(lift.lever, Lever::Reps);
    EXPECT_EQ(lift.load, kilos(77.5));
    EXPECT_EQ(lift.sets, 2);
    EXPECT_EQ(lift.amountLow, 5);
    EXPECT_EQ(lift.rest, base::Seconds(180));
    EXPECT_EQ(lift.reserve, 2);
    EXPECT_TRUE(lift.isOnBar);
    EXPECT_EQ(lift.platesPerSide, (std::vector{kilos(25), kilos(2.5), kilos(1.25)}));
    EXPECT_EQ(lift.warmUp, (std::vector<CardWarmUp>{{kilos(20), 10}, {kilos(37.5), 5}, {kilos(52.5), 3}, {kilos(65), 2}}));
}

TEST(CardContent, SaysTheLastDayOfALighterWeek)
{
    CardCase one;
    one.addIn(Stage::RepBuild, 77.5);
    EXPECT_FALSE(one.card().lifts.at(0).lighterUntil);
    one.machines.front().apply(kCardDay - 6, progression::LighterWeek{"tired"});
    const CardLift lift = one.card().lifts.at(0);
    EXPECT_EQ(lift.lighterUntil, kCardDay) << "its seventh day";
    EXPECT_EQ(lift.load, kilos(67.5)) << "69.75 at most";
    EXPECT_EQ(lift.sets, 1);
}

TEST(CardContent, HoldsAndCarriesAreSaidInTheirMeasure)
{
    for (const auto& [measure, perRep] : {std::pair(lifts::Measure::Seconds, 3), std::pair(lifts::Measure::Metres, 4)}) {
        CardCase one;
        progression::LiftSetup setup = test::lowerLift(test::fixedKit({8, 16, 24, 32}));
        setup.kit.measure = measure;
        one.addIn(Stage::LoadBuild, 32, setup);
        const CardLift lift = one.card().lifts.at(0);
        EXPECT_EQ(lift.amountLow, 5 * perRep);
        EXPECT_EQ(lift.amountHigh, 10 * perRep);
        EXPECT_EQ(lift.warmUp, (std::vector<CardWarmUp>{{kilos(16), 5 * perRep}}));
        EXPECT_FALSE(lift.isOnBar);
    }
}

TEST(CardContent, ARehearsalHasNoLoadAndAHoldNothing)
{
    CardCase both;
    both.add(test::LiftOnTest().machine());
    test::LiftOnTest hurt;
    hurt.apply(test::goodRehearsal());
    hurt.work({{20, 8, 5}}, 6);
    both.add(hurt.machine());
    const CardContent card = both.card();
    EXPECT_EQ(card.lifts.at(0).kind, PrescriptionKind::Rehearse);
    EXPECT_EQ(card.lifts.at(0).amountLow, 5);
    EXPECT_EQ(card.lifts.at(0).pauseMs, 0) << "pauses come in Control";
    EXPECT_TRUE(card.lifts.at(0).warmUp.empty());
    EXPECT_EQ(card.lifts.at(0).cues.size(), 2U);
    EXPECT_EQ(card.lifts.at(1).kind, PrescriptionKind::Hold);
    EXPECT_EQ(card.lifts.at(1).sets, 0);
}

TEST(CardContent, PausesOfControlAreSaid)
{
    CardCase one;
    progression::LiftSetup setup = test::lowerLift();
    setup.startStage = Stage::Control;
    setup.policy.pauseMs = 1500;
    one.add(LiftMachine::create(setup).value());
    EXPECT_EQ(one.card().lifts.at(0).pauseMs, 1500);
    EXPECT_EQ(one.card().lifts.at(0).lever, Lever::Pauses);
}

TEST(CardContent, ALaterLiftOfTheSameRegionWarmsUpShortly)
{
    CardCase three;
    three.addIn(Stage::LoadBuild, 100);
    three.addIn(Stage::LoadBuild, 100);
    progression::LiftSetup upper = test::lowerLift();
    upper.region = lifts::Region::Upper;
    three.addIn(Stage::LoadBuild, 100, upper);
    const CardContent card = three.card();
    EXPECT_EQ(card.lifts.at(0).warmUp.size(), 4U);
    EXPECT_EQ(card.lifts.at(1).warmUp.size(), 2U);
    EXPECT_EQ(card.lifts.at(2).warmUp.size(), 4U);
}

TEST(CardContent, OnlyCautionsInForceAreSaid)
{
    CardCase one;
    one.cautions = {{{}, "Knee", "No deep step at all.", "No deep step.", {}, kCardDay},
                    {{}, "Wrist", "Keep it straight.", "", {}, std::nullopt},
                    {{}, "Neck", "Over.", "Over.", {}, kCardDay - 1}};
    EXPECT_EQ(one.card().cautions, (std::vector<CardCaution>{{"Knee", "No deep step."}, {"Wrist", "Keep it straight."}}));
}

TEST(CardContent, DrillsMindTheCautions)
{
    CardCase one;
    one.addIn(Stage::LoadBuild, 60);
    EXPECT_EQ(one.card().drills, std::vector<std::string>{"hard"});
    one.cautions = {{{}, "Knee", "Mind it.", "Mind it.", {CautionTag::Knee}, std::nullopt}};
    EXPECT_EQ(one.card().drills, std::vector<std::string>{"easy"});
    one.cautions = {{{}, "Balance", "A support.", "A support.", {CautionTag::Balance}, std::nullopt}};
    EXPECT_TRUE(one.card().drills.empty());
}

}  // namespace chalk::sessions
