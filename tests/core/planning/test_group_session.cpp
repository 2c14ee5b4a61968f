#include "core/planning/group_session.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::planning {

namespace {

using lifts::Pattern;
using lifts::Station;
using progression::PrescriptionKind;
using sessions::CardContent;
using sessions::CardLift;

CardLift groupLift(std::string name, Pattern pattern, Station station, int sets = 3)
{
    CardLift lift;
    lift.name = std::move(name);
    lift.pattern = pattern;
    lift.station = station;
    lift.sets = sets;
    lift.amountLow = 8;
    lift.amountHigh = 8;
    lift.rest = base::Seconds(120);
    return lift;
}

CardContent groupCard(std::string name, std::vector<CardLift> lifts)
{
    CardContent card;
    card.clientName = std::move(name);
    card.lifts = std::move(lifts);
    return card;
}

std::vector<CardContent> twoForOneRack()
{
    return {groupCard("Tove", {groupLift("Back squat", Pattern::Squat, Station::Rack), groupLift("Push-up", Pattern::HorizontalPush, Station::Floor)}),
            groupCard("Osric", {groupLift("Front squat", Pattern::Squat, Station::Rack), groupLift("Row", Pattern::HorizontalPull, Station::Floor)})};
}

}  // namespace

TEST(GroupSession, ALiftTakesItsSetsRestsAndSettingUp)
{
    CardLift lift = groupLift("Back squat", Pattern::Squat, Station::Rack);
    EXPECT_EQ(timingOf(lift), (LiftTiming{3, 32, 120, 30}));
    lift.platesPerSide = {base::Load::fromCenti(2000), base::Load::fromCenti(250)};
    lift.warmUp = {{base::Load::fromCenti(2000), 10}, {base::Load::fromCenti(4000), 5}};
    EXPECT_EQ(timingOf(lift).setUpSeconds, 30 + 2 * 10 + 2 * 45);
    lift.measure = lifts::Measure::Metres;
    lift.amountHigh = 30;
    EXPECT_EQ(timingOf(lift).workSeconds, 30);
    lift.measure = lifts::Measure::Seconds;
    lift.amountHigh = 45;
    EXPECT_EQ(timingOf(lift).workSeconds, 45);
}

TEST(GroupSession, ARehearsalIsTwoTrialsWithItsPauses)
{
    CardLift lift = groupLift("Hip hinge", Pattern::Hinge, Station::Floor, 0);
    lift.kind = PrescriptionKind::Rehearse;
    lift.amountHigh = 5;
    EXPECT_EQ(timingOf(lift), (LiftTiming{2, 20, 60, 30}));
    lift.pauseMs = 2000;
    EXPECT_EQ(timingOf(lift).workSeconds, 20 + 5 * 3 * 2);
}

TEST(GroupSession, TimingsStayInsideWhatARotationTakes)
{
    CardLift lift = groupLift("Squat", Pattern::Squat, Station::Rack, 50);
    lift.amountHigh = 900;
    lift.rest = base::Seconds(3599);
    lift.warmUp = std::vector<sessions::CardWarmUp>(40);
    const std::vector<CardContent> cards{groupCard("Tove", {lift})};
    EXPECT_FALSE(faultOf(rotationRequestOf(cards, usualStations())).has_value());
    lift.sets = 0;
    lift.amountHigh = 0;
    EXPECT_FALSE(faultOf(rotationRequestOf({groupCard("Tove", {lift})}, usualStations())).has_value());
}

TEST(GroupSession, OnlyStationsThatAreShortKeepAnybodyWaiting)
{
    const RotationRequest request = rotationRequestOf(twoForOneRack(), {{Station::Rack, 1}});
    ASSERT_EQ(request.clients.size(), 2U);
    EXPECT_EQ(request.clients[0].lifts[0].station, "rack");
    EXPECT_EQ(request.clients[0].lifts[1].station, "");
    EXPECT_FALSE(faultOf(request).has_value());
}

TEST(GroupSession, OneRackIsUsedByOneAtATime)
{
    const GroupSession group = groupSessionOf(twoForOneRack(), {{Station::Rack, 1}});
    EXPECT_TRUE(group.isProved);
    EXPECT_EQ(group.waitedSeconds(), 0);
    ASSERT_EQ(group.members.size(), 2U);
    ASSERT_EQ(group.places.size(), 2U) << "the floor and the rack";
    EXPECT_EQ(group.places[1], (GroupPlace{Station::Rack, 0, true}));
    const std::size_t rackFirst = group.members[0].turns[0].place == 1 ? 0 : 1;
    EXPECT_EQ(group.members[1 - rackFirst].turns[1].place, 1U);
    EXPECT_GE(group.members[1 - rackFirst].turns[1].beginSecond, group.members[rackFirst].turns[0].endSecond);
    EXPECT_EQ(group.endSecond(), 2 * (3 * (32 + 120) + 30));
}

