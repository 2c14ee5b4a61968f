#include "core/planning/rotation.h"

#include "core/planning/rotation_search.h"

#include <algorithm>
#include <numeric>
#include <set>

#include <fmt/core.h>

namespace chalk::planning {

namespace {

bool isWithin(int value, int least, int most)
{
    return value >= least && value <= most;
}

std::optional<RotationFault> faultOfTiming(const LiftTiming& timing, const std::string& place)
{
    if (!isWithin(timing.sets, 1, 12)) {
        return RotationFault{place + ".sets", "must be 1 to 12"};
    }
    if (!isWithin(timing.workSeconds, 5, 600)) {
        return RotationFault{place + ".work_seconds", "must be 5 to 600"};
    }
    if (!isWithin(timing.restSeconds, 0, 900)) {
        return RotationFault{place + ".rest_seconds", "must be 0 to 900"};
    }
    if (!isWithin(timing.setUpSeconds, 0, 900)) {
        return RotationFault{place + ".set_up_seconds", "must be 0 to 900"};
    }
    return std::nullopt;
}

std::optional<RotationFault> faultOfLift(const RotationLift& lift, const std::set<std::string>& stations, const std::string& place)
{
    if (lift.name.empty()) {
        return RotationFault{place + ".name", "is empty"};
    }
    if (!lift.station.empty() && stations.count(lift.station) == 0) {
        return RotationFault{place + ".station", fmt::format("{} is not among the stations", lift.station)};
    }
    if (!isWithin(lift.block, 0, 9)) {
        return RotationFault{place + ".block", "must be 0 to 9"};
    }
    return faultOfTiming(lift.timing, place);
}

std::optional<RotationFault> faultOfClient(const RotationClient& client, const std::set<std::string>& stations, const std::string& place)
{
    if (client.name.empty()) {
        return RotationFault{place + ".name", "is empty"};
    }
    if (client.lifts.empty() || client.lifts.size() > kMostRotationLifts) {
        return RotationFault{place + ".lifts", fmt::format("must be 1 to {}", kMostRotationLifts)};
    }
    for (std::size_t i = 0; i < client.lifts.size(); ++i) {
        if (auto fault = faultOfLift(client.lifts[i], stations, fmt::format("{}.lifts[{}]", place, i))) {
            return fault;
        }
    }
    return std::nullopt;
}

std::optional<RotationFault> faultOfStations(const std::vector<RotationStation>& stations)
{
    if (stations.size() > kMostRotationStations) {
        return RotationFault{"stations", fmt::format("must be at most {}", kMostRotationStations)};
    }
    std::set<std::string> seen;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        const std::string place = fmt::format("stations[{}]", i);
        if (stations[i].key.empty()) {
            return RotationFault{place + ".key", "is empty"};
        }
        if (!seen.insert(stations[i].key).second) {
            return RotationFault{place + ".key", fmt::format("{} is there twice", stations[i].key)};
        }
        if (!isWithin(stations[i].units, 1, 20)) {
            return RotationFault{place + ".units", "must be 1 to 20"};
        }
    }
    return std::nullopt;
}

}  // namespace

std::optional<RotationFault> faultOf(const RotationRequest& request)
{
    if (auto fault = faultOfStations(request.stations)) {
        return fault;
    }
    if (request.clients.empty() || request.clients.size() > kMostRotationClients) {
        return RotationFault{"clients", fmt::format("must be 1 to {}", kMostRotationClients)};
    }
    std::set<std::string> stations;
    for (const RotationStation& station : request.stations) {
        stations.insert(station.key);
    }
    for (std::size_t i = 0; i < request.clients.size(); ++i) {
        if (auto fault = faultOfClient(request.clients[i], stations, fmt::format("clients[{}]", i))) {
            return fault;
        }
    }
    return std::nullopt;
}

int ClientRotation::waitedSeconds() const
{
    return std::accumulate(turns.begin(), turns.end(), 0, [](int sum, const RotationTurn& turn) { return sum + turn.waitedSeconds; });
}

int Rotation::waitedSeconds() const
{
    return std::accumulate(clients.begin(), clients.end(), 0, [](int sum, const ClientRotation& client) { return sum + client.waitedSeconds(); });
}

int Rotation::endSecond() const
{
    int end = 0;
    for (const ClientRotation& client : clients) {
        end = std::max(end, client.endSecond());
    }
    return end;
}

RotationEffort usualEffort(std::size_t clients)
{
    constexpr std::size_t kEasyClients = 4;
    return clients <= kEasyClients ? RotationEffort{10'000, 70'000} : RotationEffort{100'000, 160'000};
}

Rotation rotationOf(const RotationRequest& request, const RotationEffort& effort)
{
    return RotationSearch(request, effort).run();
}

}  // namespace chalk::planning
