#include "core/direction/plan_blocks.h"

namespace chalk::direction {

namespace {

constexpr int kSunday = 6;

progression::BlockWork blockWorkOf(const PlannedWork& work)
{
    const SetScheme& scheme = work.scheme;
    return {scheme.sets, scheme.reps, work.repsMost, scheme.share, scheme.rest, scheme.reserve, work.isPauseAsked, work.isTest};
}

}  // namespace

progression::Block blockOf(const BlockPlan& plan, std::size_t lift, base::Date from, base::Load single, bool isTested, std::string note)
{
    progression::Block block{{}, single, isTested, std::move(note)};
    for (const PlanWeek& week : plan.weeks) {
        if (week.monday + kSunday < from || week.work[lift].empty()) {
            continue;
        }
        progression::BlockWeek written{week.monday, week.kind == WeekKind::Lighter, {}};
        for (const PlannedWork& work : week.work[lift]) {
            written.work.push_back(blockWorkOf(work));
        }
        block.weeks.push_back(std::move(written));
    }
    return block;
}

}  // namespace chalk::direction
