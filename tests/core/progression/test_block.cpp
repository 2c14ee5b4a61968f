#include "core/progression/block.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

using progression::Block;
using progression::BlockWork;

const base::Date kBlockMonday = base::Date::fromYmd(2026, 11, 30).value();

Block soundBlock()
{
    const BlockWork work{base::Sets(4), base::Reps(4), base::Reps(4), base::Milli(800), base::Seconds(180), 3};
    return {{{kBlockMonday, false, {work, work}}, {kBlockMonday + 7, true, {work}}}, base::Load::fromCenti(10000)};
}

template <class Change>
std::string faultyFieldAfter(Change change)
{
    Block block = soundBlock();
    change(block);
    const auto fault = faultOf(block);
    return fault ? fault->field : "none";
}

}  // namespace

TEST(Block, FaultsNameTheirField)
{
    EXPECT_EQ(faultyFieldAfter([](Block&) {}), "none");
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.weeks.clear(); b.single = {}; }), "none") << "without weeks it ends one";
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.single = {}; }), "single");
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.weeks[1].monday = kBlockMonday; }), "weeks[1].monday");
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.weeks[0].monday = kBlockMonday + 1; }), "weeks[0].monday");
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.weeks[0].work.clear(); }), "weeks[0].work");
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.weeks[0].work[1].sets = base::Sets(0); }), "weeks[0].work[1].sets");
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.weeks[0].work[0].repsLow = base::Reps(0); }), "weeks[0].work[0].reps");
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.weeks[0].work[0].repsHigh = base::Reps(3); }), "weeks[0].work[0].reps_most");
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.weeks[0].work[0].share = base::Milli(1001); }), "weeks[0].work[0].percent");
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.weeks[0].work[0].rest = base::Seconds(-1); }), "weeks[0].work[0].rest_s");
    EXPECT_EQ(faultyFieldAfter([](Block& b) { b.weeks[0].work[0].reserve = 11; }), "weeks[0].work[0].reserve");
    EXPECT_EQ(faultyFieldAfter([](Block& b) {
                  while (b.weeks.size() <= progression::kMostBlockWeeks) {
                      b.weeks.push_back(b.weeks.back());
                      b.weeks.back().monday = b.weeks.back().monday + 7;
                  }
              }),
              "weeks");
}

}  // namespace chalk::test
