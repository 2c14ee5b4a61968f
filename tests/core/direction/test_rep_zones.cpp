#include "core/direction/rep_zones.h"

#include "tests/support/table_file.h"

#include <gtest/gtest.h>

namespace chalk::test {

using base::Milli;
using base::Reps;
using base::Sets;
using direction::ZoneWork;

// The printed table (see repZones), kept as a file with its source.
TEST(RepZones, AreThePrintedOnes)
{
    const auto rows = readTable("reference/repetitions_by_intensity.csv");
    const auto zones = direction::repZones();
    ASSERT_EQ(zones.size(), rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(zones[i].from, Milli(10 * numberIn(rows[i], "from_percent")));
        EXPECT_EQ(zones[i].to, Milli(10 * numberIn(rows[i], "to_percent")));
        EXPECT_EQ(zones[i].setLeast, numberIn(rows[i], "set_least"));
        EXPECT_EQ(zones[i].setMost, numberIn(rows[i], "set_most"));
        EXPECT_EQ(zones[i].totalLeast, numberIn(rows[i], "total_least"));
        EXPECT_EQ(zones[i].totalBest, numberIn(rows[i], "total_best"));
        EXPECT_EQ(zones[i].totalMost, numberIn(rows[i], "total_most"));
    }
}

TEST(RepZones, LeaveTheGapsOfTheTableOpen)
{
    EXPECT_FALSE(direction::zoneOf(Milli(540)).has_value());
    EXPECT_FALSE(direction::zoneOf(Milli(660)).has_value());
    EXPECT_FALSE(direction::zoneOf(Milli(699)).has_value());
    EXPECT_EQ(direction::zoneOf(Milli(659))->to, Milli(650)) << "65.9 is 65 in whole per cent";
    EXPECT_EQ(direction::zoneOf(Milli(895))->from, Milli(800));
    EXPECT_EQ(direction::zoneOf(Milli(1000))->from, Milli(900));
}

TEST(RepZones, ASessionIsAddedUpByZone)
{
    const std::vector<ZoneWork> session{{Milli(900), Sets(3), Reps(2)}, {Milli(800), Sets(2), Reps(4)}, {Milli(850), Sets(3), Reps(3)}};
    const auto totals = direction::zoneTotals(session);
    ASSERT_EQ(totals.size(), 2U);
    EXPECT_EQ(totals[0].reps, 17);
    EXPECT_TRUE(totals[0].isTotalInside);
    EXPECT_TRUE(totals[0].areSetsInside);
    EXPECT_EQ(totals[1].reps, 6);
}

TEST(RepZones, TooMuchTooLittleAndNoZoneAreSaid)
{
    const auto one = [](int share, int sets, int reps) {
        const std::vector<ZoneWork> session{{Milli(share), Sets(sets), Reps(reps)}};
        return direction::zoneTotals(session).front();
    };
    EXPECT_FALSE(one(800, 6, 4).isTotalInside) << "24 of 10 to 20";
    EXPECT_TRUE(one(800, 5, 4).isTotalInside);
    EXPECT_FALSE(one(800, 3, 3).isTotalInside) << "9 of 10 to 20";
    EXPECT_FALSE(one(800, 3, 5).areSetsInside) << "5 of 2 to 4 in a set";
    EXPECT_FALSE(one(670, 3, 5).zone.has_value());
    EXPECT_FALSE(one(670, 3, 5).isTotalInside);
}

}  // namespace chalk::test
