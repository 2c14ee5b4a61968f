#pragma once

#include "core/week/week_problem.h"

#include <random>
#include <string>
#include <vector>

namespace chalk::test {

/// Minutes since Monday 00:00.
constexpr int at(int day, int hour, int minute = 0)
{
    return day * week::kDayMinutes + hour * 60 + minute;
}

inline constexpr int kMon = 0;
inline constexpr int kTue = 1;
inline constexpr int kWed = 2;
inline constexpr int kThu = 3;
inline constexpr int kFri = 4;
inline constexpr int kSat = 5;
inline constexpr int kSun = 6;

/// The same hours on each day from `first` to `last`.
[[nodiscard]] std::vector<week::DaySpan> everyDay(int first, int last, int fromHour, int toHour);

/// Open from 6 to 22 every day; two coaches who each take three at once and work from Monday to Friday, the first from 8 to 18, the second
/// from 12 to 20; two racks. No clients yet.
[[nodiscard]] week::WeekProblem quietWeek();

/// A client who is free from 6 to 22 every day, goes to both coaches, shares with two others and rests 48 hours.
std::size_t addClient(week::WeekProblem& problem, int maxGroup = 3);

/// An hour for that client, with the pattern `squat` and no station.
std::size_t addSession(week::WeekProblem& problem, std::size_t client, int minutes = 60);

/// A small week drawn from a seed: few clients, short hours, a scarce rack, breaks, closures and sessions of last week, so that every rule
/// plays a part. Sessions have standing slots here and there; locked ones are legal where they stand.
[[nodiscard]] week::WeekProblem drawnWeek(unsigned seed, std::size_t clients);

/// A plan without faults: the locked sessions stand, every other one takes, in a drawn order, a slot drawn from those that fit; some that
/// would fit are left over.
[[nodiscard]] week::WeekPlan drawnPlan(const week::WeekProblem& problem, unsigned seed);

/// Evenly from `least` to `most`, the same on every machine.
[[nodiscard]] int drawFrom(std::mt19937& random, int least, int most);

}  // namespace chalk::test
