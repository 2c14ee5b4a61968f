#pragma once

#include "ui/week/fill_search.h"

#include <QFutureWatcher>
#include <QObject>

#include <atomic>
#include <memory>
#include <mutex>
#include <optional>

namespace chalk::ui::week {

/// Runs a search beside the window's thread and tells of its plans in the window's.
class WeekFilling : public QObject {
    Q_OBJECT

public:
    explicit WeekFilling(QObject* parent = nullptr);
    /// Stops, and waits for the search to end.
    ~WeekFilling() override;

    /// Begins anew; a search that is under way is stopped first.
    void start(const FillSearch& search, const chalk::week::WeekProblem& problem, const chalk::week::WeekPlan& booked);
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
        std::mutex mutex;
        std::optional<chalk::week::WeekPlan> latest;  ///< not told yet; behind the mutex
    };

    void note(const std::shared_ptr<Run>& run, const chalk::week::WeekPlan& plan);
    void take(const std::shared_ptr<Run>& run);
    void end(const std::shared_ptr<Run>& run);

    std::shared_ptr<Run> m_run;
    QFutureWatcher<void> m_watcher;
    bool m_isRunning = false;
};

}  // namespace chalk::ui::week
