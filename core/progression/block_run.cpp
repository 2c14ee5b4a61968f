#include "core/progression/block_run.h"

#include <algorithm>

namespace chalk::progression {

namespace {

constexpr int kLastDayOfWeek = 6;

base::Date mondayBefore(base::Date day)
{
    return day - day.weekday();
}

}  // namespace

std::optional<BlockPlace> placeOn(base::Date day, const BlockRun& run)
{
    const auto& weeks = run.block->weeks;
    if (day < weeks.front().monday) {
        return std::nullopt;
    }
    const auto found = std::find_if(weeks.begin(), weeks.end(), [day](const BlockWeek& w) { return day <= w.monday + kLastDayOfWeek; });
    if (found == weeks.end()) {
        return std::nullopt;
    }
    const std::size_t done = run.week == mondayBefore(day) ? static_cast<std::size_t>(run.done) : 0;
    return BlockPlace{static_cast<std::size_t>(found - weeks.begin()), std::min(done, found->work.size() - 1)};
}

bool isOver(base::Date day, const BlockRun& run)
{
    return day > run.block->weeks.back().monday + kLastDayOfWeek;
}

void countExposure(base::Date day, BlockRun& run)
{
    const base::Date monday = mondayBefore(day);
    run.done = run.week == monday ? run.done + 1 : 1;
    run.week = monday;
}

}  // namespace chalk::progression
