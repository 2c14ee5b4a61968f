#include "core/progression/coach_choice.h"

#include <algorithm>

namespace chalk::progression {

CoachNumbers numbersOf(const Prescription& next)
{
    CoachNumbers numbers;
    numbers.stage = next.stage;
    if (next.kind != PrescriptionKind::Work) {
        return numbers;
    }
    numbers.load = next.load;
    if (next.stage >= Stage::RepBuild) {
        numbers.reps = next.repsLow;
    }
    if (next.stage >= Stage::SetBuild) {
        numbers.sets = next.sets;
    }
    if (next.stage == Stage::RestCut) {
        numbers.rest = next.rest;
    }
    return numbers;
}

CoachNumbers numbersAt(const LiftMachine& machine, Stage stage, base::Date day)
{
    LiftMachine chosen = machine;
    CoachSet set;
    set.stage = stage;
    set.reason = "to see what it would be";
    chosen.apply(day, set);
    CoachNumbers numbers = numbersOf(chosen.prescriptionOn(day));
    numbers.stage = stage;
    return numbers;
}

CoachSet coachSetOf(const CoachNumbers& numbers, std::string reason)
{
    CoachSet set;
    set.stage = numbers.stage;
    set.load = numbers.load;
    set.reps = numbers.reps;
    if (numbers.stage == Stage::RepBuild && numbers.reps) {
        // Rep build is set by the best so far, and asks for one more.
        set.reps = std::max(base::Reps(), *numbers.reps - base::Reps(1));
    }
    set.sets = numbers.sets;
    set.rest = numbers.rest;
    set.reason = std::move(reason);
    return set;
}

CoachSet keepingSetOf(const LiftMachine& machine, const Prescription& next, std::string reason)
{
    CoachSet set = coachSetOf(numbersOf(next), std::move(reason));
    if (set.load && !machine.loads().canGive(*set.load)) {
        set.load.reset();  // lifted on the floor with what is not on the list: left out, the load stays
    }
    return set;
}

}  // namespace chalk::progression
