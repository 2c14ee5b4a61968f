#pragma once

#include "core/week/week_problem.h"

#include <QFutureWatcher>
#include <QObject>

#include <atomic>
#include <functional>
#include <memory>

namespace chalk::ui::week {

/// Takes the best plan so far; false asks the search to end.
using PlanReport = std::function<bool(const chalk::week::WeekPlan&)>;
/// Fills a week from what is booked. Called beside the window's thread; reports each better plan, and now and then the same one, so that it can
/// be stopped. What it reported last is its result.
using FillSearch = std::function<void(const chalk::week::WeekProblem&, const chalk::week::WeekPlan& booked, const PlanReport&)>;

/// Puts each session that has no place on the nearest one that is free, those of the highest priority first. Moves nothing.
void fillNearest(const chalk::week::WeekProblem& problem, const chalk::week::WeekPlan& booked, const PlanReport& report);

/// Runs a search beside the window's thread and tells of its plans in the window's.
class WeekFilling : public QObject {
    Q_OBJECT

public:
    explicit WeekFilling(FillSearch search, QObject* parent = nullptr);
    /// Stops, and waits for the search to end.
    ~WeekFilling() override;

    /// Begins anew; a search that is under way is stopped first.
    void start(const chalk::week::WeekProblem& problem, const chalk::week::WeekPlan& booked);
    /// What was found so far stays.
    void stop();
    [[nodiscard]] bool isRunning() const { return m_isRunning; }

Q_SIGNALS:
    void found(const chalk::week::WeekPlan& plan);
    /// The search is over, or was stopped.
    void finished();

private:
    struct Run {
        std::atomic<bool> isStopped = false;
    };

    void take(const std::shared_ptr<Run>& run, const chalk::week::WeekPlan& plan);
    void end(const std::shared_ptr<Run>& run);

    FillSearch m_search;
    std::shared_ptr<Run> m_run;
    QFutureWatcher<void> m_watcher;
    bool m_isRunning = false;
};

}  // namespace chalk::ui::week
