#include "core/planning/rotation_search.h"

#include <algorithm>
#include <bit>
#include <functional>
#include <map>
#include <string>
#include <tuple>

namespace chalk::planning {

namespace {

constexpr int kLatest = 1 << 30;
constexpr int kNeverNeeded = -1;  ///< a unit that nobody who is left takes

/// Names the unit of each turn: at no moment are there more turns at a station than it has units.
void giveUnits(const RotationRequest& request, Rotation& rotation)
{
    struct Place {
        RotationTurn* turn;
        const std::string* station;
    };
    std::vector<Place> places;
    for (std::size_t i = 0; i < rotation.clients.size(); ++i) {
        for (RotationTurn& turn : rotation.clients[i].turns) {
            if (const std::string& station = request.clients[i].lifts[turn.lift].station; !station.empty()) {
                places.push_back({&turn, &station});
            }
        }
    }
    std::stable_sort(places.begin(), places.end(), [](const Place& a, const Place& b) { return a.turn->beginSecond < b.turn->beginSecond; });
    std::map<std::string, std::vector<int>> unitFree;
    for (const RotationStation& station : request.stations) {
        unitFree[station.key] = std::vector<int>(static_cast<std::size_t>(station.units), 0);
    }
    for (const Place& place : places) {
        auto& units = unitFree[*place.station];
        const auto free = std::find_if(units.begin(), units.end(), [&place](int until) { return until <= place.turn->beginSecond; });
        place.turn->unit = static_cast<int>(free - units.begin());
        *free = place.turn->endSecond;
    }
}

}  // namespace

RotationSearch::RotationSearch(const RotationRequest& request, const RotationEffort& effort)
    : m_request(request), m_effort(effort), m_work(workOf(request))
{
    for (const WorkClient& client : m_work.clients) {
        m_taken.resize(m_taken.size() + client.lifts.size());
    }
}

Rotation RotationSearch::run()
{
    const RotationState start;
    m_rootBound = boundOf(m_work, start);
    m_best = goodOrderOf(m_work, m_effort.moves);
    m_bestValue = valueOf(m_work, m_best);
    explore(start, 0);
    return rotationOfBest();
}

int RotationSearch::startOf(const RotationState& state, std::size_t client, const WorkLift& lift) const
{
    const int free = std::max(state.clientFree[client], state.leastStart(client));
    return lift.station < 0 ? free : std::max(free, state.unitFree[firstUnit(lift.station)]);
}

RotationState RotationSearch::after(const RotationState& state, const Move& move) const
{
    RotationState next = state;
    const WorkLift& work = m_work.clients[move.client].lifts[move.lift];
    next.done[move.client] = static_cast<std::uint8_t>(next.done[move.client] | 1U << move.lift);
    next.last[move.client] = static_cast<std::int8_t>(move.lift);
    next.clientFree[move.client] = move.start + work.seconds;
    next.lastStart = move.start;
    next.lastClient = move.client;
    if (work.station >= 0) {
        const auto first = next.unitFree.begin() + static_cast<std::ptrdiff_t>(firstUnit(work.station));
        *first = move.start + work.seconds;
        std::sort(first, first + m_work.units[static_cast<std::size_t>(work.station)]);
    }
    return next;
}

std::vector<RotationSearch::Move> RotationSearch::movesFrom(const RotationState& state) const
{
    std::vector<Move> moves;
    moves.reserve(kMostRotationClients * kMostRotationLifts);
    int latest = kLatest;  // whoever begins at or after it leaves room for a whole lift before
    for (std::size_t client = 0; client < m_work.clients.size(); ++client) {
        const unsigned allowed = m_work.clients[client].nextAfter(state.done[client], state.last[client]);
        int lastEnd = 0;
        for (unsigned open = allowed; open != 0; open &= open - 1) {
            const auto lift = static_cast<std::size_t>(std::countr_zero(open));
            const WorkLift& work = m_work.clients[client].lifts[lift];
            const int start = startOf(state, client, work);
            lastEnd = std::max(lastEnd, start + work.seconds);
            moves.push_back({client, lift, start, {}});
        }
        latest = allowed == 0 ? latest : std::min(latest, lastEnd);
    }
    moves.erase(std::remove_if(moves.begin(), moves.end(), [latest](const Move& move) { return move.start >= latest; }), moves.end());
    for (Move& move : moves) {
        move.bound = boundOf(m_work, after(state, move), m_bestValue.waited);
    }
    std::sort(moves.begin(), moves.end(), [](const Move& a, const Move& b) {
        return std::tuple(a.bound.waited, a.bound.end, a.start, a.client, a.lift) < std::tuple(b.bound.waited, b.bound.end, b.start, b.client, b.lift);
    });
    return moves;
}

int RotationSearch::nextStartOf(const RotationState& state, std::size_t client) const
{
    int start = kLatest;
    for (unsigned open = m_work.clients[client].nextAfter(state.done[client], state.last[client]); open != 0; open &= open - 1) {
        start = std::min(start, startOf(state, client, m_work.clients[client].lifts[static_cast<std::size_t>(std::countr_zero(open))]));
    }
    return start == kLatest ? state.clientFree[client] : start;
}

RotationSearch::Times RotationSearch::timesOf(const RotationState& state) const
{
    Times times;
    const std::size_t clients = m_work.clients.size();
    for (std::size_t i = 0; i < clients; ++i) {
        times.push_back(nextStartOf(state, i));
    }
    for (std::size_t station = 0; station < m_work.units.size(); ++station) {
        int earliest = kLatest;
        int users = 0;
        for (std::size_t i = 0; i < clients; ++i) {
            const WorkNeed& need = m_work.clients[i].needs[state.done[i] * m_work.units.size() + station];
            if (need.seconds > 0) {
                earliest = std::min(earliest, times[i] + need.before);
                ++users;
            }
        }
        for (int unit = 0; unit < m_work.units[station]; ++unit) {
            const int free = state.unitFree[firstUnit(static_cast<int>(station)) + static_cast<std::size_t>(unit)];
            times.push_back(unit < users ? std::max(free, earliest) : kNeverNeeded);
        }
    }
    return times;
}

RotationBound RotationSearch::leastAsLearnt(const Explored& one, std::uint64_t next, const Times& times) const
{
    int shift = -kLatest;
    int ended = 0;
    int later = 0;
    int going = 0;
    const std::size_t clients = m_work.clients.size();
    for (std::size_t i = 0; i < times.size(); ++i) {
        if (times[i] == kNeverNeeded) {
            continue;
        }
        const int difference = one.times[i] - times[i];
        if (i < clients && (next >> 8 * (clients - 1 - i) & 0xFFU) == 0) {
            ended += difference;
            later = std::max(later, difference);
        } else {
            going += i < clients ? 1 : 0;
            shift = std::max(shift, difference);
        }
    }
    return {one.least.waited - ended - going * shift, one.least.end - std::max({shift, later, 0})};
}

RotationBound RotationSearch::explored(const RotationState& state, std::size_t depth)
{
    std::uint64_t done = 0;
    std::uint64_t next = 0;
    for (std::size_t i = 0; i < m_work.clients.size(); ++i) {
        done = done << 8 | state.done[i];
        next = next << 8 | m_work.clients[i].nextAfter(state.done[i], state.last[i]);
    }
    const Times times = timesOf(state);
    for (const Explored& one : m_explored[done]) {
        if ((next & ~one.next) != 0) {
            continue;
        }
        if (const RotationBound least = leastAsLearnt(one, next, times); least.isWorseOrEqual(m_bestValue)) {
            return least;
        }
    }
    const RotationBound least = explore(state, depth);
    m_explored[done].push_back({next, times, least});
    return least;
}

RotationBound RotationSearch::keepIfBest(const RotationState& state)
{
    const RotationBound value = boundOf(m_work, state);
    if (!value.isWorseOrEqual(m_bestValue)) {
        m_bestValue = value;
        m_best = m_taken;
    }
    return value;
}

RotationBound RotationSearch::explore(const RotationState& state, std::size_t depth)
{
    if (depth == m_taken.size()) {
        return keepIfBest(state);
    }
    RotationBound least{kLatest, kLatest};
    for (const Move& move : movesFrom(state)) {
        if (m_steps >= m_effort.mostSteps) {
            break;
        }
        ++m_steps;
        RotationBound one = move.bound;
        if (!one.isWorseOrEqual(m_bestValue)) {
            m_taken[depth] = {move.client, move.lift};
            one = explored(after(state, move), depth + 1);
        }
        if (!one.isWorseOrEqual(least)) {
            least = one;
        }
    }
    return least;
}

Rotation RotationSearch::rotationOfBest() const
{
    Rotation rotation;
    rotation.steps = m_steps;
    rotation.isProved = m_steps < m_effort.mostSteps || m_rootBound.isWorseOrEqual(m_bestValue);
    for (const WorkClient& client : m_work.clients) {
        rotation.clients.push_back({{}, client.isPatternRepeated});
    }
    RotationState state;
    for (const RotationStep& step : m_best) {
        ClientRotation& client = rotation.clients[step.client];
        const WorkLift& lift = m_work.clients[step.client].lifts[step.lift];
        const int free = client.endSecond();
        const int begin = lift.station < 0 ? free : std::max(free, state.unitFree[firstUnit(lift.station)]);
        state = after(state, {step.client, step.lift, begin, {}});
        client.turns.push_back({step.lift, begin, begin + lift.seconds, begin - free, {}});
    }
    giveUnits(m_request, rotation);
    return rotation;
}

}  // namespace chalk::planning
