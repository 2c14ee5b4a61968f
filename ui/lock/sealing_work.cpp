#include "ui/lock/sealing_work.h"

#include <QPromise>
#include <QThreadPool>

namespace chalk::ui::lock {

SealingWork::SealingWork(QObject* parent) : QObject(parent)
{
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &SealingWork::take);
    connect(&m_watcher, &QFutureWatcherBase::progressValueChanged, this, [this](int done) { Q_EMIT progressed(done, m_watcher.progressMaximum()); });
}

SealingWork::~SealingWork()
{
    m_watcher.disconnect(this);
    stop();
    m_watcher.waitForFinished();
}

void SealingWork::start(Work work)
{
    if (m_isBusy) {
        return;
    }
    m_isBusy = true;
    m_isStopped = std::make_shared<std::atomic_bool>(false);
    auto promise = std::make_shared<QPromise<Outcome>>();
    m_watcher.setFuture(promise->future());
    QThreadPool::globalInstance()->start([promise, work = std::move(work), isStopped = m_isStopped] {
        promise->start();
        promise->addResult(std::make_shared<store::Result<void>>(work([&](int done, int of) {
            promise->setProgressRange(0, of);
            promise->setProgressValue(done);
            return !*isStopped;
        })));
        promise->finish();
    });
}

void SealingWork::stop()
{
    if (m_isStopped) {
        *m_isStopped = true;
    }
}

void SealingWork::take()
{
    const Outcome outcome = m_watcher.result();
    m_isBusy = false;
    if (*outcome) {
        Q_EMIT done();
    } else {
        Q_EMIT failed(outcome->error());
    }
}

}  // namespace chalk::ui::lock
