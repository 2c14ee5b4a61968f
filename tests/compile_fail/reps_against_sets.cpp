// Repetitions and sets do not compare.
#include "core/base/quantity.h"

void tryIt()
{
    [[maybe_unused]] const chalk::base::Reps reps(5);
    [[maybe_unused]] const chalk::base::Sets sets(3);
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const auto result = reps < sets;
#else
    [[maybe_unused]] const auto result = sets < chalk::base::Sets(4);
#endif
}
