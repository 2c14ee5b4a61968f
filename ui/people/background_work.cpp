#include "ui/people/background_work.h"

#include <QPromise>
#include <QThreadPool>

namespace chalk::ui::people {

BackgroundWork::BackgroundWork(QObject* parent) : QObject(parent), m_isStopped(std::make_shared<std::atomic<bool>>(false)) {}

BackgroundWork::~BackgroundWork()
{
    stop();
    m_watcher.waitForFinished();
}

void BackgroundWork::start(Work work, std::function<void()> done)
{
    if (m_isRunning) {
        return;
    }
    m_isRunning = true;
    m_isStopped = std::make_shared<std::atomic<bool>>(false);
    auto promise = std::make_shared<QPromise<void>>();
    QThreadPool::globalInstance()->start([this, promise, isStopped = m_isStopped, work = std::move(work), done = std::move(done)] {
        promise->start();
        work([this, &isStopped](int thousandths) {
            QMetaObject::invokeMethod(this, [this, thousandths] { Q_EMIT progressed(thousandths); }, Qt::QueuedConnection);
            return !*isStopped;
        });
        QMetaObject::invokeMethod(
            this,
            [this, done] {
                m_isRunning = false;
                done();
            },
            Qt::QueuedConnection);
        promise->finish();  // this may be gone from here on
    });
    m_watcher.setFuture(promise->future());
}

void BackgroundWork::stop()
{
    *m_isStopped = true;
}

}  // namespace chalk::ui::people
