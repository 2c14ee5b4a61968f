// A bare number does not become an id by itself.
#include "core/base/id.h"

void tryIt()
{
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const chalk::base::ClientId client = 7;
#else
    [[maybe_unused]] const chalk::base::ClientId client = chalk::base::ClientId(7);
#endif
}
