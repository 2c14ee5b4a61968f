#include "core/sessions/session.h"

#include <gtest/gtest.h>

#include <string>

namespace chalk::sessions {

namespace {

/// The keys of all states for which it holds.
std::string statesOf(bool (*holds)(SessionState))
{
    std::string keys;
    for (const SessionState state : kSessionStates) {
        keys += holds(state) ? (keys.empty() ? "" : " ") + std::string(keyOf(state)) : "";
    }
    return keys;
}

}  // namespace

TEST(Session, EveryStateHasAKeyOfItsOwn)
{
    EXPECT_EQ(statesOf([](SessionState) { return true; }), "planned printed recorded missed cancelled_in_time cancelled_late withdrawn");
    for (const SessionState state : kSessionStates) {
        EXPECT_EQ(sessionStateOf(keyOf(state)), state);
    }
    EXPECT_FALSE(sessionStateOf("cancelled"));
}

TEST(Session, WhatCalledOffIsIsDecidedInOnePlace)
{
    EXPECT_EQ(statesOf(isCalledOff), "cancelled_in_time cancelled_late");
    EXPECT_EQ(statesOf(isOpen), "planned printed");
    EXPECT_EQ(statesOf(takesTime), "planned printed recorded");
}

TEST(Session, TheClockIsReadAndWritten)
{
    EXPECT_EQ(clockText(9 * 60 + 5), "09:05");
    EXPECT_EQ(parseClock("23:59"), 23 * 60 + 59);
    for (const char* text : {"24:00", "9:05", "09:60", "0905", ""}) {
        EXPECT_FALSE(parseClock(text)) << text;
    }
}

}  // namespace chalk::sessions
