#include "ui/floor/session_words.h"

#include <QCoreApplication>

namespace chalk::ui::floor {

namespace {

using sessions::SessionState;
using sessions::SkipReason;

constexpr int kMinutesOfDay = 24 * 60;

QString sessionText(const char* text)
{
    return QCoreApplication::translate("Session", text);
}

}  // namespace

QString absenceText(SessionState state)
{
    switch (state) {
    case SessionState::Missed:
        return sessionText(QT_TRANSLATE_NOOP("Session", "missed"));
    case SessionState::CancelledInTime:
        return sessionText(QT_TRANSLATE_NOOP("Session", "called off in time"));
    case SessionState::CancelledLate:
        return sessionText(QT_TRANSLATE_NOOP("Session", "called off late"));
    case SessionState::Planned:
    case SessionState::Printed:
    case SessionState::Recorded:
    case SessionState::Withdrawn:
        break;
    }
    return {};
}

QString stateAction(SessionState state)
{
    switch (state) {
    case SessionState::Missed:
        return sessionText(QT_TRANSLATE_NOOP("Session", "Missed"));
    case SessionState::CancelledInTime:
        return sessionText(QT_TRANSLATE_NOOP("Session", "Called off in time"));
    case SessionState::CancelledLate:
        return sessionText(QT_TRANSLATE_NOOP("Session", "Called off late"));
    case SessionState::Planned:
        return sessionText(QT_TRANSLATE_NOOP("Session", "Planned again"));
    case SessionState::Printed:
        return sessionText(QT_TRANSLATE_NOOP("Session", "Card printed"));
    case SessionState::Recorded:
        return sessionText(QT_TRANSLATE_NOOP("Session", "Came"));
    case SessionState::Withdrawn:
        return sessionText(QT_TRANSLATE_NOOP("Session", "Take the booking away"));
    }
    return {};
}

QString stateDone(SessionState state, const QString& name)
{
    switch (state) {
    case SessionState::Missed:
        return sessionText(QT_TRANSLATE_NOOP("Session", "%1 missed the session")).arg(name);
    case SessionState::CancelledInTime:
        return sessionText(QT_TRANSLATE_NOOP("Session", "%1 called off in time")).arg(name);
    case SessionState::CancelledLate:
        return sessionText(QT_TRANSLATE_NOOP("Session", "%1 called off late")).arg(name);
    case SessionState::Planned:
        return sessionText(QT_TRANSLATE_NOOP("Session", "%1 is planned again")).arg(name);
    case SessionState::Printed:
        return sessionText(QT_TRANSLATE_NOOP("Session", "Card of %1 printed")).arg(name);
    case SessionState::Recorded:
        return sessionText(QT_TRANSLATE_NOOP("Session", "%1 came")).arg(name);
    case SessionState::Withdrawn:
        return sessionText(QT_TRANSLATE_NOOP("Session", "Booking of %1 taken away")).arg(name);
    }
    return {};
}

QString skipReasonText(const std::string& kept)
{
    const auto reason = sessions::skipReasonOf(kept);
    if (!reason) {
        return QString::fromStdString(kept);
    }
    switch (*reason) {
    case SkipReason::NoTime:
        return sessionText(QT_TRANSLATE_NOOP("Session", "no time"));
    case SkipReason::EquipmentTaken:
        return sessionText(QT_TRANSLATE_NOOP("Session", "equipment taken"));
    case SkipReason::ClientsWish:
        return sessionText(QT_TRANSLATE_NOOP("Session", "client’s wish"));
    case SkipReason::Pain:
        return sessionText(QT_TRANSLATE_NOOP("Session", "pain or discomfort"));
    case SkipReason::Other:
        return sessionText(QT_TRANSLATE_NOOP("Session", "another reason"));
    }
    return {};
}

QString skipReasonAction(SkipReason reason)
{
    switch (reason) {
    case SkipReason::NoTime:
        return sessionText(QT_TRANSLATE_NOOP("Session", "&No time"));
    case SkipReason::EquipmentTaken:
        return sessionText(QT_TRANSLATE_NOOP("Session", "&Equipment taken"));
    case SkipReason::ClientsWish:
        return sessionText(QT_TRANSLATE_NOOP("Session", "&Client’s wish"));
    case SkipReason::Pain:
        return sessionText(QT_TRANSLATE_NOOP("Session", "&Pain or discomfort"));
    case SkipReason::Other:
        return sessionText(QT_TRANSLATE_NOOP("Session", "&Another reason…"));
    }
    return {};
}

bool isLateNow(const sessions::Session& session, base::Date today, int minuteOfDay)
{
    const auto minutesAhead = (session.date - today) * kMinutesOfDay + session.startMinute - minuteOfDay;
    return minutesAhead < kMinutesOfDay;
}

}  // namespace chalk::ui::floor
