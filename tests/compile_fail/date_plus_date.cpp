// Two days do not add up; a day and a number of days do.
#include "core/base/date.h"

void tryIt()
{
    [[maybe_unused]] const chalk::base::Date day = chalk::base::Date::fromDays(20'000);
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const auto result = day + day;
#else
    [[maybe_unused]] const auto result = day + 7;
#endif
}
