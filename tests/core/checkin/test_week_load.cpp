#include "core/checkin/week_load.h"

#include <gtest/gtest.h>

#include <vector>

namespace chalk::checkin {

namespace {

const base::Date kWeekStart = *base::Date::fromYmd(2026, 11, 16);  // a Monday
const base::Date kWeekAfter = kWeekStart + 7;

/// A session on every day with a load above 0.
std::vector<SessionEffort> effortsOf(const std::vector<int>& days, base::Date from = kWeekStart)
{
    std::vector<SessionEffort> efforts;
    for (std::size_t i = 0; i < days.size(); ++i) {
        if (days[i] > 0) {
            efforts.push_back({from + static_cast<int>(i), days[i]});
        }
    }
    return efforts;
}

}  // namespace

// The loads as printed by Foster C. et al. 2001, J Strength Cond Res 15(1):109-115, table 5, whose week begins on a Sunday; here its days stand
// Monday to Sunday. Over the days, worked out from the printed loads, the population's deviation gives 1.2116.
TEST(WeekLoad, MonotonyIsOverTheDaysOfTheWeek)
{
    std::vector<SessionEffort> sessions = effortsOf({940, 50, 840, 180, 390, 50, 390});
    sessions.push_back({kWeekStart + 2, 280});
    sessions.push_back({kWeekStart + 6, 280});
    const WeekLoad week = weekLoadOf(sessions, kWeekStart, kWeekAfter);
    EXPECT_EQ(week.load, 3400) << "as printed";
    EXPECT_EQ(week.rated, 9);
    ASSERT_TRUE(week.monotony);
    EXPECT_NEAR(*week.monotony, 1.2116, 5e-5);
    EXPECT_NEAR(*week.strain, 3400 * *week.monotony, 1e-9);
    EXPECT_FALSE(week.why);
}

// By hand: mean 200; squares 260000, so the deviation is √(260000 / 7) = 192.724822.
TEST(WeekLoad, DaysOffCount)
{
    const WeekLoad week = weekLoadOf(effortsOf({300, 0, 400, 0, 500, 200, 0}), kWeekStart, kWeekAfter);
    EXPECT_NEAR(week.monotony.value(), 1.037749, 5e-7);
    EXPECT_NEAR(week.strain.value(), 1452.8487, 5e-5);
}

TEST(WeekLoad, SaysWhyThereIsNoMonotony)
{
    EXPECT_EQ(weekLoadOf(effortsOf({300, 0, 400}), kWeekStart, kWeekStart + 6).why, NoMonotony::NotOver);
    EXPECT_EQ(weekLoadOf(effortsOf({300, 0, 400}), kWeekStart, kWeekStart + 6).load, 700) << "what is there is summed";
    EXPECT_EQ(weekLoadOf({}, kWeekStart, kWeekAfter).why, NoMonotony::NoSession);
    EXPECT_EQ(weekLoadOf(effortsOf({100, 100, 100, 100, 100, 100, 100}), kWeekStart, kWeekAfter).why, NoMonotony::AllTheSame);
    std::vector<SessionEffort> unrated = effortsOf({300, 0, 400});
    unrated.push_back({kWeekStart + 4, std::nullopt});
    const WeekLoad week = weekLoadOf(unrated, kWeekStart, kWeekAfter);
    EXPECT_EQ(week.why, NoMonotony::Unrated);
    EXPECT_FALSE(week.monotony || week.strain);
    EXPECT_EQ(week.unrated, 1);
    EXPECT_EQ(keyOf(*week.why), "unrated");
    EXPECT_EQ(keyOf(NoMonotony::AllTheSame), "all_the_same");
    const std::vector<SessionEffort> resting{{kWeekStart, 0}};
    EXPECT_EQ(weekLoadOf(resting, kWeekStart, kWeekAfter).why, NoMonotony::Unrated);
}

TEST(WeekLoad, OtherWeeksAreLeftAside)
{
    std::vector<SessionEffort> sessions = effortsOf({300, 0, 400});
    sessions.push_back({kWeekStart - 1, 900});
    sessions.push_back({kWeekAfter, std::nullopt});
    EXPECT_EQ(weekLoadOf(sessions, kWeekStart, kWeekAfter), weekLoadOf(effortsOf({300, 0, 400}), kWeekStart, kWeekAfter));
}

// By hand: 21 days of 100, then 7 of 200: 200 / 100 and 200 / 125.
TEST(LoadRatio, IsOfTheFourFinishedWeeks)
{
    std::vector<int> days(21, 100);
    days.insert(days.end(), 7, 200);
    std::vector<SessionEffort> sessions = effortsOf(days, kWeekStart - 28);
    sessions.push_back({kWeekStart, 5000});
    const auto ratio = loadRatioOf(sessions, kWeekStart + 3);
    ASSERT_TRUE(ratio);
    EXPECT_EQ(ratio->monday, kWeekStart - 7);
    EXPECT_NEAR(ratio->uncoupled, 2.0, 1e-12);
    EXPECT_NEAR(ratio->coupled, 1.6, 1e-12);
}

TEST(LoadRatio, SaysWhyThereIsNone)
{
    EXPECT_EQ(loadRatioOf({}, kWeekStart).error(), NoRatio::TooEarly);
    EXPECT_EQ(keyOf(NoRatio::TooEarly), "too_early");
    std::vector<SessionEffort> sessions = effortsOf({300, 300, 300}, kWeekStart - 21);
    EXPECT_EQ(loadRatioOf(sessions, kWeekStart).error(), NoRatio::TooEarly);
    sessions.push_back({kWeekStart - 28, std::nullopt});
    EXPECT_EQ(loadRatioOf(sessions, kWeekStart).error(), NoRatio::Unrated);
    sessions.back().load = 300;
    EXPECT_TRUE(loadRatioOf(sessions, kWeekStart));
    EXPECT_EQ(loadRatioOf(std::vector<SessionEffort>{{kWeekStart - 28, 0}, {kWeekStart - 1, 300}}, kWeekStart).error(), NoRatio::Unrated) << "nothing to divide by";
}

TEST(WeekLoad, WeeksBeginOnMonday)
{
    EXPECT_EQ(mondayOf(kWeekStart), kWeekStart);
    EXPECT_EQ(mondayOf(kWeekStart + 6), kWeekStart);
    EXPECT_EQ(mondayOf(kWeekStart + 7), kWeekAfter);
}

}  // namespace chalk::checkin
