// A load has no unit of its own, a mass has: they do not add up.
#include "core/base/load.h"

void tryIt()
{
    [[maybe_unused]] const chalk::base::Load load = chalk::base::Load::fromCenti(500);
    [[maybe_unused]] const chalk::base::Mass mass = chalk::base::Mass::of(load, chalk::base::MassUnit::Kilogram);
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const auto result = mass + load;
#else
    [[maybe_unused]] const auto result = mass + mass;
#endif
}
