#include "core/planning/rotation_work.h"

#include <algorithm>

namespace chalk::planning {

namespace {

/// What one client still has to do at one station.
struct StationNeed {
    int due = 0;       ///< when the client ends if nothing keeps it waiting
    int earliest = 0;  ///< before it its first lift there cannot begin
    int seconds = 0;   ///< at the station
    int after = 0;     ///< lifts of later blocks, after the last one there
};

struct StationNeeds {
    std::array<StationNeed, kMostRotationClients> needs;
    std::size_t count = 0;
};

/// When a client ends if nothing keeps it waiting after the lift that it can begin first.
int dueOf(const WorkClient& client, std::size_t index, const RotationState& state, int& left)
{
    left = 0;
    const int free = std::max(state.clientFree[index], state.leastStart(index));
    const unsigned allowed = client.nextAfter(state.done[index], state.last[index]);
    int start = allowed == 0 ? state.clientFree[index] : 1 << 30;
    for (std::size_t i = 0; i < client.lifts.size(); ++i) {
        const WorkLift& lift = client.lifts[i];
        left += (state.done[index] >> i & 1) != 0 ? 0 : lift.seconds;
        if ((allowed >> i & 1U) != 0) {
            start = std::min(start, lift.station < 0 ? free : std::max(free, state.unitFree[firstUnit(lift.station)]));
        }
    }
    return start + left;
}

StationNeed needOf(const WorkClient& client, unsigned done, int station, int due, int left)
{
    StationNeed need;
    int firstBlock = 100;
    int lastBlock = -1;
    for (std::size_t i = 0; i < client.lifts.size(); ++i) {
        if ((done >> i & 1U) == 0 && client.lifts[i].station == station) {
            need.seconds += client.lifts[i].seconds;
            firstBlock = std::min(firstBlock, client.lifts[i].block);
            lastBlock = std::max(lastBlock, client.lifts[i].block);
        }
    }
    if (need.seconds == 0) {
        return need;
    }
    int before = 0;
    for (std::size_t i = 0; i < client.lifts.size(); ++i) {
        if ((done >> i & 1U) == 0) {
            before += client.lifts[i].block < firstBlock ? client.lifts[i].seconds : 0;
            need.after += client.lifts[i].block > lastBlock ? client.lifts[i].seconds : 0;
        }
    }
    need.due = due;
    need.earliest = due - left + before;
    return need;
}

/// When all units together can have done so much work, the first not begun before `from`.
int endOfWork(const int* unitFree, int units, int from, int seconds)
{
    int open = 0;
    int done = 0;  // seconds that the open units can give up to `at`
    int at = std::max(from, unitFree[0]);
    for (int unit = 0; unit < units; ++unit) {
        const int free = std::max(from, unitFree[unit]);
        done += open * (free - at);
        at = free;
        if (done >= seconds) {
            return at - (done - seconds) / std::max(open, 1);
        }
        ++open;
    }
    return at + (seconds - done + open - 1) / open;
}

/// The least waiting that a station forces beyond what is due: over every order in which the clients leave it.
RotationBound boundOfStation(const StationNeeds& all, const int* unitFree, int units)
{
    std::array<int, 1U << kMostRotationClients> least{};
    const unsigned everybody = (1U << all.count) - 1;
    RotationBound bound;
    for (unsigned set = 1; set <= everybody; ++set) {
        int earliest = 1 << 30;
        int seconds = 0;
        for (std::size_t i = 0; i < all.count; ++i) {
            if ((set >> i & 1U) != 0) {
                earliest = std::min(earliest, all.needs[i].earliest);
                seconds += all.needs[i].seconds;
            }
        }
        const int end = endOfWork(unitFree, units, earliest, seconds);
        int best = 1 << 30;
        int leastAfter = 1 << 30;
        for (std::size_t i = 0; i < all.count; ++i) {
            if ((set >> i & 1U) != 0) {
                const StationNeed& last = all.needs[i];
                best = std::min(best, least[set & ~(1U << i)] + std::max(0, end + last.after - last.due));
                leastAfter = std::min(leastAfter, last.after);
            }
        }
        least[set] = best;
        bound = {best, end + leastAfter};
    }
    return bound;
}

}  // namespace

RotationBound boundOf(const RotationWork& work, const RotationState& state)
{
    std::array<int, kMostRotationClients> due{};
    std::array<int, kMostRotationClients> left{};
    RotationBound bound;
    for (std::size_t i = 0; i < work.clients.size(); ++i) {
        due[i] = dueOf(work.clients[i], i, state, left[i]);
        bound.waited += due[i] - work.clients[i].seconds;
        bound.end = std::max(bound.end, due[i]);
    }
    int forced = 0;
    for (int station = 0; station < static_cast<int>(work.units.size()); ++station) {
        StationNeeds needs;
        for (std::size_t i = 0; i < work.clients.size(); ++i) {
            if (const StationNeed need = needOf(work.clients[i], state.done[i], station, due[i], left[i]); need.seconds > 0) {
                needs.needs[needs.count++] = need;
            }
        }
        if (needs.count > 0) {
            const RotationBound one = boundOfStation(needs, &state.unitFree[firstUnit(station)], work.units[static_cast<std::size_t>(station)]);
            forced = std::max(forced, one.waited);
            bound.end = std::max(bound.end, one.end);
        }
    }
    bound.waited += forced;
    return bound;
}

}  // namespace chalk::planning
