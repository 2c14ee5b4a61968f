#pragma once

#include "core/store/store_error.h"
#include "core/store/studio_import.h"

#include <QFutureWatcher>
#include <QObject>

#include <atomic>
#include <functional>
#include <memory>

namespace chalk::ui::lock {

/// Work on a passphrase, in a thread of its own: it takes a second at least. One at a time; where this goes, the work is stopped and waited for.
class SealingWork : public QObject {
    Q_OBJECT

public:
    using Work = std::function<store::Result<void>(const store::Progress& progress)>;

    explicit SealingWork(QObject* parent = nullptr);
    ~SealingWork() override;

    /// Begins, unless something is at work.
    void start(Work work);
    [[nodiscard]] bool isBusy() const { return m_isBusy; }
    void stop();

Q_SIGNALS:
    void progressed(int done, int of);
    /// It ended well; else `error` says why not.
    void done();
    void failed(const chalk::store::StoreError& error);

private:
    using Outcome = std::shared_ptr<store::Result<void>>;

    void take();

    QFutureWatcher<Outcome> m_watcher;
    std::shared_ptr<std::atomic_bool> m_isStopped;
    bool m_isBusy = false;
};

}  // namespace chalk::ui::lock
