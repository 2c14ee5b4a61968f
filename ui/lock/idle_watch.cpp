#include "ui/lock/idle_watch.h"

#include <QCoreApplication>
#include <QEvent>

namespace chalk::ui::lock {

namespace {

constexpr int kMillisecondsAMinute = 60'000;

/// Whether a person did something.
bool isTouch(QEvent::Type type)
{
    return type == QEvent::KeyPress || type == QEvent::MouseButtonPress || type == QEvent::MouseMove || type == QEvent::Wheel || type == QEvent::TouchBegin ||
           type == QEvent::TouchUpdate || type == QEvent::InputMethod;
}

}  // namespace

IdleWatch::IdleWatch(QObject* parent) : QObject(parent)
{
    m_timer.setParent(this);
    m_timer.setSingleShot(true);
    m_timer.setTimerType(Qt::PreciseTimer);
    connect(&m_timer, &QTimer::timeout, this, &IdleWatch::idled);
    QCoreApplication::instance()->installEventFilter(this);
}

IdleWatch::~IdleWatch()
{
    // Its timer says goodbye by an event, which is not to come here any more.
    if (QCoreApplication* application = QCoreApplication::instance()) {
        application->removeEventFilter(this);
    }
}

void IdleWatch::setMinutes(int minutes)
{
    m_minutes = minutes;
    resume();
}

void IdleWatch::resume()
{
    if (m_minutes > 0) {
        m_timer.start(m_minutes * kMillisecondsAMinute);
    } else {
        m_timer.stop();
    }
}

bool IdleWatch::eventFilter(QObject* watched, QEvent* event)
{
    if (m_timer.isActive() && isTouch(event->type())) {
        m_timer.start();
    }
    return QObject::eventFilter(watched, event);
}

}  // namespace chalk::ui::lock
