#include "ui/check_in/check_in_desk.h"

#include "ui/common/act_history.h"
#include "ui/common/clock.h"

#include <QPromise>
#include <QThreadPool>

#include <algorithm>
#include <utility>

namespace chalk::ui::check_in {

/// What one turn of reading brought.
struct CheckInDesk::Reading {
    base::Date day;
    base::ClientId client;
    std::optional<store::Result<std::vector<checkin::QueueEntry>>> queue;
    std::optional<store::Result<CheckInCase>> page;
};

CheckInDesk::CheckInDesk(std::unique_ptr<CheckInSource> source, const common::Clock& clock, common::ActHistory& acts, QObject* parent)
    : QObject(parent), m_source(std::move(source)), m_clock(clock), m_acts(acts), m_day(clock.today())
{
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &CheckInDesk::take);
}

CheckInDesk::~CheckInDesk()
{
    m_watcher.disconnect(this);
    m_watcher.waitForFinished();
}

void CheckInDesk::refresh()
{
    m_isQueueWanted = true;
    m_isPageWanted = !m_client.isNone();
    read();
}

void CheckInDesk::go(base::ClientId client)
{
    m_isAtEnd = false;
    if (client == m_client && m_page) {
        return;
    }
    m_client = client;
    m_page.reset();
    m_lift = 0;
    m_isPageWanted = true;
    read();
    Q_EMIT pageChanged();
}

void CheckInDesk::step(int by)
{
    if (m_queue.empty()) {
        return;
    }
    const std::ptrdiff_t here = indexOf(m_client);
    const std::ptrdiff_t last = std::ssize(m_queue) - 1;
    const std::ptrdiff_t there = here < 0 ? 0 : std::clamp(here + by, std::ptrdiff_t{0}, last);
    go(m_queue[static_cast<std::size_t>(there)].client);
}

void CheckInDesk::skip()
{
    if (!m_client.isNone()) {
        m_skipped.insert(m_client);
        openNext();
        Q_EMIT queueLoaded();
    }
}

QString CheckInDesk::decide(const DecisionDraft& draft)
{
    if (!m_page) {
        return tr("The client is still being read.");
    }
    checkin::Decision decision;
    decision.client = m_client;
    decision.lift = draft.lift;
    decision.day = m_day;
    decision.about = m_page->evidence.finding.kind;
    decision.choice = draft.choice;
    decision.note = draft.note;
    decision.nextReview = draft.nextReview;
    const std::ptrdiff_t here = indexOf(m_client);
    const auto seen = here < 0 ? std::nullopt : m_queue[static_cast<std::size_t>(here)].decided;
    const auto act = m_source->decide(decision, draft.event, seen ? seen->act : base::ActId());
    if (!act) {
        return act.error().message;
    }
    decision.act = *act;
    m_acts.add(*act, draft.words);
    if (const std::ptrdiff_t at = indexOf(m_client); at >= 0) {
        m_queue[static_cast<std::size_t>(at)].decided = decision;
    }
    m_skipped.erase(m_client);
    openNext();
    m_isQueueWanted = true;
    read();
    Q_EMIT queueLoaded();
    return {};
}

void CheckInDesk::chooseLift(std::size_t lift)
{
    if (m_page && lift < m_page->evidence.lifts.size() && lift != m_lift) {
        m_lift = lift;
        Q_EMIT pageChanged();
    }
}

int CheckInDesk::decidedCount() const
{
    return static_cast<int>(std::ranges::count_if(m_queue, [](const checkin::QueueEntry& entry) { return entry.decided.has_value(); }));
}

bool CheckInDesk::isSettled(const checkin::QueueEntry& entry) const
{
    return entry.decided || isSkipped(entry.client);
}

std::ptrdiff_t CheckInDesk::indexOf(base::ClientId client) const
{
    const auto at = std::ranges::find(m_queue, client, &checkin::QueueEntry::client);
    return at == m_queue.end() ? -1 : at - m_queue.begin();
}

void CheckInDesk::openNext()
{
    const auto count = m_queue.size();
    const auto here = static_cast<std::size_t>(indexOf(m_client) + 1);
    for (std::size_t i = 0; i < count; ++i) {
        const checkin::QueueEntry& entry = m_queue[(here + i) % count];
        if (!isSettled(entry)) {
            go(entry.client);
            return;
        }
    }
    m_isAtEnd = true;
    m_client = {};
    m_page.reset();
    m_isPageWanted = false;
    Q_EMIT pageChanged();
}

void CheckInDesk::read()
{
    if (m_isReading || (!m_isQueueWanted && !m_isPageWanted)) {
        return;
    }
    m_isReading = true;
    auto reading = std::make_shared<Reading>();
    reading->day = m_clock.today();
    reading->client = m_client;
    auto promise = std::make_shared<QPromise<Read>>();
    QThreadPool::globalInstance()->start([promise, reading, source = m_source, isQueueWanted = std::exchange(m_isQueueWanted, false),
                                          isPageWanted = std::exchange(m_isPageWanted, false)] {
        promise->start();
        if (isQueueWanted) {
            reading->queue = source->queue(reading->day);
        }
        if (isPageWanted) {
            reading->page = source->page(reading->client, reading->day);
        }
        promise->addResult(reading);
        promise->finish();
    });
    m_watcher.setFuture(promise->future());
    Q_EMIT begun();
}

void CheckInDesk::take()
{
    m_isReading = false;
    const Read reading = m_watcher.result();
    m_day = reading->day;
    QString failure;
    if (reading->queue && !*reading->queue) {
        failure = reading->queue->error().message;
    } else if (reading->queue && !m_isQueueWanted) {
        m_queue = std::move(**reading->queue);
        m_hasQueue = true;
    }
    const bool isOfThis = reading->page && reading->client == m_client && !m_isPageWanted;
    if (isOfThis && !*reading->page) {
        failure = reading->page->error().message;
    } else if (isOfThis) {
        const bool isNew = !m_page;
        m_page = std::move(**reading->page);
        const auto& lifts = m_page->evidence.lifts;
        const auto about = std::ranges::find_if(lifts, [this](const auto& lift) { return lift.lift == m_page->evidence.finding.lift; });
        m_lift = isNew && about != lifts.end() ? static_cast<std::size_t>(about - lifts.begin()) : m_lift < lifts.size() ? m_lift : 0;
    }
    if (failure.isEmpty() && m_client.isNone() && !m_isAtEnd && !m_queue.empty()) {
        openNext();
    }
    read();
    if (reading->queue) {
        Q_EMIT queueLoaded();
    }
    if (isOfThis) {
        Q_EMIT pageChanged();
    }
    if (!failure.isEmpty()) {
        Q_EMIT failed(failure);
    }
}

}  // namespace chalk::ui::check_in
