#include "core/direction/plan_review.h"

#include "core/direction/plan_calendar.h"

namespace chalk::direction {

namespace {

constexpr double kThousandths = 1000;

void addPlanned(WeekReview& review, const PlannedWork& work)
{
    const int sets = work.isTest ? 1 : work.scheme.sets.value();
    const int reps = work.isTest ? 1 : sets * work.scheme.reps.value();
    review.plannedSets += sets;
    review.plannedReps += reps;
    review.plannedShare += reps * (work.isTest ? 1.0 : work.scheme.share.value() / kThousandths);
}

}  // namespace

std::vector<WeekReview> reviewOf(const BlockPlan& plan, std::size_t lift, base::Load single, std::span<const DoneSet> done)
{
    std::vector<WeekReview> weeks;
    for (const PlanWeek& week : plan.weeks) {
        WeekReview& review = weeks.emplace_back();
        review.monday = week.monday;
        for (const PlannedWork& work : week.work[lift]) {
            addPlanned(review, work);
        }
    }
    for (const DoneSet& set : done) {
        if (const auto week = weekOn(plan, set.date)) {
            WeekReview& review = weeks[*week];
            ++review.doneSets;
            review.doneReps += set.reps.value();
            review.doneShare += static_cast<double>(set.reps.value()) * set.load.centi() / single.centi();
        }
    }
    for (WeekReview& review : weeks) {
        review.plannedShare = review.plannedReps > 0 ? review.plannedShare / review.plannedReps : 0;
        review.doneShare = review.doneReps > 0 ? review.doneShare / review.doneReps : 0;
    }
    return weeks;
}

}  // namespace chalk::direction
