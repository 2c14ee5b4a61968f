#include "core/analysis/normal_distribution.h"

#include <cmath>
#include <limits>

namespace chalk::analysis {

namespace {

constexpr double kRootTwo = 1.41421356237309504880;
constexpr double kRootTwoPi = 2.50662827463100050242;
constexpr int kMostSteps = 2000;

}  // namespace

double normalUpperTail(double z)
{
    return 0.5 * std::erfc(z / kRootTwo);
}

double normalUpperQuantile(double tail)
{
    if (!(tail > 0 && tail < 1)) {
        return std::numeric_limits<double>::quiet_NaN();
    }
    if (tail > 0.5) {
        return -normalUpperQuantile(1 - tail);
    }
    // Right of 0 the tail is convex, so the steps from 0 come near from the left and never pass it; they end where they no longer move.
    double z = 0;
    for (int step = 0; step < kMostSteps; ++step) {
        const double density = std::exp(-z * z / 2) / kRootTwoPi;
        const double next = z + (normalUpperTail(z) - tail) / density;
        if (!(next > z)) {
            break;
        }
        z = next;
    }
    return z;
}

}  // namespace chalk::analysis
