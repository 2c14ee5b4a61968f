#include "core/direction/physique_block.h"

#include <array>

namespace chalk::direction {

namespace {

struct MusclePhase {
    Ramp sets;
    int repsLeast;
    int repsMost;
    int share;
    int restSeconds;
};

constexpr std::array<MusclePhase, 3> kMusclePhases{MusclePhase{{3, 4}, 8, 12, 670, 75}, MusclePhase{{3, 4}, 8, 10, 720, 90},
                                                   MusclePhase{{4, 5}, 6, 8, 780, 120}};
constexpr int kMuscleReserve = 2;

}  // namespace

PlannedWork physiqueWork(LiftRole role, const Place& place)
{
    const MusclePhase& phase = kMusclePhases[static_cast<std::size_t>(place.frame.phase) % kMusclePhases.size()];
    const int sets = role == LiftRole::Main ? phase.sets.at(place.frame.step, place.frame.steps) : phase.sets.first;
    PlannedWork work{Aim::Muscle,
                     {base::Sets(sets), base::Reps(phase.repsLeast), base::Milli(phase.share), base::Seconds(phase.restSeconds), kMuscleReserve},
                     base::Reps(phase.repsMost)};
    return place.frame.kind == WeekKind::Lighter ? lightened(work) : work;
}

}  // namespace chalk::direction
