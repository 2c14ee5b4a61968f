// A bare number is no day.
#include "core/base/date.h"

void tryIt()
{
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const chalk::base::Date day = 20'000;
#else
    [[maybe_unused]] const chalk::base::Date day = chalk::base::Date::fromDays(20'000);
#endif
}
