#include "ui/common/check_in_summary.h"

#include "core/analysis/attendance.h"
#include "ui/common/check_in_words.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace chalk::ui::common {

namespace {

using checkin::ChoiceKind;

/// That a message looks back on.
constexpr int kMessageDays = 28;

QString messageText(const char* text)
{
    return QCoreApplication::translate("CheckInMessage", text);
}

QString attendanceLine(const checkin::ClientEvidence& client, base::Date today)
{
    int came = 0;
    int counted = 0;
    for (const checkin::AttendanceMark& mark : client.attendance) {
        const auto isCame = analysis::wasComeTo(mark.state);
        if (isCame && mark.date <= today && today - mark.date < kMessageDays) {
            came += *isCame ? 1 : 0;
            ++counted;
        }
    }
    return counted == 0 ? QString()
                        : messageText(QT_TRANSLATE_NOOP("CheckInMessage", "You came to %1 of %2 sessions in the last four weeks.")).arg(came).arg(counted);
}

/// What is done next, said to the one who does it.
QString nextLine(const checkin::Choice& choice, const checkin::LiftEvidence& lift, const QString& name, const lifts::Catalogue& catalogue)
{
    const QString next = choice.next ? prescriptionText(*choice.next, lift, catalogue.find(choice.exerciseKey.empty() ? lift.exerciseKey : choice.exerciseKey))
                                     : QString();
    switch (choice.kind) {
    case ChoiceKind::LighterWeek:
        return next.isEmpty() ? messageText(QT_TRANSLATE_NOOP("CheckInMessage", "%1: a lighter week, then we build again.")).arg(name)
                              : messageText(QT_TRANSLATE_NOOP("CheckInMessage", "%1: a lighter week with %2, then we build again.")).arg(name, next);
    case ChoiceKind::Hold:
    case ChoiceKind::MoveOn:
    case ChoiceKind::ByHand:
        return next.isEmpty() ? QString() : messageText(QT_TRANSLATE_NOOP("CheckInMessage", "%1: next is %2.")).arg(name, next);
    case ChoiceKind::Swap:
        return choice.exerciseKey.empty() ? QString()
                                          : messageText(QT_TRANSLATE_NOOP("CheckInMessage", "Instead of %1 we try %2.")).arg(name, exerciseNameText(choice.exerciseKey, catalogue));
    case ChoiceKind::Rescreen:
        return messageText(QT_TRANSLATE_NOOP("CheckInMessage", "%1: we look at the movement without weight first.")).arg(name);
    case ChoiceKind::Direction:
        return messageText(QT_TRANSLATE_NOOP("CheckInMessage", "Next time we talk about what you would like to work towards."));
    }
    return {};
}

QString liftLine(const CheckInMessage& message, const lifts::Catalogue& catalogue)
{
    if (message.lift == nullptr) {
        return {};
    }
    const QString name = qstring(message.lift->name);
    if (message.choice != nullptr) {
        return nextLine(*message.choice, *message.lift, name, catalogue);
    }
    if (!message.lift->next || message.lift->next->kind == progression::PrescriptionKind::Hold) {
        return {};
    }
    return messageText(QT_TRANSLATE_NOOP("CheckInMessage", "%1: next is %2."))
        .arg(name, prescriptionText(*message.lift->next, *message.lift, catalogue.find(message.lift->exerciseKey)));
}

QString painLine(const checkin::ClientEvidence& client)
{
    const bool isHeld = std::ranges::any_of(client.lifts, [](const checkin::LiftEvidence& lift) { return lift.isOnHold; });
    return isHeld ? messageText(QT_TRANSLATE_NOOP(
                        "CheckInMessage", "What hurt stays out of training for now. If the pain stays or gets worse, please see a doctor or physiotherapist."))
                  : QString();
}

}  // namespace

QString checkInMessage(const CheckInMessage& message, const lifts::Catalogue& catalogue)
{
    const QString firstName = qstring(message.client.name).section(QLatin1Char(' '), 0, 0);
    QStringList lines{messageText(QT_TRANSLATE_NOOP("CheckInMessage", "Hello %1, this is your check-in of %2.")).arg(firstName, longDayText(message.today))};
    lines << attendanceLine(message.client, message.today) << painLine(message.client) << liftLine(message, catalogue);
    lines << messageText(QT_TRANSLATE_NOOP("CheckInMessage", "We look at it together again on %1.")).arg(longDayText(message.nextReview));
    if (!message.client.coachName.empty()) {
        lines << qstring(message.client.coachName);
    }
    lines.removeAll(QString());
    return lines.join(QLatin1Char('\n'));
}

}  // namespace chalk::ui::common
