#include "core/checkin/client_flags.h"

#include <gtest/gtest.h>

#include <set>

namespace chalk::checkin {

namespace {

base::Date flagDay()
{
    return *base::Date::parse("2026-11-24");
}

ClientFacts clientSince(int days)
{
    ClientFacts facts;
    facts.startedOn = flagDay() - days;
    return facts;
}

std::vector<ClientFlag> flagsOf(const ClientFacts& facts)
{
    return flagsFor(facts, attentionFor(facts, flagDay()), flagDay());
}

}  // namespace

TEST(ClientFlags, TwoWeeksAreNew)
{
    EXPECT_EQ(flagsOf(clientSince(0)), std::vector{ClientFlag::New});
    EXPECT_EQ(flagsOf(clientSince(14)), std::vector{ClientFlag::New});
    EXPECT_TRUE(flagsOf(clientSince(15)).empty());
    EXPECT_EQ(flagsOf(clientSince(-3)), std::vector{ClientFlag::New}) << "starts in three days";
}

TEST(ClientFlags, WhoWaitsForClearanceIsNotNew)
{
    ClientFacts facts = clientSince(3);
    facts.clearance.state = clients::ClearanceState::Recommended;
    EXPECT_EQ(flagsOf(facts), std::vector{ClientFlag::Clearance});
}

TEST(ClientFlags, AwayUntilTheFirstDayBack)
{
    ClientFacts facts = clientSince(100);
    facts.awayUntil = flagDay() + 1;
    EXPECT_EQ(flagsOf(facts), std::vector{ClientFlag::Away});
    facts.awayUntil = flagDay();
    EXPECT_TRUE(flagsOf(facts).empty());
}

TEST(ClientFlags, EveryReasonHasItsFlagInOrder)
{
    const std::vector<AttentionReason> reasons{DirectionDue{}, ScreenDue{}, SessionsMissed{}, LiftStalled{}, LiftOnHold{}, ClearanceDue{}};
    EXPECT_EQ(flagsFor(clientSince(100), reasons, flagDay()),
              (std::vector{ClientFlag::Clearance, ClientFlag::Pain, ClientFlag::Plateau, ClientFlag::Missed, ClientFlag::Rescreen, ClientFlag::Ready}));
    EXPECT_EQ(flagOf(NotSeen{}), ClientFlag::Missed);
}

TEST(ClientFlags, BeingAwayAloneIsNotFlagged)
{
    EXPECT_FALSE(isFlagged({}));
    EXPECT_FALSE(isFlagged({ClientFlag::Away}));
    EXPECT_TRUE(isFlagged({ClientFlag::New}));
    EXPECT_TRUE(isFlagged({ClientFlag::Pain, ClientFlag::Away}));
}

TEST(ClientFlags, KeysAreDistinct)
{
    std::set<std::string_view> keys;
    for (const ClientFlag flag : kClientFlags) {
        keys.insert(keyOf(flag));
    }
    EXPECT_EQ(keys.size(), kClientFlags.size());
    EXPECT_EQ(keyOf(ClientFlag::Clearance), "clearance");
    EXPECT_EQ(keyOf(ClientFlag::New), "new");
}

}  // namespace chalk::checkin
