#include "core/checkin/phase.h"

#include <gtest/gtest.h>

#include <vector>

namespace chalk::checkin {

using progression::Stage;

TEST(Phase, MostLiftsDecide)
{
    EXPECT_EQ(phaseOf({}), Phase::NotScreened);
    const std::vector building{Stage::LoadBuild, Stage::RestCut, Stage::Control};
    EXPECT_EQ(phaseOf(building), Phase::Building);
    const std::vector learning{Stage::LoadBuild, Stage::BaseLoad, Stage::Control};
    EXPECT_EQ(phaseOf(learning), Phase::Learning);
    const std::vector tie{Stage::LoadBuild, Stage::BaseLoad};
    EXPECT_EQ(phaseOf(tie), Phase::Learning);
}

}  // namespace chalk::checkin
