#include "core/clients/client.h"

#include <gtest/gtest.h>

namespace chalk::clients {

namespace {

const base::Date kDay = *base::Date::fromYmd(2026, 11, 25);

bool isBlockedIn(ClearanceState state, std::optional<base::Date> validUntil = {})
{
    Clearance clearance;
    clearance.state = state;
    clearance.validUntil = validUntil;
    return isBlocked(clearance, kDay);
}

}  // namespace

TEST(Clearance, BlocksUntilItIsGrantedOrNotNeeded)
{
    EXPECT_FALSE(isBlockedIn(ClearanceState::NotNeeded));
    EXPECT_TRUE(isBlockedIn(ClearanceState::Recommended));
    EXPECT_TRUE(isBlockedIn(ClearanceState::StopAndSeek));
    EXPECT_TRUE(isBlockedIn(ClearanceState::Unanswered));
    EXPECT_FALSE(isBlockedIn(ClearanceState::Granted));
}

TEST(Clearance, ALetterEndsWithItsLastDay)
{
    EXPECT_FALSE(isBlockedIn(ClearanceState::Granted, kDay));
    EXPECT_TRUE(isBlockedIn(ClearanceState::Granted, kDay - 1));
}

TEST(Clearance, KeysLeadBack)
{
    for (const auto state : {ClearanceState::NotNeeded, ClearanceState::Recommended, ClearanceState::StopAndSeek, ClearanceState::Granted,
                             ClearanceState::Unanswered}) {
        EXPECT_EQ(clearanceStateOf(keyOf(state)), state);
    }
}

TEST(Client, InitialsAreOfTheFirstAndTheLastWord)
{
    EXPECT_EQ(initialsOf("Joaquin Ferro"), "JF");
    EXPECT_EQ(initialsOf("  hanne  skov adler "), "HA");
    EXPECT_EQ(initialsOf("Åse"), "Å");
    EXPECT_EQ(initialsOf(""), "");
    EXPECT_EQ(dottedInitialsOf("Joaquin Ferro"), "J. F.");
    EXPECT_EQ(dottedInitialsOf(" åse "), "å.");
    EXPECT_EQ(dottedInitialsOf(""), "");
}

}  // namespace chalk::clients
