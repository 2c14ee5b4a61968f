#include "ui/common/backup_keeper.h"

#include <QPromise>
#include <QThreadPool>

namespace chalk::ui::common {

namespace {

constexpr int kLookMilliseconds = 10 * 60 * 1000;

/// Opens the studio once more, for the thread that asks, and puts a backup on the shelf.
store::Result<QString> backedUp(const store::Access& studio, store::BackupShelf shelf, const std::atomic_bool& isStopped)
{
    const auto database = store::Database::open(studio, store::OpenMode::MustExist);
    if (!database) {
        return tl::make_unexpected(database.error());
    }
    return shelf.add(**database, [&isStopped](int, int) { return !isStopped; });
}

}  // namespace

BackupKeeper::BackupKeeper(store::Access studio, std::function<store::BackupShelf::Moment()> clock, QObject* parent)
    : QObject(parent), m_studio(std::move(studio)), m_clock(std::move(clock))
{
    m_timer.setInterval(kLookMilliseconds);
    connect(&m_timer, &QTimer::timeout, this, &BackupKeeper::look);
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &BackupKeeper::take);
}

BackupKeeper::~BackupKeeper()
{
    m_watcher.disconnect(this);
    *m_isStopped = true;
    m_watcher.waitForFinished();
}

void BackupKeeper::start()
{
    m_timer.start();
    look();
}

void BackupKeeper::look()
{
    if (m_isMaking || shelf().hasOneOf(m_clock().at.day)) {
        return;
    }
    m_isMaking = true;
    auto promise = std::make_shared<QPromise<Outcome>>();
    QThreadPool::globalInstance()->start([promise, studio = m_studio, shelf = shelf(), isStopped = m_isStopped] {
        promise->start();
        promise->addResult(std::make_shared<store::Result<QString>>(backedUp(studio, shelf, *isStopped)));
        promise->finish();
    });
    m_watcher.setFuture(promise->future());
}

void BackupKeeper::take()
{
    const Outcome outcome = m_watcher.result();
    m_isMaking = false;
    if (*outcome) {
        m_failedOn.reset();
        Q_EMIT made(**outcome);
        return;
    }
    const base::Date day = m_clock().at.day;
    if (m_failedOn != day) {
        m_failedOn = day;
        Q_EMIT failed(outcome->error().message);
    }
}

store::Result<QString> BackupKeeper::makeLast()
{
    m_timer.stop();
    m_watcher.waitForFinished();
    return backedUp(m_studio, shelf(), *m_isStopped);
}

}  // namespace chalk::ui::common
