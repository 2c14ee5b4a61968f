#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/lift_for_plan.h"
#include "core/direction/plan_review.h"

#include <QByteArray>

#include <span>
#include <string>
#include <vector>

namespace chalk::exchange {

/// A plan and what it is written with. The values are the caller's and only read.
struct PlanForCsv {
    const direction::ClientPlan& plan;
    std::span<const direction::LiftForPlan> lifts;  ///< of the client, in any order
    std::span<const std::string> names;             ///< by lift of the plan, in its order
};

/// A plan as CSV (RFC 4180), UTF-8, one exposure a record, by week and lift, under the header
/// `monday,week,phase,kind,lift,role,exposure,sets,reps,reps_most,percent,load,unit,rest_s,reserve,pause,test,published`. Weeks are those of the plan and exposures those of
/// the week, both counted from 1. The load is what the equipment gives, as it is written on the lift (of a pair that of one), empty where no
/// single is known; pounds stand as `lb`. `pause` and `test` are `yes` or `no`; a test stands as one single. `published` is `yes`, or the
/// figures outside of their published range (`share`, `reps`, `sets`, `rest`, with blanks between); lighter weeks and tests are not judged and
/// leave it empty.
[[nodiscard]] QByteArray planCsvOf(const PlanForCsv& plan);

/// What was planned beside what was done, one lift in one week a record, under the header
/// `monday,week,phase,kind,lift,planned_sets,done_sets,planned_reps,done_reps,planned_percent,done_percent`. Per cent are the mean of the
/// repetitions, with one decimal at most; that of what was done is empty where nothing was or no single is known. Weeks that begin after `day`
/// have nothing done yet and leave all three empty. `done` is by lift of the plan (see store::PlanReader::done).
[[nodiscard]] QByteArray planComparisonCsvOf(const PlanForCsv& plan, std::span<const std::vector<direction::DoneSet>> done, base::Date day);

}  // namespace chalk::exchange
