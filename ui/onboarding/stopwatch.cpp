#include "ui/onboarding/stopwatch.h"

#include <QDeadlineTimer>
#include <QTimer>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr int kTickMs = 100;

}  // namespace

qint64 Stopwatch::steadyNow()
{
    return QDeadlineTimer::current(Qt::PreciseTimer).deadline();
}

Stopwatch::Stopwatch(QObject* parent, Now now) : QObject(parent), m_now(std::move(now)), m_tick(new QTimer(this))
{
    m_tick->setInterval(kTickMs);
    connect(m_tick, &QTimer::timeout, this, &Stopwatch::ticked);
}

void Stopwatch::start()
{
    m_begin = m_now();
    m_isRunning = true;
    m_tick->start();
    Q_EMIT ticked();
}

int Stopwatch::elapsedMs() const
{
    return m_isRunning ? static_cast<int>(std::max<qint64>(0, m_now() - m_begin)) : 0;
}

int Stopwatch::stop()
{
    const int elapsed = elapsedMs();
    m_isRunning = false;
    m_tick->stop();
    Q_EMIT ticked();
    return elapsed;
}

}  // namespace chalk::ui::onboarding
