// A mass comes from a load and its unit.
#include "core/base/load.h"

void tryIt()
{
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const chalk::base::Mass mass(5.0);
#else
    [[maybe_unused]] const chalk::base::Mass mass = chalk::base::Mass::of(chalk::base::Load::fromCenti(500), chalk::base::MassUnit::Pound);
#endif
}
