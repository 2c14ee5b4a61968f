#pragma once

#include <QFutureWatcher>
#include <QObject>

#include <atomic>
#include <functional>
#include <memory>

namespace chalk::ui::people {

/// One piece of work beside the window's thread, with how far it is, that can be stopped.
class BackgroundWork : public QObject {
    Q_OBJECT

public:
    /// Told how far it is, 0 to 1000; answers whether to go on.
    using Told = std::function<bool(int thousandths)>;
    using Work = std::function<void(const Told& told)>;

    explicit BackgroundWork(QObject* parent = nullptr);
    /// Stops, and waits for the work to end.
    ~BackgroundWork() override;

    /// Begins; `done` is called in this thread when it is over, stopped or not. Does nothing while something is under way.
    void start(Work work, std::function<void()> done);
    void stop();
    [[nodiscard]] bool isRunning() const { return m_isRunning; }

Q_SIGNALS:
    void progressed(int thousandths);

private:
    std::shared_ptr<std::atomic<bool>> m_isStopped;
    QFutureWatcher<void> m_watcher;
    bool m_isRunning = false;
};

}  // namespace chalk::ui::people
