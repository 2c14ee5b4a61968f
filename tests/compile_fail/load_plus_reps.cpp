// A load and repetitions do not add up.
#include "core/base/load.h"
#include "core/base/quantity.h"

void tryIt()
{
    [[maybe_unused]] const chalk::base::Load load = chalk::base::Load::fromCenti(500);
    [[maybe_unused]] const chalk::base::Reps reps(5);
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const auto result = load + reps;
#else
    [[maybe_unused]] const auto result = load + load;
#endif
}
