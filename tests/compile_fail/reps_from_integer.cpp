// A bare number does not become repetitions by itself.
#include "core/base/quantity.h"

void tryIt()
{
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const chalk::base::Reps reps = 5;
#else
    [[maybe_unused]] const chalk::base::Reps reps = chalk::base::Reps(5);
#endif
}
