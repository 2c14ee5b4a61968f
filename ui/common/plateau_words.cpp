#include "ui/common/plateau_words.h"

#include "core/plateau/detector_figures.h"
#include "ui/common/check_in_words.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace chalk::ui::common {

namespace {

using plateau::EntryMark;
using plateau::Judgement;
using plateau::kFigures;
using plateau::PlateauEvidence;
using plateau::PlateauReason;
using plateau::PlateauStrength;
using plateau::PlateauVerdict;

/// A variation of fewer sessions is named: its numbers are compared with little.
constexpr int kYoungVariation = 16;

QString plateauText(const char* text)
{
    return QCoreApplication::translate("Plateau", text);
}

QString counted(int number, const char* one, const char* more)
{
    return number == 1 ? plateauText(one) : plateauText(more).arg(number);
}

QString sessionsText(int sessions)
{
    return counted(sessions, QT_TRANSLATE_NOOP("Plateau", "1 more session"), QT_TRANSLATE_NOOP("Plateau", "%1 more sessions"));
}

/// `+0.4 %`, `−0.8 %`, `0.0 %`.
QString percentText(double percent)
{
    const QString number = QString::number(std::abs(percent), 'f', 1);
    const bool isZero = number == QLatin1String("0.0");
    return (isZero ? QString() : percent < 0 ? QString(QChar(0x2212)) : QStringLiteral("+")) + number + QStringLiteral(" %");
}

/// Sessions or days that are missing.
QString missingText(const plateau::Shortage& shortage)
{
    if (shortage.toCome > 0) {
        return sessionsText(shortage.toCome);
    }
    return shortage.daysToCome > 0 ? counted(shortage.daysToCome, QT_TRANSLATE_NOOP("Plateau", "1 more day of training"),
                                             QT_TRANSLATE_NOOP("Plateau", "%1 more days of training"))
                                   : QString();
}

QString shortTitle(const PlateauEvidence& evidence, const char* withNumber, const char* without)
{
    const QString missing = evidence.shortage ? missingText(*evidence.shortage) : QString();
    return missing.isEmpty() ? plateauText(without) : plateauText(withNumber).arg(missing);
}

QString backTitle(const PlateauEvidence& evidence)
{
    if (!evidence.pause) {
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "Back from a break: too early to say"));
    }
    return plateauText(QT_TRANSLATE_NOOP("Plateau", "Back after %1 days: %2 before this is judged"))
        .arg(evidence.pause->days)
        .arg(sessionsText(evidence.toComeAfterPause));
}

/// Why nothing is said.
QString silentTitle(const Judgement& judgement, const PlateauEvidence& evidence)
{
    switch (judgement.reason) {
    case PlateauReason::NoExposures:
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "Not enough data: no session with load yet"));
    case PlateauReason::FewExposures:
    case PlateauReason::None:
    case PlateauReason::NewBest:
        return shortTitle(evidence, QT_TRANSLATE_NOOP("Plateau", "Not enough data: %1"), QT_TRANSLATE_NOOP("Plateau", "Not enough data"));
    case PlateauReason::NewVariation:
        return shortTitle(evidence, QT_TRANSLATE_NOOP("Plateau", "Not enough data since the lift was swapped: %1"),
                          QT_TRANSLATE_NOOP("Plateau", "Not enough data since the lift was swapped"));
    case PlateauReason::AwayNow:
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "Not done for more than two weeks: nothing to judge"));
    case PlateauReason::BackFromBreak:
        return backTitle(evidence);
    case PlateauReason::LighterWeek:
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "The last session was a lighter one: judged after the next full one"));
    case PlateauReason::Pain:
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "Pain in two or more of the last five sessions: see to that first"));
    case PlateauReason::Attendance:
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "Fewer than half of the planned sessions in four weeks: see to that first"));
    }
    return {};
}

QString strengthTitle(PlateauStrength strength)
{
    switch (strength) {
    case PlateauStrength::Possible:
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "Possible stall"));
    case PlateauStrength::Likely:
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "Likely stall"));
    case PlateauStrength::Strong:
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "Strong signs of a stall"));
    }
    return {};
}

