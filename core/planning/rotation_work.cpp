#include "core/planning/rotation_work.h"

#include <algorithm>
#include <map>

namespace chalk::planning {

namespace {

bool needsStation(const RotationClient& client, const std::string& key)
{
    return std::any_of(client.lifts.begin(), client.lifts.end(), [&key](const RotationLift& lift) { return lift.station == key; });
}

/// The stations that somebody may wait for, numbered.
std::map<std::string, int> contestedStations(const RotationRequest& request, std::vector<int>& units)
{
    std::map<std::string, int> numbers;
    for (const RotationStation& station : request.stations) {
        const auto users = std::count_if(request.clients.begin(), request.clients.end(),
                                         [&station](const RotationClient& client) { return needsStation(client, station.key); });
        if (users > station.units) {
            numbers[station.key] = static_cast<int>(units.size());
            units.push_back(station.units);
        }
    }
    return numbers;
}

WorkLift workLiftOf(const RotationClient& client, std::size_t index, const std::map<std::string, int>& stations)
{
    const RotationLift& lift = client.lifts[index];
    WorkLift work{lift.timing.seconds(), lift.block, -1, 0, 0};
    if (const auto found = stations.find(lift.station); found != stations.end()) {
        work.station = found->second;
    }
    for (std::size_t i = 0; i < client.lifts.size(); ++i) {
        const auto bit = static_cast<std::uint8_t>(1U << i);
        if (client.lifts[i].block < lift.block) {
            work.mustBeDone |= bit;
        }
        if (i != index && client.lifts[i].pattern == lift.pattern) {
            work.notRightAfter |= bit;
        }
    }
    return work;
}

/// Whether a lift may follow, by blocks and patterns alone.
bool mayFollow(const WorkLift& lift, unsigned done, int last)
{
    return (lift.mustBeDone & ~done) == 0 && (last < 0 || (lift.notRightAfter >> last & 1) == 0);
}

/// What may follow what, so that all lifts get done.
std::vector<std::uint8_t> nextLiftsOf(const WorkClient& client)
{
    const unsigned all = (1U << client.lifts.size()) - 1;
    const int count = static_cast<int>(client.lifts.size());
    std::vector<std::uint8_t> next(WorkClient::orderIndex(all + 1, -1), 0);
    const auto canEnd = [&](unsigned done, int last) { return done == all || next[WorkClient::orderIndex(done, last)] != 0; };
    for (unsigned done = all; done-- > 0;) {
        for (int last = -1; last < count; ++last) {
            unsigned allowed = 0;
            for (int i = 0; i < count; ++i) {
                const unsigned bit = 1U << i;
                if ((done & bit) == 0 && mayFollow(client.lifts[static_cast<std::size_t>(i)], done, last) && canEnd(done | bit, i)) {
                    allowed |= bit;
                }
            }
            next[WorkClient::orderIndex(done, last)] = static_cast<std::uint8_t>(allowed);
        }
    }
    return next;
}

WorkNeed needOf(const WorkClient& client, unsigned done, int station)
{
    WorkNeed need;
    int firstBlock = 100;
    int lastBlock = -1;
    const auto isLeft = [done](std::size_t lift) { return (done >> lift & 1U) == 0; };
    for (std::size_t i = 0; i < client.lifts.size(); ++i) {
        if (isLeft(i) && client.lifts[i].station == station) {
            need.seconds += client.lifts[i].seconds;
            firstBlock = std::min(firstBlock, client.lifts[i].block);
            lastBlock = std::max(lastBlock, client.lifts[i].block);
        }
    }
    for (std::size_t i = 0; i < client.lifts.size() && need.seconds > 0; ++i) {
        need.before += isLeft(i) && client.lifts[i].block < firstBlock ? client.lifts[i].seconds : 0;
        need.after += isLeft(i) && client.lifts[i].block > lastBlock ? client.lifts[i].seconds : 0;
    }
    return need;
}

/// Works out what is left to do after every set of lifts.
void fillNeeds(WorkClient& client, int stations)
{
    for (unsigned done = 0; done < 1U << client.lifts.size(); ++done) {
        int left = 0;
        for (std::size_t i = 0; i < client.lifts.size(); ++i) {
            left += (done >> i & 1U) == 0 ? client.lifts[i].seconds : 0;
        }
        client.secondsLeft.push_back(left);
        for (int station = 0; station < stations; ++station) {
            client.needs.push_back(needOf(client, done, station));
        }
    }
}

}  // namespace

RotationWork workOf(const RotationRequest& request)
{
    RotationWork work;
    const auto stations = contestedStations(request, work.units);
    for (const RotationClient& client : request.clients) {
        WorkClient one;
        for (std::size_t i = 0; i < client.lifts.size(); ++i) {
            one.lifts.push_back(workLiftOf(client, i, stations));
            one.seconds += one.lifts.back().seconds;
        }
        one.next = nextLiftsOf(one);
        if (one.nextAfter(0, -1) == 0) {
            one.isPatternRepeated = true;
            for (WorkLift& lift : one.lifts) {
                lift.notRightAfter = 0;
            }
            one.next = nextLiftsOf(one);
        }
        fillNeeds(one, static_cast<int>(work.units.size()));
        work.clients.push_back(std::move(one));
    }
    return work;
}

}  // namespace chalk::planning
