// A bare number is no load, not even by a cast that is not named.
#include "core/base/load.h"

void tryIt()
{
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const chalk::base::Load load(500);
#else
    [[maybe_unused]] const chalk::base::Load load = chalk::base::Load::fromCenti(500);
#endif
}
