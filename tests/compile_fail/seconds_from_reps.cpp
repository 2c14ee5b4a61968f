// A hold in seconds is not a count of repetitions.
#include "core/base/quantity.h"

void tryIt()
{
    [[maybe_unused]] const chalk::base::Reps reps(5);
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const chalk::base::Seconds seconds(reps);
#else
    [[maybe_unused]] const chalk::base::Seconds seconds(reps.value() * 3);
#endif
}
