// What can fail is looked at.
#include "core/lifts/equipment.h"

void tryIt()
{
#ifdef MUST_NOT_COMPILE
    chalk::lifts::LoadTable::of(chalk::lifts::FixedSet{});
#else
    [[maybe_unused]] const bool isSound = chalk::lifts::LoadTable::of(chalk::lifts::FixedSet{}).has_value();
#endif
}
