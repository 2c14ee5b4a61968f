#pragma once

#include <QObject>

#include <functional>

class QTimer;

namespace chalk::ui::onboarding {

/// A stopwatch on a clock that never jumps.
class Stopwatch : public QObject {
    Q_OBJECT

public:
    /// Milliseconds of a clock that only goes on.
    using Now = std::function<qint64()>;

    explicit Stopwatch(QObject* parent = nullptr, Now now = steadyNow);

    void start();
    /// The milliseconds since start; 0 where it does not run.
    int stop();
    [[nodiscard]] bool isRunning() const { return m_isRunning; }
    [[nodiscard]] int elapsedMs() const;

    [[nodiscard]] static qint64 steadyNow();

Q_SIGNALS:
    /// Ten times a second while it runs, and when it stops.
    void ticked();

private:
    Now m_now;
    QTimer* m_tick;
    qint64 m_begin = 0;
    bool m_isRunning = false;
};

}  // namespace chalk::ui::onboarding
