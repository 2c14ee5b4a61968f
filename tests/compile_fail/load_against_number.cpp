// A load is compared with a load.
#include "core/base/load.h"

void tryIt()
{
    [[maybe_unused]] const chalk::base::Load load = chalk::base::Load::fromCenti(500);
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const auto result = load < 600;
#else
    [[maybe_unused]] const auto result = load < chalk::base::Load::fromCenti(600);
#endif
}
