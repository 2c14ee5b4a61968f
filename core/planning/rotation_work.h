#pragma once

#include "core/planning/rotation.h"

#include <array>
#include <cstdint>
#include <limits>
#include <vector>

namespace chalk::planning {

/// One lift as the search sees it.
struct WorkLift {
    int seconds = 0;
    int block = 0;
    int station = -1;                  ///< of RotationWork::units; -1 where nobody can be kept waiting for it
    std::uint8_t mustBeDone = 0;       ///< the lifts of lower blocks, a bit each
    std::uint8_t notRightAfter = 0;    ///< the lifts of the same pattern, a bit each
};

/// What a client still has to do at one station, in seconds.
struct WorkNeed {
    int seconds = 0;
    int before = 0;  ///< lifts of lower blocks than the first one there
    int after = 0;   ///< lifts of higher blocks than the last one there
};

struct WorkClient {
    std::vector<WorkLift> lifts;
    int seconds = 0;                   ///< of all its lifts
    bool isPatternRepeated = false;
    std::vector<int> secondsLeft;      ///< by what is done
    std::vector<WorkNeed> needs;       ///< by what is done, for each station that counts
    std::vector<std::uint8_t> next;    ///< by what is done and what was done last (see orderIndex): what may follow and leaves an order for the rest

    [[nodiscard]] static std::size_t orderIndex(unsigned done, int last) { return done * (kMostRotationLifts + 1) + static_cast<std::size_t>(last + 1); }
    /// A bit for each lift that may be next.
    [[nodiscard]] unsigned nextAfter(unsigned done, int last) const { return next[orderIndex(done, last)]; }
};

/// A request in numbers. Stations of which there are as many as clients that use them keep nobody waiting and are left out.
struct RotationWork {
    std::vector<WorkClient> clients;
    std::vector<int> units;            ///< by station that counts; at most one for each client less one
};

[[nodiscard]] RotationWork workOf(const RotationRequest& request);

/// The most units that the search keeps the time of: every station short of one for somebody.
inline constexpr std::size_t kMostTrackedUnits = kMostRotationStations * (kMostRotationClients - 1);

/// How far a rotation has come: who has done what, and when everybody and everything is free again. Lifts are begun in the order of their
/// starts, those with one start in the order of the clients, so that every rotation is met once.
struct RotationState {
    std::array<std::uint8_t, kMostRotationClients> done{};                  ///< a bit for each lift
    std::array<std::int8_t, kMostRotationClients> last{-1, -1, -1, -1, -1, -1};
    std::array<int, kMostRotationClients> clientFree{};
    std::array<int, kMostTrackedUnits> unitFree{};                          ///< those of a station one after the other, the first free first
    int lastStart = 0;
    std::size_t lastClient = 0;

    /// In its turn a client begins no earlier.
    [[nodiscard]] int leastStart(std::size_t client) const { return client < lastClient ? lastStart + 1 : lastStart; }
};

/// The least that waiting can still come to, and the least end.
struct RotationBound {
    int waited = 0;
    int end = 0;

    [[nodiscard]] bool isWorseOrEqual(const RotationBound& other) const { return waited != other.waited ? waited > other.waited : end >= other.end; }
};

/// Never above what the best completion of `state` reaches. For each station that counts: the clients that still need it leave it in some
/// order, and whoever is among the last to leave cannot end before all work of those before is done there. No better bound is sought than `enough` seconds of waiting.
[[nodiscard]] RotationBound boundOf(const RotationWork& work, const RotationState& state, int enough = std::numeric_limits<int>::max());

/// Where the units of a station begin in RotationState::unitFree.
[[nodiscard]] inline std::size_t firstUnit(int station)
{
    return static_cast<std::size_t>(station) * (kMostRotationClients - 1);
}

}  // namespace chalk::planning