// Heavy days of two strength plans: 5 × 3 with rests of 3:30 take a rack for 19 minutes each.
TEST(GroupSession, TwoHeavyDaysOfPlansShareOneRackInsideAnHour)
{
    std::vector<CardContent> cards = twoForOneRack();
    for (CardContent& card : cards) {
        card.lifts[0].sets = 5;
        card.lifts[0].amountLow = 3;
        card.lifts[0].amountHigh = 3;
        card.lifts[0].rest = base::Seconds(210);
        card.lifts.push_back(groupLift("Pulldown", Pattern::VerticalPull, Station::Floor));
    }
    const GroupSession group = groupSessionOf(cards, {{Station::Rack, 1}});
    EXPECT_TRUE(group.isProved);
    std::vector<std::pair<int, int>> rack;
    for (const GroupMember& member : group.members) {
        for (const GroupTurn& turn : member.turns) {
            if (group.places[turn.place].station == Station::Rack) {
                rack.emplace_back(*turn.beginSecond, turn.endSecond);
            }
        }
    }
    std::sort(rack.begin(), rack.end());
    ASSERT_EQ(rack.size(), 2U);
    EXPECT_GE(rack[1].first, rack[0].second) << "one at a time";
    EXPECT_EQ(rack[0].second - rack[0].first, 5 * (12 + 210) + 30);
    EXPECT_LE(group.endSecond(), 3600);
    EXPECT_LE(group.waitedSeconds(), 300);
}

TEST(GroupSession, WhoMustWaitIsSaid)
{
    std::vector<CardContent> cards;
    for (const char* name : {"Tove", "Osric"}) {
        cards.push_back(groupCard(name, {groupLift("Back squat", Pattern::Squat, Station::Rack)}));
    }
    const GroupSession group = groupSessionOf(cards, {{Station::Rack, 1}});
    EXPECT_EQ(group.waitedSeconds(), 3 * (32 + 120) + 30);
    EXPECT_EQ(group.members[0].waitedSeconds() + group.members[1].waitedSeconds(), group.waitedSeconds());
}

TEST(GroupSession, TwoRacksAreTwoPlaces)
{
    std::vector<CardContent> cards;
    for (const char* name : {"Tove", "Osric"}) {
        cards.push_back(groupCard(name, {groupLift("Back squat", Pattern::Squat, Station::Rack)}));
    }
    const GroupSession group = groupSessionOf(cards, {{Station::Rack, 2}});
    ASSERT_EQ(group.places.size(), 2U);
    EXPECT_FALSE(group.places[0].isOnlyOne);
    EXPECT_NE(group.members[0].turns[0].place, group.members[1].turns[0].place);
    EXPECT_EQ(group.waitedSeconds(), 0);
}

TEST(GroupSession, CarriesComeLast)
{
    const GroupSession group = groupSessionOf(
        {groupCard("Tove", {groupLift("Suitcase carry", Pattern::CarryBrace, Station::Lane), groupLift("Back squat", Pattern::Squat, Station::Rack)})},
        usualStations());
    ASSERT_EQ(group.members[0].turns.size(), 2U);
    EXPECT_EQ(group.members[0].turns[0].lift, 1U);
}

TEST(GroupSession, WhatIsOnHoldHasNoTimeAndNothingIsLost)
{
    CardLift held = groupLift("Overhead press", Pattern::VerticalPush, Station::Rack);
    held.kind = PrescriptionKind::Hold;
    std::vector<CardLift> many{held};
    const Pattern patterns[] = {Pattern::Squat, Pattern::HorizontalPush, Pattern::Hinge, Pattern::HorizontalPull};
    for (int i = 0; i < 9; ++i) {
        many.push_back(groupLift("Lift", patterns[i % 4], Station::Floor));
    }
    const GroupSession group = groupSessionOf({groupCard("Tove", many), groupCard("Osric", {held}), groupCard("Wren", {})}, usualStations());
    ASSERT_EQ(group.members.size(), 3U);
    ASSERT_EQ(group.members[0].turns.size(), 10U);
    EXPECT_TRUE(group.members[0].turns[7].beginSecond.has_value());
    EXPECT_FALSE(group.members[0].turns[8].beginSecond.has_value());
    EXPECT_FALSE(group.members[0].turns[9].beginSecond.has_value());
    ASSERT_EQ(group.members[1].turns.size(), 1U);
    EXPECT_FALSE(group.members[1].turns[0].beginSecond.has_value());
    EXPECT_TRUE(group.members[2].turns.empty());
    EXPECT_TRUE(groupSessionOf({}, usualStations()).members.empty());
}

TEST(GroupSession, MoreThanSixAreSharedOutEvenly)
{
    EXPECT_TRUE(inGroups({}).empty());
    for (const auto& [count, sizes] : {std::pair<std::size_t, std::vector<std::size_t>>(6, {6}), {7, {4, 3}}, {13, {5, 4, 4}}}) {
        std::vector<std::size_t> found;
        for (const auto& group : inGroups(std::vector<CardContent>(count))) {
            found.push_back(group.size());
        }
        EXPECT_EQ(found, sizes);
    }
}

}  // namespace chalk::planning
