#include "core/planning/rotation_work.h"

#include <algorithm>
#include <bit>

namespace chalk::planning {

namespace {

/// What one client still has to do at one station, and until when it can.
struct StationNeed {
    int due = 0;       ///< when the client ends if nothing keeps it waiting
    int earliest = 0;  ///< before it its first lift there cannot begin
    int seconds = 0;   ///< at the station
    int after = 0;     ///< lifts of later blocks, after the last one there
};

constexpr int kFar = 1 << 30;
constexpr std::size_t kMostSets = 1U << kMostRotationClients;
using StationNeeds = std::array<StationNeed, kMostRotationClients>;
/// Waiting that is forced beyond what is due, by the set of clients that it is forced on, a bit each.
using ForcedWaits = std::array<int, kMostSets>;

/// When a client ends if nothing keeps it waiting after the lift that it can begin first.
int dueOf(const WorkClient& client, std::size_t index, const RotationState& state)
{
    const unsigned allowed = client.nextAfter(state.done[index], state.last[index]);
    if (allowed == 0) {
        return state.clientFree[index];
    }
    const int free = std::max(state.clientFree[index], state.leastStart(index));
    int start = kFar;
    for (unsigned open = allowed; open != 0 && start > free; open &= open - 1) {
        const WorkLift& lift = client.lifts[static_cast<std::size_t>(std::countr_zero(open))];
        start = std::min(start, lift.station < 0 ? free : std::max(free, state.unitFree[firstUnit(lift.station)]));
    }
    return start + client.secondsLeft[state.done[index]];
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

/// What the clients of a set need of a station together.
struct SetNeed {
    int earliest;
    int seconds;
    int end;         ///< before it they cannot all have left the station
    int waited;      ///< over every order in which they leave it
    int leastAfter;
};

/// What the clients of `set` need, from what is known of each set with one client less.
SetNeed needOfSet(const StationNeeds& needs, const std::array<SetNeed, kMostSets>& sets, unsigned set, const int* unitFree, int units)
{
    const StationNeed& first = needs[static_cast<std::size_t>(std::countr_zero(set))];
    const SetNeed& rest = sets[set & (set - 1)];
    SetNeed all{std::min(rest.earliest, first.earliest), rest.seconds + first.seconds, 0, kFar, kFar};
    all.end = endOfWork(unitFree, units, all.earliest, all.seconds);
    for (unsigned left = set; left != 0; left &= left - 1) {
        all.end = std::max(all.end, sets[set & ~(left & -left)].end);
    }
    for (unsigned left = set; left != 0; left &= left - 1) {
        const StationNeed& last = needs[static_cast<std::size_t>(std::countr_zero(left))];
        all.waited = std::min(all.waited, sets[set & ~(left & -left)].waited + std::max(0, all.end + last.after - last.due));
        all.leastAfter = std::min(all.leastAfter, last.after);
    }
    return all;
}

/// Whether a station has room for all of `users`, whoever comes last and leaves last.
bool hasRoom(const StationNeeds& needs, unsigned users, const int* unitFree, int units)
{
    int latest = 0;
    int seconds = 0;
    int slack = kFar;
    for (unsigned left = users; left != 0; left &= left - 1) {
        const StationNeed& need = needs[static_cast<std::size_t>(std::countr_zero(left))];
        latest = std::max(latest, need.earliest);
        seconds += need.seconds;
        slack = std::min(slack, need.due - need.after);
    }
    return endOfWork(unitFree, units, latest, seconds) <= slack;
}

/// Puts into `forced` what a station forces on each set of `users`, and answers the least end that it allows.
int forceWaits(const StationNeeds& needs, unsigned users, const int* unitFree, int units, ForcedWaits& forced)
{
    std::array<SetNeed, kMostSets> sets;
    sets[0] = {kFar, 0, 0, 0, kFar};
    int leastEnd = 0;
    for (unsigned set = users & -users; set != 0; set = (set - users) & users) {
        sets[set] = needOfSet(needs, sets, set, unitFree, units);
        forced[set] = std::max(forced[set], sets[set].waited);
        leastEnd = std::max(leastEnd, sets[set].end + sets[set].leastAfter);
    }
    return leastEnd;
}

/// The most that is forced on everybody: different stations may keep different clients waiting.
int mostForced(ForcedWaits& forced, std::size_t clients)
{
    const unsigned everybody = (1U << clients) - 1;
    for (unsigned set = 1; set <= everybody; ++set) {
        for (unsigned part = (set - 1) & set; part > (set ^ part); part = (part - 1) & set) {
            forced[set] = std::max(forced[set], forced[part] + forced[set ^ part]);
        }
    }
    return forced[everybody];
}

}  // namespace

RotationBound boundOf(const RotationWork& work, const RotationState& state, int enough)
{
    const std::size_t clients = work.clients.size();
    const std::size_t stations = work.units.size();
    StationNeeds needs;
    RotationBound bound;
    for (std::size_t i = 0; i < clients; ++i) {
        needs[i].due = dueOf(work.clients[i], i, state);
        bound.waited += needs[i].due - work.clients[i].seconds;
        bound.end = std::max(bound.end, needs[i].due);
    }
    if (bound.waited > enough) {
        return bound;
    }
    ForcedWaits forced;
    std::fill_n(forced.begin(), std::size_t(1) << clients, 0);
    for (std::size_t station = 0; station < stations; ++station) {
        unsigned users = 0;
        for (std::size_t i = 0; i < clients; ++i) {
            const WorkNeed& need = work.clients[i].needs[state.done[i] * stations + station];
            needs[i].seconds = need.seconds;
            needs[i].after = need.after;
            needs[i].earliest = needs[i].due - work.clients[i].secondsLeft[state.done[i]] + need.before;
            users |= need.seconds > 0 ? 1U << i : 0U;
        }
        const int* unitFree = &state.unitFree[firstUnit(static_cast<int>(station))];
        if (users != 0 && !hasRoom(needs, users, unitFree, work.units[station])) {
            bound.end = std::max(bound.end, forceWaits(needs, users, unitFree, work.units[station], forced));
        }
    }
    bound.waited += mostForced(forced, clients);
    return bound;
}

}  // namespace chalk::planning
