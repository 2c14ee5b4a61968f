#include "ui/settings/backup_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLocale>

#include <map>

namespace chalk::ui::settings {

namespace {

constexpr double kBytesInMegabyte = 1'000'000;
constexpr int kMinutesInHour = 60;

QString backupWords(const char* text, int number = -1)
{
    return QCoreApplication::translate("BackupWords", text, nullptr, number);
}

QString backupNumber(int number)
{
    return QLocale().toString(number);
}

ContentLine backupCountLine(const QString& what, int backup, const std::optional<int>& present)
{
    return {what, backupNumber(backup), present ? backupNumber(*present) : backupWords("not known"), present != backup};
}

/// `06:02`.
QString minuteText(const store::KeptBackup& backup)
{
    return QStringLiteral("%1:%2").arg(backup.made.minute / kMinutesInHour, 2, 10, QLatin1Char('0')).arg(backup.made.minute % kMinutesInHour, 2, 10, QLatin1Char('0'));
}

/// `06:02:41`, and the number that the file has where its second had one already: `06:02:41 (2)`.
QString secondText(const store::KeptBackup& backup)
{
    const QString name = QFileInfo(backup.file).completeBaseName();
    const QString number = name.endsWith(QLatin1Char(')')) ? name.mid(name.lastIndexOf(QLatin1String(" ("))) : QString();
    return QStringLiteral("%1:%2%3").arg(minuteText(backup)).arg(backup.second, 2, 10, QLatin1Char('0')).arg(number);
}

QString momentAt(const store::KeptBackup& backup, const QString& time, base::Date today)
{
    const int daysAgo = today - backup.made.day;
    if (daysAgo == 0) {
        return backupWords("today %1").arg(time);
    }
    if (daysAgo == 1) {
        return backupWords("yesterday %1").arg(time);
    }
    const auto ymd = backup.made.day.ymd();
    return backupWords("%1 %2, %3").arg(common::shortDayText(backup.made.day)).arg(static_cast<int>(ymd.year())).arg(time);
}

}  // namespace

QString momentText(const store::KeptBackup& backup, base::Date today)
{
    return momentAt(backup, minuteText(backup), today);
}

std::vector<QString> momentTexts(const std::vector<store::KeptBackup>& backups, base::Date today)
{
    std::map<studio::BackupMoment, int> ofMinute;
    for (const store::KeptBackup& backup : backups) {
        ++ofMinute[backup.made];
    }
    std::vector<QString> texts;
    for (const store::KeptBackup& backup : backups) {
        const bool isAlone = ofMinute[backup.made] == 1;
        texts.push_back(momentAt(backup, isAlone ? minuteText(backup) : secondText(backup), today));
    }
    return texts;
}
QString sizeText(qint64 bytes)
{
    return backupWords("%1 MB").arg(QLocale().toString(static_cast<double>(bytes) / kBytesInMegabyte, 'f', 1));
}

QString rotationText(const studio::BackupRotation& rotation)
{
    return backupWords("The latest %1 are kept, and the last one of each of the latest %2 days, %3 weeks and %4 months; the others go when a new one is made.")
        .arg(rotation.latest)
        .arg(rotation.days)
        .arg(rotation.weeks)
        .arg(rotation.months);
}

QString lastActText(const QString& atUtc)
{
    const QDateTime moment = QDateTime::fromString(atUtc, Qt::ISODate);
    return moment.isValid() ? QLocale(QLocale::English).toString(moment.toLocalTime(), QStringLiteral("d MMM yyyy, HH:mm")) : backupWords("nothing yet");
}

std::vector<ContentLine> contentLines(const store::StudioContents& backup, const std::optional<store::StudioContents>& present)
{
    const auto countOf = [&present](int store::StudioContents::*member) { return present ? std::optional((*present).*member) : std::nullopt; };
    const QString presentName = present ? present->name : backupWords("not known");
    const QString presentAct = present ? lastActText(present->lastActAtUtc) : backupWords("not known");
    return {{backupWords("Studio"), backup.name, presentName, backup.name != presentName},
            backupCountLine(backupWords("Clients"), backup.clients, countOf(&store::StudioContents::clients)),
            backupCountLine(backupWords("Sessions"), backup.sessions, countOf(&store::StudioContents::sessions)),
            backupCountLine(backupWords("Entries"), backup.entries, countOf(&store::StudioContents::entries)),
            {backupWords("Last change"), lastActText(backup.lastActAtUtc), presentAct, !present || backup.lastActAtUtc != present->lastActAtUtc}};
}

common::Question rescueQuestion(const store::StoreError& damage, const std::optional<store::SoundBackup>& sound, const QString& folder, base::Date today)
{
    common::Question question{common::Signal::Pain, backupWords("The studio is damaged."), {}, damage.message, {backupWords("Close")}, 0};
    const QString shown = QDir::toNativeSeparators(folder);
    if (!sound) {
        question.text = backupWords("There is no sound backup in %1. Nothing was changed. If you keep a copy on another disk, choose it.").arg(shown);
        question.answers.append(backupWords("Choose a backup…"));
        return question;
    }
    if (sound->isLocked) {
        question.text = backupWords("The last backup was made %1 and is sealed with the studio's passphrase. Nothing was changed. To go back to it: chalkrung restore \"%2\"")
                            .arg(momentText(sound->backup, today), QDir::toNativeSeparators(sound->backup.file));
        return question;
    }
    question.text = backupWords("The last sound backup was made %1. It holds %2 clients and %3 sessions; its last change is of %4. What was done after that is not in it. "
                          "The damaged file is kept in %5.")
                        .arg(momentText(sound->backup, today))
                        .arg(sound->contents.clients)
                        .arg(sound->contents.sessions)
                        .arg(lastActText(sound->contents.lastActAtUtc), shown);
    question.answers.append(backupWords("Open the backup"));
    return question;
}

common::Question rescuedMessage(const store::RestoredStudio& restored)
{
    const QString kept = QDir::toNativeSeparators(restored.kept);
    const QString text = restored.kept.isEmpty()   ? QString()
                         : restored.wasDamaged     ? backupWords("The damaged file is kept as %1 until you delete it.").arg(kept)
                                                   : backupWords("What was open before is kept among the backups as %1.").arg(kept);
    return {common::Signal::Ok, backupWords("The backup is open now."), text, {}, {}, 0};
}

}  // namespace chalk::ui::settings
