#include "ui/common/lock_words.h"

#include "ui/common/day_entry.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

namespace chalk::ui::common {

namespace {

using clients::Clearance;
using clients::ClearanceState;

QString lockWord(const char* text)
{
    return QCoreApplication::translate("Lock", text);
}

/// Where the doctor's answer stands, and what waits for it.
QString answerText(const Clearance& clearance)
{
    const QString letter = clearance.askedOn ? lockWord(QT_TRANSLATE_NOOP("Lock", "The letter went on %1.")).arg(entryOfDay(*clearance.askedOn))
                                             : lockWord(QT_TRANSLATE_NOOP("Lock", "No letter has gone yet."));
    return letter + QLatin1Char(' ') + lockWord(QT_TRANSLATE_NOOP("Lock", "No loaded work and no card before the answer is recorded."));
}

LockWords wordsOfGranted(const Clearance& clearance)
{
    return {lockWord(QT_TRANSLATE_NOOP("Lock", "Clearance ran out")), lockWord(QT_TRANSLATE_NOOP("Lock", "The clearance has run out")),
            lockWord(QT_TRANSLATE_NOOP("Lock", "It was valid until %1. No loaded work and no card before a new one is recorded."))
                .arg(clearance.validUntil ? entryOfDay(*clearance.validUntil) : QString())};
}

}  // namespace

LockWords lockWordsOf(const Clearance& clearance, const clients::Client& client, base::Date day)
{
    if (!clients::isBlocked(clearance, day)) {
        return {};
    }
    switch (clearance.state) {
    case ClearanceState::Recommended:
        return {clearance.askedOn ? lockWord(QT_TRANSLATE_NOOP("Lock", "Waiting for letter")) : lockWord(QT_TRANSLATE_NOOP("Lock", "Waiting for clearance")),
                lockWord(QT_TRANSLATE_NOOP("Lock", "Waiting for %1’s doctor")).arg(qstring(client.name).section(QLatin1Char(' '), 0, 0)), answerText(clearance)};
    case ClearanceState::StopAndSeek:
        return {lockWord(QT_TRANSLATE_NOOP("Lock", "Not today: doctor first")), lockWord(QT_TRANSLATE_NOOP("Lock", "Not today: medical advice first")),
                answerText(clearance)};
    case ClearanceState::Unanswered:
        return {lockWord(QT_TRANSLATE_NOOP("Lock", "Health intake open")), lockWord(QT_TRANSLATE_NOOP("Lock", "The health intake is not finished")),
                lockWord(QT_TRANSLATE_NOOP("Lock", "No loaded work and no card before its questions are answered."))};
    case ClearanceState::Granted:
        return wordsOfGranted(clearance);
    case ClearanceState::NotNeeded:
        break;
    }
    return {};
}

}  // namespace chalk::ui::common
