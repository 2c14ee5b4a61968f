#pragma once

#include "core/week/contradictions.h"
#include "core/week/left_over.h"
#include "core/week/ways_out.h"

#include <QString>

#include <vector>

namespace chalk::ui::common {

/// What the people and things of a week are called, by their index in the problem. Stations by the one: `rack`.
struct WeekNames {
    std::vector<QString> clients;
    std::vector<QString> coaches;
    std::vector<QString> stations;
};

/// `Thu 17:30`; minutes since Monday 00:00.
[[nodiscard]] QString weekTimeText(int minute);

/// Why a session has no place, short: what it wants or needs, and of the times at which one of its coaches works the two largest groups that
/// are blocked: `Needs 48 hours between sessions. Of 31 times, 20 are outside the hours of Tomasz and 8 have no rack free.`
[[nodiscard]] QString whyLeftOver(const week::LeftOver& left, const week::WeekProblem& problem, const WeekNames& names);

/// Why a session cannot have one slot: `Ines has 3 of 3 at Thu 17:30.`
[[nodiscard]] QString sentenceFor(const week::BlockedSlot& blocked, const week::Slot& slot, const week::SessionWish& wish, const WeekNames& names);

/// What is wrong with a plan: `3 need a rack at Thu 17:30, there are 2.`
[[nodiscard]] QString sentenceFor(const week::PlanFault& fault, const week::WeekProblem& problem, const WeekNames& names);

/// What a way out asks for, as an offer: `Ask Tobias: Fri 17:00`, `Leave at 2 this week`.
[[nodiscard]] QString offerText(const week::WayOut& way, const week::WeekProblem& problem, std::size_t session, const WeekNames& names);

/// What no plan can keep, as a sentence with what is concerned.
[[nodiscard]] QString sentenceFor(const week::Contradiction& found, const week::WeekProblem& problem, const WeekNames& names);

}  // namespace chalk::ui::common
