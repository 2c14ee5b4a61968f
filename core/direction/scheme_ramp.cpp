#include "core/direction/scheme_ramp.h"

#include "core/lifts/repetition_chart.h"

#include <algorithm>

namespace chalk::direction {

namespace {

constexpr int kLastChartRow = 10;
constexpr int kMostReserve = 4;
constexpr int kWhole = 1000;

}  // namespace

int Ramp::at(int step, int steps) const
{
    if (steps < 2) {
        return last;
    }
    const int spans = steps - 1;
    const int rise = 2 * (last - first) * step;
    return first + (rise < 0 ? rise - spans : rise + spans) / (2 * spans);
}

int chartReps(base::Milli share)
{
    int reps = 1;
    while (reps < kLastChartRow && *lifts::chartShare(base::Reps(reps + 1)) >= share) {
        ++reps;
    }
    return reps;
}

int reserveAt(base::Milli share, base::Reps reps)
{
    return std::clamp(chartReps(share) - reps.value(), 1, kMostReserve);
}

base::Milli partOf(base::Milli share, base::Milli part)
{
    return base::Milli(share.value() * part.value() / kWhole);
}

PlannedWork lightened(PlannedWork work)
{
    work.scheme.sets = base::Sets((work.scheme.sets.value() + 1) / 2);
    work.scheme.share = partOf(work.scheme.share, kLightDay);
    work.scheme.reserve = kMostReserve;
    work.repsMost = work.scheme.reps;
    return work;
}

}  // namespace chalk::direction
