#pragma once

#include "core/screens/pattern_screen.h"

namespace chalk::test {

/// A screen of one pattern with six points marked alike and every pause held; `overhead_reach` is the third point of the vertical push.
[[nodiscard]] inline screens::PatternScreen markedScreen(lifts::Pattern pattern = lifts::Pattern::Squat, screens::Mark mark = screens::Mark::Met)
{
    screens::PatternScreen screen;
    screen.pattern = pattern;
    for (const char* key : {"a", "b", "c", "d", "e", "f"}) {
        screen.points.push_back({key, mark});
    }
    if (pattern == lifts::Pattern::VerticalPush) {
        screen.points[2].key = "overhead_reach";
    }
    for (screens::PauseTry& pause : screen.pauses) {
        pause.mark = screens::PauseMark::Held;
    }
    return screen;
}

/// All eight of them, done on `date`.
[[nodiscard]] inline screens::MovementScreen markedMovementScreen(base::Date date, screens::Mark mark = screens::Mark::Met)
{
    screens::MovementScreen screen;
    screen.date = date;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        screen.of(pattern) = markedScreen(pattern, mark);
    }
    screen.isFinished = true;
    return screen;
}

}  // namespace chalk::test
