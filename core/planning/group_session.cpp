#include "core/planning/group_session.h"

#include <algorithm>

namespace chalk::planning {

namespace {

using progression::PrescriptionKind;
using sessions::CardContent;
using sessions::CardLift;

constexpr int kSecondsOfRep = 4;
constexpr int kSecondsToGetReady = 30;
constexpr int kSecondsOfPlate = 10;
constexpr int kSecondsOfWarmUpSet = 45;
constexpr int kTrials = 2;
constexpr int kSecondsAfterTrial = 60;
constexpr int kPausesOfTrial = 3;

/// The indices of a card's lifts that the rotation takes.
std::vector<std::size_t> timedLifts(const CardContent& card)
{
    std::vector<std::size_t> timed;
    for (std::size_t i = 0; i < card.lifts.size(); ++i) {
        if (card.lifts[i].kind != PrescriptionKind::Hold && timed.size() < kMostRotationLifts) {
            timed.push_back(i);
        }
    }
    return timed;
}

int workSeconds(const CardLift& lift)
{
    const int perAmount = lift.measure == lifts::Measure::Reps ? kSecondsOfRep : 1;
    return std::clamp(lift.amountHigh * perAmount, 5, 600);
}

RotationLift rotationLiftOf(const CardLift& lift, const FloorStations& stations)
{
    const bool isShort = stations.count(lift.station) > 0;
    return {lift.name, lift.pattern, isShort ? std::string(lifts::keyOf(lift.station)) : std::string(), lift.pattern == lifts::Pattern::CarryBrace ? 1 : 0,
            timingOf(lift)};
}

/// A place for each station and unit that a turn uses.
std::vector<GroupPlace> placesOf(const std::vector<GroupMember>& members, const std::map<std::pair<std::size_t, std::size_t>, int>& units)
{
    std::map<lifts::Station, std::vector<int>> used;
    for (std::size_t m = 0; m < members.size(); ++m) {
        for (const GroupTurn& turn : members[m].turns) {
            const auto unit = units.find({m, turn.lift});
            used[members[m].card.lifts[turn.lift].station].push_back(unit == units.end() ? 0 : unit->second);
        }
    }
    std::vector<GroupPlace> places;
    for (auto& [station, all] : used) {
        std::sort(all.begin(), all.end());
        all.erase(std::unique(all.begin(), all.end()), all.end());
        for (const int unit : all) {
            places.push_back({station, unit, all.size() == 1 && all.front() == 0});
        }
    }
    return places;
}

GroupMember memberOf(const CardContent& card, const std::vector<std::size_t>& timed, const ClientRotation& rotation)
{
    GroupMember member{card, {}, rotation.isPatternRepeated};
    for (const RotationTurn& turn : rotation.turns) {
        member.turns.push_back({timed[turn.lift], turn.beginSecond, turn.endSecond, turn.waitedSeconds, 0});
    }
    for (std::size_t i = 0; i < card.lifts.size(); ++i) {
        if (std::find(timed.begin(), timed.end(), i) == timed.end()) {
            member.turns.push_back({i, std::nullopt, 0, 0, 0});
        }
    }
    return member;
}

}  // namespace

FloorStations usualStations()
{
    using lifts::Station;
    return {{Station::Rack, 2}, {Station::Bench, 2}, {Station::Machine, 2}, {Station::PullUpBar, 1}, {Station::Lane, 2}};
}

int GroupMember::waitedSeconds() const
{
    int waited = 0;
    for (const GroupTurn& turn : turns) {
        waited += turn.waitedSeconds;
    }
    return waited;
}

int GroupSession::waitedSeconds() const
{
    int waited = 0;
    for (const GroupMember& member : members) {
        waited += member.waitedSeconds();
    }
    return waited;
}

int GroupSession::endSecond() const
{
    int end = 0;
    for (const GroupMember& member : members) {
        for (const GroupTurn& turn : member.turns) {
            end = std::max(end, turn.endSecond);
        }
    }
    return end;
}

LiftTiming timingOf(const CardLift& lift)
{
    if (lift.kind == PrescriptionKind::Rehearse) {
        const int pauses = std::max(1, lift.amountHigh) * kPausesOfTrial * lift.pauseMs / 1000;
        return {kTrials, std::clamp(workSeconds(lift) + pauses, 5, 600), kSecondsAfterTrial, kSecondsToGetReady};
    }
    const auto plates = static_cast<int>(lift.platesPerSide.size());
    const auto warmUps = static_cast<int>(lift.warmUp.size());
    const int setUp = kSecondsToGetReady + plates * kSecondsOfPlate + warmUps * kSecondsOfWarmUpSet;
    return {std::clamp(lift.sets, 1, 12), workSeconds(lift), std::clamp(lift.rest.value(), 0, 900), std::min(setUp, 900)};
}

RotationRequest rotationRequestOf(const std::vector<CardContent>& cards, const FloorStations& stations)
{
    RotationRequest request;
    for (const auto& [station, units] : stations) {
        request.stations.push_back({std::string(lifts::keyOf(station)), std::clamp(units, 1, 20)});
    }
    for (const CardContent& card : cards) {
        RotationClient client{card.clientName, {}};
        for (const std::size_t lift : timedLifts(card)) {
            client.lifts.push_back(rotationLiftOf(card.lifts[lift], stations));
        }
        if (!client.lifts.empty()) {
            request.clients.push_back(std::move(client));
        }
    }
    return request;
}

GroupSession groupSessionOf(const std::vector<CardContent>& cards, const FloorStations& stations)
{
    const RotationRequest request = rotationRequestOf(cards, stations);
    const Rotation rotation = request.clients.empty() ? Rotation{{}, true, 0} : rotationOf(request, usualEffort(request.clients.size()));
    GroupSession group;
    group.isProved = rotation.isProved;
    std::map<std::pair<std::size_t, std::size_t>, int> units;
    std::size_t rotated = 0;
    for (const CardContent& card : cards) {
        const std::vector<std::size_t> timed = timedLifts(card);
        const ClientRotation turns = timed.empty() ? ClientRotation() : rotation.clients[rotated++];
        for (const RotationTurn& turn : turns.turns) {
            units[{group.members.size(), timed[turn.lift]}] = turn.unit.value_or(0);
        }
        group.members.push_back(memberOf(card, timed, turns));
    }
    group.places = placesOf(group.members, units);
    for (std::size_t m = 0; m < group.members.size(); ++m) {
        for (GroupTurn& turn : group.members[m].turns) {
            const auto unit = units.find({m, turn.lift});
            const lifts::Station station = group.members[m].card.lifts[turn.lift].station;
            const auto place = std::find_if(group.places.begin(), group.places.end(), [&](const GroupPlace& one) {
                return one.station == station && one.unit == (unit == units.end() ? 0 : unit->second);
            });
            turn.place = static_cast<std::size_t>(place - group.places.begin());
        }
    }
    return group;
}

std::vector<std::vector<CardContent>> inGroups(std::vector<CardContent> cards)
{
    const std::size_t groups = (cards.size() + kMostRotationClients - 1) / kMostRotationClients;
    std::vector<std::vector<CardContent>> all;
    for (std::size_t i = 0, first = 0; i < groups; ++i) {
        const std::size_t count = (cards.size() - first + groups - i - 1) / (groups - i);
        const auto from = cards.begin() + static_cast<std::ptrdiff_t>(first);
        all.emplace_back(from, from + static_cast<std::ptrdiff_t>(count));
        first += count;
    }
    return all;
}

}  // namespace chalk::planning
