#include "ui/trends/trends_presenter.h"

#include <QPromise>
#include <QThreadPool>

#include <utility>

namespace chalk::ui::trends {

TrendsPresenter::TrendsPresenter(std::unique_ptr<TrendsSource> source, QObject* parent) : QObject(parent), m_source(std::move(source))
{
    connect(&m_watcher, &QFutureWatcher<Reading>::finished, this, &TrendsPresenter::take);
}

TrendsPresenter::~TrendsPresenter()
{
    m_watcher.waitForFinished();
}

void TrendsPresenter::ask(const TrendsAsk& ask)
{
    if (m_isReading) {
        m_next = ask;
        return;
    }
    start(ask);
    Q_EMIT begun();
}

void TrendsPresenter::start(const TrendsAsk& ask)
{
    m_isReading = true;
    auto promise = std::make_shared<QPromise<Reading>>();
    QThreadPool::globalInstance()->start([promise, source = m_source, ask] {
        promise->start();
        promise->addResult(std::make_shared<store::Result<TrendsView>>(source->read(ask)));
        promise->finish();
    });
    m_watcher.setFuture(promise->future());
}

void TrendsPresenter::take()
{
    const Reading reading = m_watcher.result();
    m_isReading = false;
    if (const auto next = std::exchange(m_next, std::nullopt)) {
        start(*next);
        return;
    }
    if (!*reading) {
        Q_EMIT failed(reading->error().message);
        return;
    }
    m_view = std::move(**reading);
    Q_EMIT loaded();
}

}  // namespace chalk::ui::trends
