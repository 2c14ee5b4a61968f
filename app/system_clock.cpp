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

store::BackupShelf::Moment SystemClock::localMoment()
{
    const QDateTime now = QDateTime::currentDateTime();
    const QDate day = now.date();
    return {{*base::Date::fromYmd(day.year(), day.month(), day.day()), now.time().hour() * 60 + now.time().minute()}, now.time().second()};
}

}  // namespace chalk::app
