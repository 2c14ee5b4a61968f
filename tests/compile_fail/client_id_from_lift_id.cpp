// The id of a lift is not that of a client.
#include "core/base/id.h"

void tryIt()
{
    [[maybe_unused]] const chalk::base::LiftId lift(7);
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const chalk::base::ClientId client = lift;
#else
    [[maybe_unused]] const chalk::base::LiftId other = lift;
#endif
}
