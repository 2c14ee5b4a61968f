#include "core/clients/resting_reading.h"

#include <gtest/gtest.h>

#include <string>

namespace chalk::clients {

// The defaults are those of the NHANES cardiovascular fitness manual (CDC): excluded above 100 beats a minute, 180 mmHg, 100 mmHg.
TEST(RestingReading, WarnsAboveTheLimitAndNotAtIt)
{
    const RestingLimits limits;
    EXPECT_FALSE(warningFor({100, 180, 100}, limits).isAny());
    EXPECT_EQ(warningFor({101, 180, 100}, limits), (RestingWarning{true, false, false}));
    EXPECT_EQ(warningFor({100, 181, 100}, limits), (RestingWarning{false, true, false}));
    EXPECT_EQ(warningFor({100, 180, 101}, limits), (RestingWarning{false, false, true}));
    EXPECT_FALSE(warningFor({}, limits).isAny());
}

TEST(RestingReading, AStudioSetsItsOwnLimits)
{
    EXPECT_TRUE(warningFor({{}, 161, {}}, {100, 160, 90}).isSystolicHigh);
}

TEST(RestingReading, NamesTheFieldThatCannotBe)
{
    const auto faultOf = [](const RestingReading& reading) { return std::string(faultyFieldOf(reading).value_or("")); };
    EXPECT_EQ(faultOf({60, 120, 80}), "");
    EXPECT_EQ(faultOf({19, 120, 80}), "heart_rate");
    EXPECT_EQ(faultOf({251, 120, 80}), "heart_rate");
    EXPECT_EQ(faultOf({60, 301, 80}), "systolic");
    EXPECT_EQ(faultOf({60, 120, 201}), "diastolic");
    EXPECT_EQ(faultOf({60, 80, 80}), "diastolic");
    EXPECT_EQ(faultOf({{}, {}, 80}), "");
}

}  // namespace chalk::clients
