#pragma once

#include "core/lifts/pattern.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace chalk::planning {

inline constexpr std::size_t kMostRotationClients = 6;
inline constexpr std::size_t kMostRotationLifts = 8;
inline constexpr std::size_t kMostRotationStations = 12;

/// How long a lift takes its station.
struct LiftTiming {
    int sets = 1;            ///< 1 to 12
    int workSeconds = 40;    ///< of one set, 5 to 600
    int restSeconds = 0;     ///< after each set, the last one included: it is the way to the next lift; 0 to 900
    int setUpSeconds = 0;    ///< 0 to 900

    [[nodiscard]] int seconds() const { return sets * (workSeconds + restSeconds) + setUpSeconds; }
    bool operator==(const LiftTiming&) const = default;
};

/// A kind of place that lifts are done at, and how many of it there are.
struct RotationStation {
    std::string key;
    int units = 1;  ///< 1 to 20

    bool operator==(const RotationStation&) const = default;
};

struct RotationLift {
    std::string name;     ///< for people
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string station;  ///< key of a station; empty where none is needed
    int block = 0;        ///< 0 to 9: lifts of a lower block come first, inside a block the order is free
    LiftTiming timing;

    bool operator==(const RotationLift&) const = default;
};

struct RotationClient {
    std::string name;
    std::vector<RotationLift> lifts;  ///< 1 to kMostRotationLifts

    bool operator==(const RotationClient&) const = default;
};

/// Everybody in one slot; all begin together.
struct RotationRequest {
    std::vector<RotationStation> stations;  ///< at most kMostRotationStations
    std::vector<RotationClient> clients;    ///< 1 to kMostRotationClients

    bool operator==(const RotationRequest&) const = default;
};

/// A field of a request by its name in files (`clients[1].lifts[0].station`) and what is wrong with it.
struct RotationFault {
    std::string field;
    std::string reason;
};

/// The first thing wrong; nothing for a sound request.
[[nodiscard]] std::optional<RotationFault> faultOf(const RotationRequest& request);

/// One lift of a client in its turn. Seconds count from the start of the slot.
struct RotationTurn {
    std::size_t lift = 0;     ///< of the client
    int beginSecond = 0;
    int endSecond = 0;
    int waitedSeconds = 0;    ///< before it
    std::optional<int> unit;  ///< of its station, counted from 0; nothing where it needs none

    bool operator==(const RotationTurn&) const = default;
};

struct ClientRotation {
    std::vector<RotationTurn> turns;  ///< in their order
    bool isPatternRepeated = false;   ///< no order of these lifts keeps two of one pattern apart, so the order was left free of it

    [[nodiscard]] int waitedSeconds() const;
    [[nodiscard]] int endSecond() const { return turns.empty() ? 0 : turns.back().endSecond; }
    bool operator==(const ClientRotation&) const = default;
};

/// Who does what when.
struct Rotation {
    std::vector<ClientRotation> clients;  ///< in the order of the request
    bool isProved = false;                ///< none waits less in all, and of those none ends earlier
    std::int64_t steps = 0;               ///< that the search took

    [[nodiscard]] int waitedSeconds() const;
    [[nodiscard]] int endSecond() const;
    bool operator==(const Rotation&) const = default;
};

/// How long the search may go on. Counted in steps, so that the same request gets the same rotation on every machine.
struct RotationEffort {
    int moves = 10'000;               ///< of the search for a good order to begin with
    std::int64_t mostSteps = 70'000;  ///< of the search for a proof, about half a microsecond each for four clients, one for six
};

/// What is worth spending: about 50 ms for up to four clients, up to 300 ms for more.
[[nodiscard]] RotationEffort usualEffort(std::size_t clients);

/// An order of the lifts for each client and a unit for each lift: no unit is used twice at once, blocks are kept, two lifts of one pattern
/// never follow each other where an order without that exists. Least waiting in all first, then the earliest end of the last client.
/// Branch and bound over all orders; where the effort runs out, the best found. The request is sound.
[[nodiscard]] Rotation rotationOf(const RotationRequest& request, const RotationEffort& effort);

}  // namespace chalk::planning
