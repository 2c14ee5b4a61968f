#include "ui/week/offer_search.h"

#include <QPromise>
#include <QThreadPool>

#include <memory>
#include <utility>

namespace chalk::ui::week {

OfferSearch::OfferSearch(QObject* parent) : QObject(parent)
{
    connect(&m_watcher, &QFutureWatcherBase::finished, this, [this] {
        if (m_next) {
            start(*std::exchange(m_next, std::nullopt));
        } else if (std::exchange(m_isAsked, false)) {
            Q_EMIT found(m_watcher.result());
        }
    });
}

OfferSearch::~OfferSearch()
{
    m_watcher.disconnect(this);
    m_watcher.waitForFinished();
}

void OfferSearch::start(WeekSnapshot week)
{
    m_isAsked = true;
    if (m_watcher.isRunning()) {
        m_next = std::move(week);
        return;
    }
    auto promise = std::make_shared<QPromise<std::vector<LeftOverItem>>>();
    promise->start();
    QThreadPool::globalInstance()->start([promise, week = std::move(week)] {
        promise->addResult(leftOverItems({week.facts, week.week, week.plan}, week.scene));
        promise->finish();
    });
    m_watcher.setFuture(promise->future());
}

void OfferSearch::stop()
{
    m_isAsked = false;
    m_next.reset();
}

}  // namespace chalk::ui::week
