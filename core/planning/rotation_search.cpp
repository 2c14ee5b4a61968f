#include "core/planning/rotation_search.h"

#include <algorithm>
#include <map>
#include <string>
#include <tuple>

namespace chalk::planning {

namespace {

constexpr std::size_t kMostExploredOfOneKind = 48;

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

RotationState RotationSearch::after(const RotationState& state, std::size_t client, std::size_t lift, int start) const
{
    RotationState next = state;
    const WorkLift& work = m_work.clients[client].lifts[lift];
    next.done[client] = static_cast<std::uint8_t>(next.done[client] | 1U << lift);
    next.last[client] = static_cast<std::int8_t>(lift);
    next.clientFree[client] = start + work.seconds;
    next.lastStart = start;
    next.lastClient = client;
    if (work.station >= 0) {
        const auto first = next.unitFree.begin() + static_cast<std::ptrdiff_t>(firstUnit(work.station));
        *first = start + work.seconds;
        std::sort(first, first + m_work.units[static_cast<std::size_t>(work.station)]);
    }
    return next;
}

std::vector<RotationSearch::Move> RotationSearch::movesFrom(const RotationState& state) const
{
    std::vector<Move> moves;
    int latest = 1 << 30;  // whoever begins at or after it leaves room for a whole lift before
    for (std::size_t client = 0; client < m_work.clients.size(); ++client) {
        const unsigned allowed = m_work.clients[client].nextAfter(state.done[client], state.last[client]);
        int lastEnd = 0;
        for (std::size_t lift = 0; lift < m_work.clients[client].lifts.size(); ++lift) {
            if ((allowed >> lift & 1U) != 0) {
                const WorkLift& work = m_work.clients[client].lifts[lift];
                const int start = startOf(state, client, work);
                lastEnd = std::max(lastEnd, start + work.seconds);
                moves.push_back({client, lift, start, {}, {}});
            }
        }
        latest = allowed == 0 ? latest : std::min(latest, lastEnd);
    }
    moves.erase(std::remove_if(moves.begin(), moves.end(), [latest](const Move& move) { return move.start >= latest; }), moves.end());
    for (Move& move : moves) {
        move.after = after(state, move.client, move.lift, move.start);
        move.bound = boundOf(m_work, move.after);
    }
    std::stable_sort(moves.begin(), moves.end(), [](const Move& a, const Move& b) {
        return std::tuple(a.bound.waited, a.bound.end, a.start) < std::tuple(b.bound.waited, b.bound.end, b.start);
    });
    return moves;
}

bool RotationSearch::isNoLater(const RotationState& one, const RotationState& other) const
{
    if (std::tuple(one.lastStart, one.lastClient) > std::tuple(other.lastStart, other.lastClient)) {
        return false;
    }
    for (std::size_t i = 0; i < m_work.clients.size(); ++i) {
        if (one.clientFree[i] > other.clientFree[i]) {
            return false;
        }
    }
    for (std::size_t station = 0; station < m_work.units.size(); ++station) {
        for (int unit = 0; unit < m_work.units[station]; ++unit) {
            const std::size_t at = firstUnit(static_cast<int>(station)) + static_cast<std::size_t>(unit);
            if (one.unitFree[at] > other.unitFree[at]) {
                return false;
            }
        }
    }
    return true;
}

bool RotationSearch::isKnownWorse(const RotationState& state)
{
    Same same;
    for (std::size_t i = 0; i < m_work.clients.size(); ++i) {
        same.done = same.done << 8 | state.done[i];
        same.last = same.last << 8 | static_cast<std::uint8_t>(state.last[i]);
    }
    auto& explored = m_explored[same];
    if (std::any_of(explored.begin(), explored.end(), [&](const RotationState& one) { return isNoLater(one, state); })) {
        return true;
    }
    if (explored.size() < kMostExploredOfOneKind) {
        explored.push_back(state);
    }
    return false;
}

void RotationSearch::keepIfBest(const RotationState& state)
{
    const RotationBound value = boundOf(m_work, state);
    if (!value.isWorseOrEqual(m_bestValue)) {
        m_bestValue = value;
        m_best = m_taken;
    }
}

void RotationSearch::explore(const RotationState& state, std::size_t depth)
{
    if (depth == m_taken.size()) {
        keepIfBest(state);
        return;
    }
    for (const Move& move : movesFrom(state)) {
        if (m_steps >= m_effort.mostSteps) {
            return;
        }
        ++m_steps;
        if (move.bound.isWorseOrEqual(m_bestValue) || isKnownWorse(move.after)) {
            continue;
        }
        m_taken[depth] = {move.client, move.lift};
        explore(move.after, depth + 1);
    }
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
        state = after(state, step.client, step.lift, begin);
        client.turns.push_back({step.lift, begin, begin + lift.seconds, begin - free, {}});
    }
    giveUnits(m_request, rotation);
    return rotation;
}

}  // namespace chalk::planning
