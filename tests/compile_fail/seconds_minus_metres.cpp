// Seconds and metres do not mix.
#include "core/base/quantity.h"

void tryIt()
{
    [[maybe_unused]] const chalk::base::Seconds seconds(30);
    [[maybe_unused]] const chalk::base::Metres metres(20);
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const auto result = seconds - metres;
#else
    [[maybe_unused]] const auto result = seconds - chalk::base::Seconds(5);
#endif
}
