#pragma once

#include "core/week/week_case.h"
#include "ui/week/week_scene.h"

#include <gtest/gtest.h>

namespace chalk::test {

/// A clock time as minutes of a day.
constexpr int clock(int hour, int minute = 0)
{
    return hour * 60 + minute;
}

/// A week from Monday 23 November 2026 with Ines and Tobias, who are there whenever the studio is open: Monday to Friday 6:00 to 21:00, Saturday
/// 8:00 to 14:00. No clients yet; nothing is past.
[[nodiscard]] week::WeekFacts someWeek();
/// A client of Ines who trains a lift at a rack and one on the floor, once a week, in a group of three; free whenever the studio is.
week::ClientOfWeek& addClient(week::WeekFacts& facts, const char* name);
/// Books an hour for the client and answers it.
sessions::Session& book(week::ClientOfWeek& client, int day, int minute, int coach = 1);

/// The bookings of a week, drawn.
struct WeekOnTest {
    explicit WeekOnTest(week::WeekFacts given) : facts(std::move(given)), problem(caseOf(facts)), plan(problem.booked) {}

    [[nodiscard]] ui::week::WeekScene scene() const { return ui::week::sceneOf({facts, problem, plan}); }

    week::WeekFacts facts;
    week::WeekCase problem;
    week::WeekPlan plan;
};

}  // namespace chalk::test
