#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/floor/rest_timers.h"
#endif

#include <QObject>

class QSettings;
class QTimer;

namespace chalk::ui::floor {

/// What the rests need from outside; the real clock and the system's beep where nothing else is given.
struct RestServices {
    QSettings* settings = nullptr;  ///< where it is remembered whether a beep is wanted; null to forget it. Outlives the watch
    RestTimers::SteadyNow now = [] { return std::chrono::steady_clock::now(); };
    std::function<void()> beep = {};
};

/// The rests of the floor as they go on, whatever is on show: tells when a figure changes and when a rest ends. It is silent until
/// a beep is asked for.
class RestWatch : public QObject {
    Q_OBJECT

public:
    explicit RestWatch(RestServices services = {}, QObject* parent = nullptr);

    [[nodiscard]] const RestTimers& timers() const { return m_timers; }
    void start(const PlannedRest& plan);
    /// Does nothing where the client has no rest under way. The same goes for what follows.
    void stop(base::ClientId client);
    void holdOrGoOn(base::ClientId client);
    void restart(base::ClientId client);

    /// Whether the end of a rest is heard.
    [[nodiscard]] bool isHeard() const { return m_isHeard; }
    void setHeard(bool isHeard);

    /// Reads the clock and tells what changed. Called by the watch itself at each whole second of a rest that runs.
    void look();

Q_SIGNALS:
    /// A figure or a rest is different, or isHeard().
    void changed();
    /// A client's rest ended just now.
    void ended(const chalk::ui::floor::PlannedRest& rest);

private:
    RestServices m_services;
    RestTimers m_timers;
    QTimer* m_next;
    bool m_isHeard = false;
};

}  // namespace chalk::ui::floor