QString stallTitle(const Judgement& judgement, const PlateauEvidence& evidence)
{
    const QString name = strengthTitle(judgement.strength.value_or(PlateauStrength::Possible));
    if (!evidence.best.daysSinceLever && evidence.followsPlan) {
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "%1, the single has not risen in this plan yet")).arg(name);
    }
    if (!evidence.best.daysSinceLever) {
        return plateauText(QT_TRANSLATE_NOOP("Plateau", "%1, no new best yet at this stage")).arg(name);
    }
    const int days = *evidence.best.daysSinceLever;
    const QString span = days < 14 ? counted(days, QT_TRANSLATE_NOOP("Plateau", "1 day"), QT_TRANSLATE_NOOP("Plateau", "%1 days")) : weeksText(days / 7);
    return evidence.followsPlan ? plateauText(QT_TRANSLATE_NOOP("Plateau", "%1, the single has not risen for %2")).arg(name, span)
                                : plateauText(QT_TRANSLATE_NOOP("Plateau", "%1, %2 without a new best")).arg(name, span);
}

QString titleOf(const Judgement& judgement, const PlateauEvidence& evidence)
{
    switch (judgement.verdict) {
    case PlateauVerdict::Progressing:
        return judgement.isWatched ? plateauText(QT_TRANSLATE_NOOP("Plateau", "No sign of a stall yet, worth watching"))
                                   : plateauText(QT_TRANSLATE_NOOP("Plateau", "No sign of a stall"));
    case PlateauVerdict::Stalled:
    case PlateauVerdict::Regressing:
        return stallTitle(judgement, evidence);
    case PlateauVerdict::NotEnoughData:
        return silentTitle(judgement, evidence);
    }
    return {};
}

/// What is the case that could hold a lift back.
QStringList presentCauses(const plateau::OtherCauses& causes)
{
    QStringList said;
    if (causes.attendedSessions < causes.plannedSessions) {
        said << plateauText(QT_TRANSLATE_NOOP("Plateau", "Came to %1 of %2 planned sessions in four weeks.")).arg(causes.attendedSessions).arg(causes.plannedSessions);
    }
    if (causes.longestGapDays > kFigures.gapMostDays) {
        said << plateauText(QT_TRANSLATE_NOOP("Plateau", "A gap of %1 days between two sessions.")).arg(causes.longestGapDays);
    }
    if (causes.painful > 0) {
        said << plateauText(QT_TRANSLATE_NOOP("Plateau", "Pain in %1 of the last %2 sessions.")).arg(causes.painful).arg(kFigures.painMemory);
    }
    if (causes.lighter > 0) {
        said << counted(causes.lighter, QT_TRANSLATE_NOOP("Plateau", "One lighter session in these weeks."),
                        QT_TRANSLATE_NOOP("Plateau", "%1 lighter sessions in these weeks."));
    }
    if (causes.ofVariation < kYoungVariation) {
        said << plateauText(QT_TRANSLATE_NOOP("Plateau", "Only %1 sessions of this variation so far.")).arg(causes.ofVariation);
    }
    return said;
}

/// What is not the case, so that nobody need ask again.
QString absentCauses(const plateau::OtherCauses& causes)
{
    QStringList said;
    if (causes.plannedSessions > 0 && causes.attendedSessions >= causes.plannedSessions) {
        said << plateauText(QT_TRANSLATE_NOOP("Plateau", "every planned session attended"));
    }
    if (causes.longestGapDays <= kFigures.gapMostDays) {
        said << plateauText(QT_TRANSLATE_NOOP("Plateau", "no long gap"));
    }
    if (causes.painful == 0) {
        said << plateauText(QT_TRANSLATE_NOOP("Plateau", "no pain noted"));
    }
    if (causes.lighter == 0) {
        said << plateauText(QT_TRANSLATE_NOOP("Plateau", "no lighter session"));
    }
    return said.isEmpty() ? QString() : plateauText(QT_TRANSLATE_NOOP("Plateau", "Not behind it: %1.")).arg(said.join(QLatin1String(", ")));
}

