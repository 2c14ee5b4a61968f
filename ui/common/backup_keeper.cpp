#include "ui/common/backup_keeper.h"

#include <QPromise>
#include <QThreadPool>

#include <algorithm>
#include <utility>

namespace chalk::ui::common {

namespace {

constexpr int kLookMilliseconds = 10 * 60 * 1000;
constexpr int kWholeProgress = 1000;

/// Opens the studio once more, for the thread that asks, puts a backup on the shelf and copies it further.
store::Result<MadeBackup> backedUp(const store::Access& studio, store::BackupShelf shelf, const QString& furtherFolder, const store::Progress& progress)
{
    const auto database = store::Database::open(studio, store::OpenMode::MustExist);
    if (!database) {
        return tl::make_unexpected(database.error());
    }
    const auto file = shelf.add(**database, progress);
    if (!file) {
        return tl::make_unexpected(file.error());
    }
    MadeBackup made{*file, {}, {}};
    if (!furtherFolder.isEmpty()) {
        const auto further = shelf.copyTo(furtherFolder, *file, progress);
        (further ? made.furtherFile : made.furtherFault) = further ? *further : further.error().message;
    }
    return made;
}

}  // namespace

BackupKeeper::BackupKeeper(store::Access studio, Clock clock, QObject* parent) : QObject(parent), m_studio(std::move(studio)), m_clock(std::move(clock))
{
    m_timer.setInterval(kLookMilliseconds);
    connect(&m_timer, &QTimer::timeout, this, &BackupKeeper::look);
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &BackupKeeper::take);
    connect(&m_watcher, &QFutureWatcherBase::progressValueChanged, this,
            [this](int done) { Q_EMIT progressed(done, kWholeProgress); });
}

BackupKeeper::~BackupKeeper()
{
    end();
}

void BackupKeeper::end()
{
    m_timer.stop();
    m_watcher.disconnect(this);
    stop();
    m_watcher.waitForFinished();
    m_isMaking = false;
}

std::optional<store::StoreError> BackupKeeper::makeLast(const store::Progress& progress)
{
    const auto made = backedUp(m_studio, shelf(), m_furtherFolder, progress);
    return made ? std::nullopt : std::optional(made.error());
}

void BackupKeeper::start()
{
    m_timer.start();
    look();
}

void BackupKeeper::look()
{
    if (!m_isMaking && !shelf().hasOneOf(m_clock().at.day)) {
        make();
    }
}

void BackupKeeper::makeNow()
{
    m_isAsked = true;
    if (!m_isMaking) {
        make();
    }
}

void BackupKeeper::stop()
{
    if (m_isStopped) {
        *m_isStopped = true;
    }
}

void BackupKeeper::setAtPlace(bool isAtPlace)
{
    if (std::exchange(m_isAtPlace, isAtPlace) != isAtPlace) {
        Q_EMIT placeChanged();
    }
}

void BackupKeeper::make()
{
    m_isMaking = true;
    m_isStopped = std::make_shared<std::atomic_bool>(false);
    auto promise = std::make_shared<QPromise<Outcome>>();
    m_watcher.setFuture(promise->future());
    QThreadPool::globalInstance()->start([promise, studio = m_studio, shelf = shelf(), further = m_furtherFolder, isStopped = m_isStopped] {
        promise->start();
        promise->setProgressRange(0, kWholeProgress);
        const auto progress = [&promise, &isStopped](int done, int of) {
            promise->setProgressValue(static_cast<int>(qint64(done) * kWholeProgress / std::max(1, of)));
            return !*isStopped;
        };
        promise->addResult(std::make_shared<store::Result<MadeBackup>>(backedUp(studio, shelf, further, progress)));
        promise->finish();
    });
    Q_EMIT begun();
}

void BackupKeeper::take()
{
    const Outcome outcome = m_watcher.result();
    const bool wasAsked = std::exchange(m_isAsked, false);
    m_isMaking = false;
    if (*outcome) {
        m_failedOn.reset();
        m_fault.reset();
        m_last = **outcome;
        Q_EMIT made(**outcome);
        return;
    }
    const base::Date day = m_clock().at.day;
    m_fault = outcome->error();
    if (wasAsked || m_failedOn != day) {
        m_failedOn = day;
        Q_EMIT failed(outcome->error());
    }
}

}  // namespace chalk::ui::common
