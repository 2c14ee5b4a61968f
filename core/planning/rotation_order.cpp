#include "core/planning/rotation_order.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <random>

namespace chalk::planning {

namespace {

constexpr double kHottest = 240;      ///< seconds of waiting that are accepted easily at first
constexpr double kColdest = 4;
constexpr double kSecondOfEnd = 0.001;  ///< the end decides where waiting is equal

double costOf(const RotationBound& value)
{
    return value.waited + kSecondOfEnd * value.end;
}

/// Everybody's lifts in an order of their own that keeps the rules, one client's turn after the other.
std::vector<RotationStep> anyOrderOf(const RotationWork& work)
{
    std::vector<RotationStep> order;
    std::vector<unsigned> done(work.clients.size(), 0);
    std::vector<int> last(work.clients.size(), -1);
    for (std::size_t round = 0; round < kMostRotationLifts; ++round) {
        for (std::size_t client = 0; client < work.clients.size(); ++client) {
            const unsigned allowed = work.clients[client].nextAfter(done[client], last[client]);
            std::size_t lift = 0;
            while (lift < kMostRotationLifts && (allowed >> lift & 1U) == 0) {
                ++lift;
            }
            if (lift < kMostRotationLifts) {
                order.push_back({client, lift});
                done[client] |= 1U << lift;
                last[client] = static_cast<int>(lift);
            }
        }
    }
    return order;
}

bool keepsRules(const WorkClient& work, const std::vector<RotationStep>& order, std::size_t client)
{
    unsigned done = 0;
    int last = -1;
    for (const RotationStep& step : order) {
        if (step.client == client) {
            if ((work.nextAfter(done, last) >> step.lift & 1U) == 0) {
                return false;
            }
            done |= 1U << step.lift;
            last = static_cast<int>(step.lift);
        }
    }
    return true;
}

void moveStep(std::vector<RotationStep>& order, std::size_t from, std::size_t to)
{
    const auto at = [&order](std::size_t index) { return order.begin() + static_cast<std::ptrdiff_t>(index); };
    if (from < to) {
        std::rotate(at(from), at(from + 1), at(to + 1));
    } else {
        std::rotate(at(to), at(from), at(from + 1));
    }
}

/// Evenly from 0 to below `count`, the same on every machine.
std::size_t drawIndex(std::mt19937& random, std::size_t count)
{
    return static_cast<std::size_t>((static_cast<std::uint64_t>(random()) * count) >> 32);
}

bool isAccepted(double worse, double heat, std::mt19937& random)
{
    return worse <= 0 || static_cast<double>(random()) < std::exp(-worse / heat) * 4294967296.0;
}

}  // namespace

RotationBound valueOf(const RotationWork& work, const std::vector<RotationStep>& order)
{
    std::array<int, kMostRotationClients> clientFree{};
    std::array<int, kMostTrackedUnits> unitFree{};
    for (const RotationStep& step : order) {
        const WorkLift& lift = work.clients[step.client].lifts[step.lift];
        int& free = clientFree[step.client];
        if (lift.station < 0) {
            free += lift.seconds;
            continue;
        }
        const auto first = unitFree.begin() + static_cast<std::ptrdiff_t>(firstUnit(lift.station));
        const auto unit = std::min_element(first, first + work.units[static_cast<std::size_t>(lift.station)]);
        free = std::max(free, *unit) + lift.seconds;
        *unit = free;
    }
    RotationBound value;
    for (std::size_t i = 0; i < work.clients.size(); ++i) {
        value.waited += clientFree[i] - work.clients[i].seconds;
        value.end = std::max(value.end, clientFree[i]);
    }
    return value;
}

std::vector<RotationStep> goodOrderOf(const RotationWork& work, int moves)
{
    std::vector<RotationStep> order = anyOrderOf(work);
    std::vector<RotationStep> best = order;
    double cost = costOf(valueOf(work, order));
    double bestCost = cost;
    std::mt19937 random(1);
    const double cooling = moves > 0 ? std::pow(kColdest / kHottest, 1.0 / moves) : 1;
    double heat = kHottest;
    for (int i = 0; i < moves; ++i, heat *= cooling) {
        const std::size_t from = drawIndex(random, order.size());
        const std::size_t to = drawIndex(random, order.size());
        const std::size_t client = order[from].client;
        moveStep(order, from, to);
        const double moved = from == to || !keepsRules(work.clients[client], order, client) ? cost + 1e9 : costOf(valueOf(work, order));
        if (!isAccepted(moved - cost, heat, random)) {
            moveStep(order, to, from);
            continue;
        }
        cost = moved;
        if (cost < bestCost) {
            bestCost = cost;
            best = order;
        }
    }
    return best;
}

}  // namespace chalk::planning
