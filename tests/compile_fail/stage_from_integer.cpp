// A bare number is no stage.
#include "core/progression/stage.h"

void tryIt()
{
#ifdef MUST_NOT_COMPILE
    [[maybe_unused]] const chalk::progression::Stage stage = 5;
#else
    [[maybe_unused]] const chalk::progression::Stage stage = chalk::progression::Stage::RepBuild;
#endif
}
