#include "ui/board/board_words.h"

#include "tests/ui/board/client_fixture.h"

#include <gtest/gtest.h>

namespace chalk::ui::board {

TEST(BoardSpoken, ALiftInWorkIsOneSentence)
{
    LiftCase lift = test::trainedLift({lifts::Pattern::Squat, "Back squat", lifts::Region::Lower, test::fixtureBar(), 75, 4}, 1);
    progression::CoachSet set;
    set.stage = progression::Stage::RepBuild;
    set.load = base::Load::fromCenti(7750);
    set.reps = base::Reps(7);
    set.reason = "a test";
    lift.machine.apply(test::fixtureDay(), set);
    settle(lift, test::fixtureDay());
    EXPECT_EQ(spokenOf(lift), QStringLiteral("Back squat, stage 5 Rep build, next 2 by 8 at 77.5 kilograms, 7 of 12 towards Set build"));
}

TEST(BoardSpoken, AHoldAndARehearsalSayWhatTheyAre)
{
    const auto lift = [](int sessions, int pain, int rehearsals) {
        return test::trainedLift({lifts::Pattern::Squat, "Goblet squat", lifts::Region::Lower, test::fixtureDumbbells(), 14, sessions, 1,
                                  lifts::Measure::Reps, pain, rehearsals},
                                 1);
    };
    EXPECT_EQ(spokenOf(lift(1, 0, 0)),
              QStringLiteral("Goblet squat, stage 1 Pattern, next a rehearsal without load, 2 of 3 towards Control"));
    EXPECT_EQ(spokenOf(lift(3, 5, 2)), QStringLiteral("Goblet squat, stage 3 Base load, on hold because of pain"));
}

}  // namespace chalk::ui::board
