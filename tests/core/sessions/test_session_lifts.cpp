#include "core/sessions/session_lifts.h"

#include <gtest/gtest.h>

namespace chalk::sessions {

TEST(SessionLifts, ThoseThatWaitedLongestInTheOrderOfThePatterns)
{
    const auto day = [](int number) { return std::optional(base::Date::fromDays(number)); };
    const std::vector<LiftCandidate> candidates{{base::LiftId(1), lifts::Pattern::CarryBrace, {}},
                                                {base::LiftId(2), lifts::Pattern::Squat, day(10)},
                                                {base::LiftId(3), lifts::Pattern::Hinge, day(12)},
                                                {base::LiftId(4), lifts::Pattern::VerticalPull, day(8)}};
    EXPECT_EQ(chooseLifts(candidates, 3), (std::vector{base::LiftId(2), base::LiftId(4), base::LiftId(1)}));
    EXPECT_EQ(chooseLifts(candidates).size(), 4U);
    EXPECT_TRUE(chooseLifts({}).empty());
}

}  // namespace chalk::sessions
