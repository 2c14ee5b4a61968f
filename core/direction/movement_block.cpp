#include "core/direction/movement_block.h"

#include <array>

namespace chalk::direction {

namespace {

constexpr std::array<int, 3> kControlShares{500, 550, 600};
constexpr std::array<int, 3> kUpkeepShares{550, 600, 650};
constexpr int kControlReserve = 4;
constexpr int kUpkeepReserve = 3;

}  // namespace

PlannedWork movementWork(LiftRole role, const Place& place)
{
    const std::size_t phase = static_cast<std::size_t>(place.frame.phase) % kControlShares.size();
    PlannedWork work;
    if (role == LiftRole::Main) {
        work = {Aim::Assistance, {base::Sets(3), base::Reps(6), base::Milli(kControlShares[phase]), base::Seconds(90), kControlReserve}, base::Reps(8)};
        work.isPauseAsked = true;
    } else {
        const int sets = place.frame.phase == Phase::Base ? 2 : 3;
        work = {Aim::Upkeep, {base::Sets(sets), base::Reps(12), base::Milli(kUpkeepShares[phase]), base::Seconds(60), kUpkeepReserve}, base::Reps(15)};
    }
    return place.frame.kind == WeekKind::Lighter ? lightened(work) : work;
}

}  // namespace chalk::direction
