#include "ui/roster/roster_presenter.h"

#include <QPromise>
#include <QThreadPool>

namespace chalk::ui::roster {

RosterPresenter::RosterPresenter(std::unique_ptr<RosterSource> source, const common::Clock& clock, QObject* parent)
    : QObject(parent), m_source(std::move(source)), m_clock(clock)
{
    connect(&m_watcher, &QFutureWatcher<Reading>::finished, this, &RosterPresenter::take);
}

RosterPresenter::~RosterPresenter()
{
    m_watcher.waitForFinished();
}

void RosterPresenter::refresh()
{
    if (isReading()) {
        m_isStale = true;
        return;
    }
    m_isReading = true;
    m_askedDay = m_clock.today();
    auto promise = std::make_shared<QPromise<Reading>>();
    QThreadPool::globalInstance()->start([promise, source = m_source, day = m_askedDay] {
        promise->start();
        promise->addResult(std::make_shared<store::Result<RosterView>>(source->read(day)));
        promise->finish();
    });
    m_watcher.setFuture(promise->future());
    Q_EMIT begun();
}

void RosterPresenter::take()
{
    m_isReading = false;
    const Reading reading = m_watcher.result();
    if (m_isStale) {
        m_isStale = false;
        refresh();
        return;
    }
    if (!*reading) {
        Q_EMIT failed(reading->error().message);
        return;
    }
    m_view = std::move(**reading);
    m_day = m_askedDay;
    m_hasView = true;
    Q_EMIT loaded();
}

}  // namespace chalk::ui::roster
