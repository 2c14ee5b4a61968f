#include "tests/ui/print/card_fixture.h"

namespace chalk::test {

namespace {

using base::Load;
using lifts::EquipmentKind;
using lifts::Measure;
using progression::PrescriptionKind;
using progression::Stage;
using sessions::CardContent;
using sessions::CardLift;

Load cardLoad(double value)
{
    return Load::fromCenti(static_cast<std::int32_t>(value * 100));
}

std::vector<Load> cardLoads(std::initializer_list<double> values)
{
    std::vector<Load> loads;
    for (const double value : values) {
        loads.push_back(cardLoad(value));
    }
    return loads;
}

CardLift onBar(CardLift lift, std::initializer_list<double> plates, base::Seconds rest)
{
    lift.isOnBar = true;
    lift.equipment = EquipmentKind::Barbell;
    lift.platesPerSide = cardLoads(plates);
    lift.rest = rest;
    return lift;
}

CardLift unloadedLift(std::string name, Stage stage)
{
    CardLift lift = workLift(std::move(name), stage, 0, 0, 5, 5);
    lift.kind = PrescriptionKind::Rehearse;
    lift.pauseMs = stage == Stage::Control ? 1000 : 0;
    lift.equipment = EquipmentKind::None;
    lift.warmUp.clear();
    return lift;
}

}  // namespace

CardLift workLift(std::string name, Stage stage, double load, int sets, int low, int high)
{
    CardLift lift;
    lift.name = std::move(name);
    lift.stage = stage;
    lift.lever = progression::leverOf(stage);
    lift.load = cardLoad(load);
    lift.sets = sets;
    lift.amountLow = low;
    lift.amountHigh = high;
    lift.rest = base::Seconds(120);
    lift.reserve = 2;
    lift.warmUp = {{cardLoad(load / 2), 5}};
    lift.cues = {"Whole foot stays on the floor", "Knees go where the toes point"};
    return lift;
}

CardContent ferroCard()
{
    CardContent card;
    card.clientName = "Joaquin Ferro";
    card.date = *base::Date::parse("2026-11-24");
    card.startMinute = 540;
    card.coachName = "Ines";
    card.place = "Rack 1";
    card.sessionCode = "K7QMX2PARW";
    card.sessionNumber = 58;
    card.cautions = {{"Back", "No loaded rounding. Hinge under 120 kg."}};
    card.drills = {"Bodyweight squat", "Hip bridge"};
    card.lifts.push_back(onBar(workLift("Back squat", Stage::RepBuild, 77.5, 3, 8, 8), {25, 2.5, 1.25}, base::Seconds(150)));
    card.lifts[0].cycle = 2;
    card.lifts[0].warmUp = {{cardLoad(20), 10}, {cardLoad(37.5), 5}, {cardLoad(52.5), 3}, {cardLoad(65), 2}};
    card.lifts.push_back(onBar(workLift("Bench press", Stage::SetBuild, 60, 5, 8, 8), {20}, base::Seconds(150)));
    card.lifts[1].warmUp = {{cardLoad(20), 10}, {cardLoad(30), 5}, {cardLoad(40), 3}, {cardLoad(50), 2}};
    card.lifts.push_back(onBar(workLift("Chest-rested row", Stage::RestCut, 47.5, 4, 8, 8), {10, 2.5, 1.25}, base::Seconds(75)));
    card.lifts.push_back(workLift("Split squat", Stage::BaseLoad, 12, 3, 5, 10));
    card.lifts[3].pieces = 2;
    card.lifts[3].equipment = EquipmentKind::DumbbellPair;
    card.lifts.push_back(workLift("Suitcase carry", Stage::LoadBuild, 28, 3, 20, 40));
    card.lifts[4].measure = Measure::Metres;
    card.lifts[4].equipment = EquipmentKind::Kettlebell;
    card.lifts[4].warmUp = {{cardLoad(12), 20}};
    return card;
}

CardContent crowdedCard()
{
    CardContent card = ferroCard();
    card.clientName = "Wilhelmina-Alexandrine von Hohenschwangau-Featherstonehaugh";
    card.coachName = "Maximiliana Featherstonehaugh";
    card.place = "Upper training floor, rack 12";
    card.cautions = {{"Lower back", "No loaded rounding, no twisting under load, hinge stays under 120 kg until the re-screen on 12 Feb 2027."},
                     {"Blood pressure", "Takes medicine in the morning. No breath-holding, rises slowly from the floor, stops at once at any dizziness."},
                     {"Shoulder blade, right", "Nothing overhead."}};
    card.lifts.clear();
    card.lifts.push_back(onBar(workLift("Rear-foot-raised split squat", Stage::RepBuild, 1127.5, 6, 12, 12), {45, 45, 45, 45, 25, 10, 5, 2.5, 1.25}, base::Seconds(3599)));
    card.lifts[0].cycle = 12;
    card.lifts[0].unit = base::MassUnit::Pound;
    card.lifts.push_back(workLift("Chest-rested dumbbell row with a very long name", Stage::LoadBuild, 127.25, 6, 5, 10));
    card.lifts[1].pieces = 2;
    card.lifts[1].unit = base::MassUnit::Pound;
    card.lifts[1].equipment = EquipmentKind::DumbbellPair;
    card.lifts[1].reserve = 3;
    card.lifts.push_back(workLift("Assisted pull-up", Stage::SetBuild, -27.5, 6, 8, 8));
    card.lifts[2].equipment = EquipmentKind::AddedToBody;
    card.lifts.push_back(workLift("Push-up", Stage::RestCut, 0, 14, 12, 12));
    card.lifts[3].equipment = EquipmentKind::AddedToBody;
    card.lifts[3].isPauseAsked = true;
    card.lifts.push_back(unloadedLift("Half-kneeling one-arm pulldown", Stage::Pattern));
    card.lifts.push_back(unloadedLift("Supported split squat", Stage::Control));
    card.lifts.push_back(workLift("Side plank", Stage::RepBuild, 0, 6, 36, 36));
    card.lifts[6].measure = Measure::Seconds;
    card.lifts[6].equipment = EquipmentKind::None;
    card.lifts.push_back(workLift("Overhead press", Stage::LoadBuild, 0, 0, 0, 0));
    card.lifts[7].kind = PrescriptionKind::Hold;
    card.lifts[7].warmUp.clear();
    return card;
}

}  // namespace chalk::test
