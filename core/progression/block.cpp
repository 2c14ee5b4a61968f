#include "core/progression/block.h"

#include <fmt/core.h>

namespace chalk::progression {

namespace {

constexpr int kMostSetsOfBlock = 20;
constexpr int kMostRepsOfBlock = 100;
constexpr int kLongestRestSeconds = 1800;
constexpr int kMostReserveOfBlock = 10;
constexpr int kWholeSingle = 1000;

bool isBetween(int value, int least, int most)
{
    return value >= least && value <= most;
}

/// The field of an exposure that is out of range; empty where none is.
std::string_view faultyField(const BlockWork& work)
{
    if (!isBetween(work.sets.value(), 1, kMostSetsOfBlock)) {
        return "sets";
    }
    if (!isBetween(work.repsLow.value(), 1, kMostRepsOfBlock)) {
        return "reps";
    }
    if (!isBetween(work.repsHigh.value(), work.repsLow.value(), kMostRepsOfBlock)) {
        return "reps_most";
    }
    if (!isBetween(work.share.value(), 1, kWholeSingle)) {
        return "percent";
    }
    if (!isBetween(work.rest.value(), 0, kLongestRestSeconds)) {
        return "rest_s";
    }
    return isBetween(work.reserve, 0, kMostReserveOfBlock) ? std::string_view() : "reserve";
}

}  // namespace

std::optional<BlockFault> faultOf(const Block& block)
{
    if (block.weeks.empty()) {
        return std::nullopt;
    }
    if (block.single <= base::Load()) {
        return BlockFault{"single", "must be above 0"};
    }
    if (block.weeks.size() > kMostBlockWeeks) {
        return BlockFault{"weeks", "must be 60 at most"};
    }
    for (std::size_t i = 0; i < block.weeks.size(); ++i) {
        const BlockWeek& week = block.weeks[i];
        if (week.monday.weekday() != 0 || (i > 0 && week.monday <= block.weeks[i - 1].monday)) {
            return BlockFault{fmt::format("weeks[{}].monday", i), "must be a Monday later than the week before"};
        }
        if (week.work.empty()) {
            return BlockFault{fmt::format("weeks[{}].work", i), "must have one exposure at least"};
        }
        for (std::size_t j = 0; j < week.work.size(); ++j) {
            if (const auto field = faultyField(week.work[j]); !field.empty()) {
                return BlockFault{fmt::format("weeks[{}].work[{}].{}", i, j, field), "is out of range"};
            }
        }
    }
    return std::nullopt;
}

}  // namespace chalk::progression
