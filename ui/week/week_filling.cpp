#include "ui/week/week_filling.h"

#include <QPromise>
#include <QThreadPool>

#include <utility>

namespace chalk::ui::week {

using chalk::week::WeekPlan;
using chalk::week::WeekProblem;

WeekFilling::WeekFilling(QObject* parent) : QObject(parent) {}

WeekFilling::~WeekFilling()
{
    stop();
    m_watcher.waitForFinished();
}

void WeekFilling::start(const FillSearch& search, const WeekProblem& problem, const WeekPlan& booked)
{
    stop();
    m_watcher.waitForFinished();
    auto run = std::make_shared<Run>();
    m_run = run;
    m_isRunning = true;
    auto promise = std::make_shared<QPromise<void>>();
    QThreadPool::globalInstance()->start([this, run, promise, problem, booked, search] {
        promise->start();
        WeekPlan told;
        search(problem, booked, [this, &run, &told](const WeekPlan& plan) {
            if (!run->isStopped && plan != told) {
                told = plan;
                note(run, plan);
            }
            return !run->isStopped;
        });
        QMetaObject::invokeMethod(this, [this, run] { end(run); }, Qt::QueuedConnection);
        promise->finish();  // this may be gone from here on
    });
    m_watcher.setFuture(promise->future());
}

void WeekFilling::stop()
{
    if (m_run != nullptr) {
        m_run->isStopped = true;
    }
    if (m_isRunning) {
        m_isRunning = false;
        m_run.reset();
        Q_EMIT finished();
    }
}

void WeekFilling::note(const std::shared_ptr<Run>& run, const WeekPlan& plan)
{
    const std::lock_guard lock(run->mutex);
    const bool isOnItsWay = run->latest.has_value();
    run->latest = plan;
    if (!isOnItsWay) {
        QMetaObject::invokeMethod(this, [this, run] { take(run); }, Qt::QueuedConnection);
    }
}

void WeekFilling::take(const std::shared_ptr<Run>& run)
{
    WeekPlan plan;
    {
        const std::lock_guard lock(run->mutex);
        plan = *std::exchange(run->latest, std::nullopt);
    }
    if (run == m_run) {
        Q_EMIT found(plan);
    }
}

void WeekFilling::end(const std::shared_ptr<Run>& run)
{
    if (run == m_run) {
        m_isRunning = false;
        m_run.reset();
        Q_EMIT finished();
    }
}

}  // namespace chalk::ui::week
