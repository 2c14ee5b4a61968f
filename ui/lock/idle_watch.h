#pragma once

#include <QObject>
#include <QTimer>

namespace chalk::ui::lock {

/// Tells when nobody has touched a key, the mouse or the screen for some minutes, in any window of the program.
class IdleWatch : public QObject {
    Q_OBJECT

public:
    explicit IdleWatch(QObject* parent = nullptr);
    ~IdleWatch() override;

    /// 0: never.
    void setMinutes(int minutes);
    [[nodiscard]] int minutes() const { return m_minutes; }
    [[nodiscard]] bool isRunning() const { return m_timer.isActive(); }
    void pause() { m_timer.stop(); }
    void resume();

Q_SIGNALS:
    void idled();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QTimer m_timer;
    int m_minutes = 0;
};

}  // namespace chalk::ui::lock
