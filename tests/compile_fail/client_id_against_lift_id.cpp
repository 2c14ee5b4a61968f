// Ids of different kinds do not compare.
#include "core/base/id.h"

void tryIt()
{
    [[maybe_unused]] const chalk::base::LiftId lift(7);
    [[maybe_unused]] const chalk::base::ClientId client(7);
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const auto result = client == lift;
#else
    [[maybe_unused]] const auto result = client == chalk::base::ClientId(8);
#endif
}
