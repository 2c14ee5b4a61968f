#include "ui/week/fill_search.h"

#include "core/week/replan.h"
#include "core/week/week_search.h"

#include <QElapsedTimer>

namespace chalk::ui::week {

namespace {

constexpr std::int64_t kSlice = 2'000;         ///< iterations, some microseconds each
constexpr qint64 kMostQuietMilliseconds = 4'000;
constexpr qint64 kMostMilliseconds = 30'000;

}  // namespace

void searchForFill(const chalk::week::WeekProblem& problem, const chalk::week::WeekPlan& booked, const PlanReport& report)
{
    chalk::week::FillOptions options;
    options.present = &booked;
    for (const auto& slot : booked) {
        options.fixed.push_back(slot.has_value());
    }
    chalk::week::WeekSearch search(problem, options);
    QElapsedTimer whole;
    QElapsedTimer quiet;
    whole.start();
    quiet.start();
    chalk::week::WeekPlan best = search.best();
    bool isGoingOn = true;
    while (report(search.best()) && isGoingOn && quiet.elapsed() < kMostQuietMilliseconds && whole.elapsed() < kMostMilliseconds) {
        isGoingOn = search.advance(kSlice);
        if (search.best() != best) {
            best = search.best();
            quiet.restart();
        }
    }
}

FillSearch searchForChange(int fromMinute)
{
    return [fromMinute](const chalk::week::WeekProblem& problem, const chalk::week::WeekPlan& booked, const PlanReport& report) {
        chalk::week::ReplanOptions options;
        options.fromMinute = fromMinute;
        report(replanned(problem, booked, options).plan);
    };
}

}  // namespace chalk::ui::week
