#include "core/checkin/roster_order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace chalk::checkin {

namespace {

struct Placed {
    std::string name;
    RosterPosition position;
};

base::Date orderDay()
{
    return *base::Date::parse("2026-11-24");
}

RosterPosition booked(int inDays, int minute, bool isFlagged = false)
{
    return {SessionTime{orderDay() + inDays, minute}, inDays == 0, isFlagged, orderDay() - 7};
}

std::string namesIn(RosterOrder order, std::vector<Placed> placed)
{
    std::stable_sort(placed.begin(), placed.end(), [order](const Placed& a, const Placed& b) { return compare(order, a.position, b.position) < 0; });
    std::string names;
    for (const Placed& one : placed) {
        names += one.name;
    }
    return names;
}

}  // namespace

TEST(RosterOrder, TodayThenFlagged)
{
    EXPECT_EQ(namesIn(RosterOrder::TodayThenFlagged, {{"a", booked(2, 420)},
                                                      {"b", {{}, false, true, {}}},
                                                      {"c", booked(0, 990)},
                                                      {"d", booked(2, 420, true)},
                                                      {"e", booked(0, 540, true)},
                                                      {"f", {}},
                                                      {"g", booked(1, 600)}}),
              "ecdbgaf")
        << "today by time, flagged by next session, then the others; nothing booked last in each";
}

TEST(RosterOrder, NextSession)
{
    EXPECT_EQ(namesIn(RosterOrder::NextSession, {{"a", {}}, {"b", booked(2, 420)}, {"c", booked(0, 990)}, {"d", booked(2, 400, true)}}), "cdba");
}

TEST(RosterOrder, LongestSinceSession)
{
    RosterPosition old;
    old.lastCame = orderDay() - 30;
    EXPECT_EQ(namesIn(RosterOrder::LongestSinceSession, {{"a", booked(0, 540)}, {"b", old}, {"c", {}}}), "cba");
}

TEST(RosterOrder, NamesDecideTheRest)
{
    EXPECT_TRUE(compare(RosterOrder::Name, booked(0, 540), booked(1, 540)) == 0);
    EXPECT_TRUE(compare(RosterOrder::TodayThenFlagged, booked(0, 540), booked(0, 540)) == 0);
}

}  // namespace chalk::checkin
