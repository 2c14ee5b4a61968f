#include "app/system_clock.h"

#include <QDate>
#include <QDateTime>
#include <QTime>

namespace chalk::app {

base::Date SystemClock::today() const
{
    if (m_pinnedDay) {
        return *m_pinnedDay;
    }
    const QDate day = QDate::currentDate();
    return *base::Date::fromYmd(day.year(), day.month(), day.day());
}

int SystemClock::minuteOfDay() const
{
    return QTime::currentTime().msecsSinceStartOfDay() / 60'000;
}

QString SystemClock::nowUtc()
{
    return QDateTime::currentDateTimeUtc().toString(Qt::ISODate);
}

}  // namespace chalk::app
