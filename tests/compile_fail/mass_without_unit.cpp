// A load becomes a mass by naming its unit.
#include "core/base/load.h"

void tryIt()
{
    [[maybe_unused]] const chalk::base::Load load = chalk::base::Load::fromCenti(500);
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const auto result = chalk::base::Mass::of(load);
#else
    [[maybe_unused]] const auto result = chalk::base::Mass::of(load, chalk::base::MassUnit::Kilogram);
#endif
}
