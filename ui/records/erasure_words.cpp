#include "ui/records/erasure_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

namespace chalk::ui::records {

namespace {

QString erasureText(const char* text)
{
    return QCoreApplication::translate("Erasure", text);
}

QString countText(int count, const char* one, const char* many)
{
    return QStringLiteral("%1 %2").arg(count).arg(erasureText(count == 1 ? one : many));
}

}  // namespace

QStringList erasurePreviewLines(const store::ErasurePreview& preview)
{
    QStringList goes{countText(preview.lifts, QT_TRANSLATE_NOOP("Erasure", "lift"), QT_TRANSLATE_NOOP("Erasure", "lifts")),
                                     countText(preview.entries, QT_TRANSLATE_NOOP("Erasure", "entry of the log"), QT_TRANSLATE_NOOP("Erasure", "entries of the log")),
                                     countText(preview.forms, QT_TRANSLATE_NOOP("Erasure", "form"), QT_TRANSLATE_NOOP("Erasure", "forms")),
                                     countText(preview.letters, QT_TRANSLATE_NOOP("Erasure", "letter"), QT_TRANSLATE_NOOP("Erasure", "letters")),
                                     countText(preview.decisions, QT_TRANSLATE_NOOP("Erasure", "decision or plan"), QT_TRANSLATE_NOOP("Erasure", "decisions and plans")),
                                     countText(preview.openSessions, QT_TRANSLATE_NOOP("Erasure", "booking to come"), QT_TRANSLATE_NOOP("Erasure", "bookings to come"))};
    goes.removeIf([](const QString& text) { return text.startsWith(QLatin1String("0 ")); });
    goes.prepend(erasureText(QT_TRANSLATE_NOOP("Erasure", "name, contact, health, history of changes")));
    return {erasureText(QT_TRANSLATE_NOOP("Erasure", "Of %1 everything goes: %2.")).arg(common::qstring(preview.name), goes.join(QStringLiteral(", "))),
            erasureText(QT_TRANSLATE_NOOP("Erasure", "Kept for the accounts: day, time, minutes, coach, kind and state of %1, without name or content."))
                .arg(countText(preview.keptSessions, QT_TRANSLATE_NOOP("Erasure", "past session"), QT_TRANSLATE_NOOP("Erasure", "past sessions"))),
            erasureBackupsText(), erasureText(QT_TRANSLATE_NOOP("Erasure", "It cannot be undone."))};
}

QString erasureBackupsText()
{
    return erasureText(QT_TRANSLATE_NOOP("Erasure", "Backups made before still hold this person. They go as new ones are made, at the latest after 12 months; delete them by "
                                                    "hand to be done at once. Files written out before are yours to remove."));
}

QString erasedText(const store::Erased& erased)
{
    const QString done = erasureText(QT_TRANSLATE_NOOP("Erasure", "Erased. The accounts know this person as erased client %1.")).arg(erased.number);
    switch (erased.wiped) {
    case store::Wiped::Done:
        return done;
    case store::Wiped::Later:
        break;
    }
    return done + QLatin1Char(' ') +
           erasureText(QT_TRANSLATE_NOOP("Erasure", "The studio is in use elsewhere or on a server: the freed space is overwritten as it is used again."));
}

}  // namespace chalk::ui::records