/// Entries that may be slips of the pen.
QString entriesToCheck(const PlateauEvidence& evidence)
{
    QStringList days;
    for (const plateau::LeftOutExposure& left : evidence.leftOut) {
        const bool isToCheck = std::ranges::any_of(left.marks, [](EntryMark mark) {
            return mark == EntryMark::CheckReserve || mark == EntryMark::CheckLoad || mark == EntryMark::CheckReps || mark == EntryMark::CheckJump;
        });
        if (isToCheck) {
            days << shortDayText(left.date);
        }
    }
    if (days.isEmpty()) {
        return {};
    }
    return days.size() == 1 ? plateauText(QT_TRANSLATE_NOOP("Plateau", "Entry to check: %1.")).arg(days.front())
                            : plateauText(QT_TRANSLATE_NOOP("Plateau", "%1 entries to check, the last of %2.")).arg(days.size()).arg(days.back());
}

QString missesText(const plateau::MissedTargets& missed)
{
    return plateauText(QT_TRANSLATE_NOOP("Plateau", "Missed %1 of the last %2 targets, before that about %3 of 10."))
        .arg(missed.misses)
        .arg(missed.of)
        .arg(std::lround(missed.usualShare * 10));
}

QString changeText(const plateau::WeeklyChange& change)
{
    return plateauText(QT_TRANSLATE_NOOP("Plateau", "Estimated strength %1 a week, likely between %2 and %3."))
        .arg(percentText(change.percent), percentText(change.low), percentText(change.high));
}

QString numbersOf(const Judgement& judgement, const PlateauEvidence& evidence)
{
    QStringList said;
    if (judgement.reason == PlateauReason::NewBest) {
        said << plateauText(QT_TRANSLATE_NOOP("Plateau", "A new best of late."));
    }
    if (evidence.missed) {
        said << missesText(*evidence.missed);
    }
    if (evidence.change) {
        said << changeText(*evidence.change);
    }
    if (judgement.verdict == PlateauVerdict::Regressing) {
        said << plateauText(QT_TRANSLATE_NOOP("Plateau", "It may be falling; the log cannot tell that from a stall with certainty."));
    }
    return said.join(QLatin1Char(' '));
}

}  // namespace

QString VerdictWords::inOneLine() const
{
    QStringList all{title + QLatin1Char('.')};
    all << first << numbers << confidence;
    all.removeAll(QString());
    return all.join(QLatin1Char(' '));
}

VerdictWords verdictWordsOf(const Judgement& judgement, const PlateauEvidence& evidence)
{
    VerdictWords words;
    words.title = titleOf(judgement, evidence);
    const bool isStall = judgement.verdict == PlateauVerdict::Stalled || judgement.verdict == PlateauVerdict::Regressing;
    if (evidence.otherCauses && isStall) {
        words.first = presentCauses(*evidence.otherCauses);
    }
    words.first << entriesToCheck(evidence);
    if (evidence.otherCauses && isStall) {
        words.first << absentCauses(*evidence.otherCauses);
    }
    words.first.removeAll(QString());
    if (judgement.verdict != PlateauVerdict::NotEnoughData) {
        words.numbers = numbersOf(judgement, evidence);
    }
    if (isStall && judgement.confidence) {
        words.confidence = plateauText(QT_TRANSLATE_NOOP("Plateau", "In simulated histories about %1 of 10 lifts like this gained less than 0.5 % a week."))
                               .arg(std::clamp(std::lround(judgement.confidence->isSlow * 10), 1L, 9L));
    }
    return words;
}

QString shortageText(const PlateauEvidence& evidence)
{
    const QString missing = evidence.shortage ? missingText(*evidence.shortage) : QString();
    return missing.isEmpty() ? QString() : plateauText(QT_TRANSLATE_NOOP("Plateau", "%1 before this says anything")).arg(missing);
}

}  // namespace chalk::ui::common
