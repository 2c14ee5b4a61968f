#include "ui/floor/rest_watch.h"

#include <QApplication>
#include <QSettings>
#include <QTimer>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

constexpr QLatin1String kHeardKey("floor/restBeep");

}  // namespace

RestWatch::RestWatch(RestServices services, QObject* parent)
    : QObject(parent), m_services(std::move(services)), m_timers(m_services.now), m_next(new QTimer(this))
{
    if (!m_services.beep) {
        m_services.beep = QApplication::beep;
    }
    m_isHeard = m_services.settings != nullptr && m_services.settings->value(kHeardKey, false).toBool();
    m_next->setSingleShot(true);
    m_next->setTimerType(Qt::PreciseTimer);
    connect(m_next, &QTimer::timeout, this, &RestWatch::look);
}

void RestWatch::start(const PlannedRest& plan)
{
    m_timers.start(plan);
    look();
}

void RestWatch::stop(base::ClientId client)
{
    m_timers.stop(client);
    look();
}

void RestWatch::holdOrGoOn(base::ClientId client)
{
    m_timers.holdOrGoOn(client);
    look();
}

void RestWatch::restart(base::ClientId client)
{
    m_timers.restart(client);
    look();
}

void RestWatch::setHeard(bool isHeard)
{
    m_isHeard = isHeard;
    if (m_services.settings != nullptr) {
        m_services.settings->setValue(kHeardKey, isHeard);
    }
    Q_EMIT changed();
}

void RestWatch::look()
{
    const auto ended = m_timers.endedSinceAsked();
    if (!ended.empty() && m_isHeard) {
        m_services.beep();
    }
    for (const Rest& rest : m_timers.rests()) {
        if (std::find(ended.begin(), ended.end(), rest.plan.client) != ended.end()) {
            Q_EMIT this->ended(rest.plan);
        }
    }
    if (const auto next = m_timers.untilNextChange()) {
        m_next->start(*next);
    } else {
        m_next->stop();
    }
    Q_EMIT changed();
}

}  // namespace chalk::ui::floor
