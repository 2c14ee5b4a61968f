// A bare number is no load: 5.0 of what?
#include "core/base/load.h"

void tryIt()
{
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const chalk::base::Load load = 5.0;
#else
    [[maybe_unused]] const chalk::base::Load load = chalk::base::Load::fromCenti(500);
#endif
}
