#include "core/plateau/confidence.h"

#include <array>
#include <span>

namespace chalk::plateau {

namespace {

/// Both in per cent.
struct ConfidenceNode {
    double z;
    double isSlow;
    double isStopped;
};

constexpr std::array kNoNewBest{ConfidenceNode{-1, 50, 25}, ConfidenceNode{0, 54, 29}, ConfidenceNode{0.5, 57, 33},
                                ConfidenceNode{1, 63, 38},  ConfidenceNode{1.5, 68, 44}, ConfidenceNode{2, 74, 53},
                                ConfidenceNode{2.5, 81, 63}, ConfidenceNode{3, 87, 71}, ConfidenceNode{4, 94, 85}};
constexpr std::array kNewBest{ConfidenceNode{-4, 20, 13},   ConfidenceNode{-2.5, 26, 16.5}, ConfidenceNode{-1.5, 35, 21},
                              ConfidenceNode{-0.5, 43, 25}, ConfidenceNode{0.5, 51, 30},    ConfidenceNode{1.5, 65, 44}};

Confidence confidenceIn(std::span<const ConfidenceNode> table, double z)
{
    constexpr double kPerCent = 100;
    if (z <= table.front().z) {
        return {table.front().isSlow / kPerCent, table.front().isStopped / kPerCent};
    }
    for (std::size_t i = 1; i < table.size(); ++i) {
        const ConfidenceNode& low = table[i - 1];
        const ConfidenceNode& high = table[i];
        if (z <= high.z) {
            const double share = (z - low.z) / (high.z - low.z);
            return {(low.isSlow + share * (high.isSlow - low.isSlow)) / kPerCent, (low.isStopped + share * (high.isStopped - low.isStopped)) / kPerCent};
        }
    }
    return {table.back().isSlow / kPerCent, table.back().isStopped / kPerCent};
}

double oddsOf(double share)
{
    return share / (1 - share);
}

}  // namespace

Confidence confidenceOf(double z, bool hasNewBest)
{
    return hasNewBest ? confidenceIn(kNewBest, z) : confidenceIn(kNoNewBest, z);
}

double stoppedAmong(double isStopped, double stallShare)
{
    const double odds = oddsOf(isStopped) * oddsOf(stallShare) / oddsOf(kUsualStallShare);
    return odds / (1 + odds);
}

}  // namespace chalk::plateau
