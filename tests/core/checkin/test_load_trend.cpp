#include "core/checkin/load_trend.h"

#include <gtest/gtest.h>

#include <vector>

namespace chalk::checkin {

TEST(LoadTrend, ComparesTheHalves)
{
    const std::vector<double> rise{100, 100, 100, 100, 110, 110, 115, 113};
    EXPECT_EQ(loadTrendOf(rise, false), (LoadTrend{LoadTrend::Kind::Change, 12, false}));
    const std::vector<double> level{100, 120, 100, 120};
    EXPECT_EQ(loadTrendOf(level, false), (LoadTrend{LoadTrend::Kind::Change, 0, false}));
    const std::vector<double> stopped{100, 100, 0, 0};
    EXPECT_EQ(loadTrendOf(stopped, false), (LoadTrend{LoadTrend::Kind::Change, -100, true}));
}

TEST(LoadTrend, TenPerCentIsAFall)
{
    const std::vector<double> nine{100, 91};
    const std::vector<double> ten{100, 90};
    EXPECT_FALSE(loadTrendOf(nine, false).isFall);
    EXPECT_TRUE(loadTrendOf(ten, false).isFall);
}

TEST(LoadTrend, SaysWhereThereIsNothingToCompare)
{
    const std::vector<double> nothing(8, 0.0);
    EXPECT_EQ(loadTrendOf(nothing, true).kind, LoadTrend::Kind::None);
    EXPECT_EQ(loadTrendOf({}, false).kind, LoadTrend::Kind::None);
    const std::vector<double> begun{0, 0, 30, 50, 60, 90, 100, 120};
    EXPECT_EQ(loadTrendOf(begun, true).kind, LoadTrend::Kind::New);
    const std::vector<double> back{0, 0, 40, 50};
    EXPECT_EQ(loadTrendOf(back, false).kind, LoadTrend::Kind::Back);
}

}  // namespace chalk::checkin
