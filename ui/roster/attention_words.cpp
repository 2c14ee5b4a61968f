#include "ui/roster/attention_words.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QStringList>

namespace chalk::ui::roster {

namespace {

using checkin::ClearanceDue;

/// With work more recent than this the break is over.
constexpr int kIdleDays = 14;

QString attentionWords(const char* text)
{
    return QCoreApplication::translate("Attention", text);
}

/// What a person wrote, as a sentence of its own.
QString asSentence(const std::string& words)
{
    QString text = common::qstring(words).trimmed();
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
        if (!text.endsWith(QLatin1Char('.'))) {
            text += QLatin1Char('.');
        }
    }
    return text;
}

QString othersText(int others, const char* one, const char* more)
{
    return others == 0 ? QString() : others == 1 ? attentionWords(one) : attentionWords(more).arg(others);
}

QString loadOf(const checkin::LiftLoad& load)
{
    return common::loadText(load.load, load.unit, load.pieces, load.isAddedToBody);
}

/// Why a doctor was asked, in the words of the intake where there are any.
QString whyAsked(const ClearanceDue& due)
{
    switch (due.cause) {
    case ClearanceDue::Cause::NotAsked:
    case ClearanceDue::Cause::Waiting:
        return due.reason.empty() ? attentionWords(QT_TRANSLATE_NOOP("Attention", "A doctor’s view is recommended before loaded work."))
                                  : asSentence(due.reason);
    case ClearanceDue::Cause::StopAndSeek:
        return due.reason.empty() ? attentionWords(QT_TRANSLATE_NOOP("Attention", "No training until a doctor has been seen.")) : asSentence(due.reason);
    case ClearanceDue::Cause::IntakeOpen:
        return attentionWords(QT_TRANSLATE_NOOP("Attention", "The health intake is not finished."));
    case ClearanceDue::Cause::RanOut:
    case ClearanceDue::Cause::RunsOut:
        return {};
    }
    return {};
}

QString whatIsWaitedFor(const ClearanceDue& due)
{
    const QString day = due.day ? common::shortDayText(*due.day) : QString();
    switch (due.cause) {
    case ClearanceDue::Cause::NotAsked:
    case ClearanceDue::Cause::Waiting:
    case ClearanceDue::Cause::StopAndSeek:
        return due.day ? attentionWords(QT_TRANSLATE_NOOP("Attention", "Letter sent %1, no reply yet.")).arg(day)
                       : attentionWords(QT_TRANSLATE_NOOP("Attention", "No letter sent yet."));
    case ClearanceDue::Cause::RanOut:
        return attentionWords(QT_TRANSLATE_NOOP("Attention", "The doctor’s clearance ran out on %1.")).arg(day);
    case ClearanceDue::Cause::RunsOut:
        return attentionWords(QT_TRANSLATE_NOOP("Attention", "The doctor’s clearance runs out on %1.")).arg(day);
    case ClearanceDue::Cause::IntakeOpen:
        return attentionWords(QT_TRANSLATE_NOOP("Attention", "Loaded work waits for the answers."));
    }
    return {};
}

/// One overload per reason; each answers whole sentences, one string per sentence.
class SentenceWriter {
public:
    explicit SentenceWriter(const AttentionSetting& setting) : m_setting(setting) {}

    QStringList operator()(const ClearanceDue& due) const
    {
        if (!due.remindOn) {
            return {whyAsked(due), whatIsWaitedFor(due)};
        }
        const bool isDue = *due.remindOn <= m_setting.today;
        const QString reminder = (isDue ? attentionWords(QT_TRANSLATE_NOOP("Attention", "Reminder of %1: ask for the answer."))
                                        : attentionWords(QT_TRANSLATE_NOOP("Attention", "You are reminded on %1.")))
                                     .arg(common::dayText(*due.remindOn));
        return isDue ? QStringList{reminder, whyAsked(due), whatIsWaitedFor(due)} : QStringList{whyAsked(due), whatIsWaitedFor(due), reminder};
    }

    QStringList operator()(const checkin::LiftOnHold& held) const
    {
        QString text = nameOf(held.exerciseKey, held.pattern);
        if (!held.hold) {
            text += attentionWords(QT_TRANSLATE_NOOP("Attention", " is on hold because of pain."));
        } else {
            text += attentionWords(QT_TRANSLATE_NOOP("Attention", ": pain %1 of 10 on %2"))
                        .arg(QString::number(held.hold->pain), common::shortDayText(held.hold->on));
            text += held.hold->painfulRecords > 1
                        ? attentionWords(QT_TRANSLATE_NOOP("Attention", ", %1 sessions running. The lift is on hold.")).arg(held.hold->painfulRecords)
                        : attentionWords(QT_TRANSLATE_NOOP("Attention", ". The lift is on hold."));
        }
        return {text, othersText(held.others, QT_TRANSLATE_NOOP("Attention", "One more lift is on hold."),
                                 QT_TRANSLATE_NOOP("Attention", "%1 more lifts are on hold."))};
    }

    QStringList operator()(const checkin::LiftStalled& stalled) const
    {
        const QString stage = common::stageName(stalled.stage);
        QString text = nameOf(stalled.exerciseKey, stalled.pattern);
        text += stalled.stageSince ? attentionWords(QT_TRANSLATE_NOOP("Attention", " has not got past %1 for %2"))
                                         .arg(stage, spanText(m_setting.today - *stalled.stageSince))
                                   : attentionWords(QT_TRANSLATE_NOOP("Attention", " does not get past %1")).arg(stage);
        if (stalled.load) {
            text += QStringLiteral(": ") + loadOf(*stalled.load);
        }
        text += stalled.of > 0 ? attentionWords(QT_TRANSLATE_NOOP("Attention", ", came to %1 of the last %2 sessions.")).arg(stalled.came).arg(stalled.of)
                               : QStringLiteral(".");
        return {text, othersText(stalled.others, QT_TRANSLATE_NOOP("Attention", "One more lift has stalled."),
                                 QT_TRANSLATE_NOOP("Attention", "%1 more lifts have stalled."))};
    }

    QStringList operator()(const checkin::SessionsMissed& missed) const
    {
        return {attentionWords(QT_TRANSLATE_NOOP("Attention", "Came to %1 of the last %2 sessions.")).arg(missed.came).arg(missed.of)};
    }

    QStringList operator()(const checkin::NotSeen& notSeen) const
    {
        return {attentionWords(QT_TRANSLATE_NOOP("Attention", "Last here on %1, %2 ago. Nothing is booked."))
                    .arg(common::shortDayText(notSeen.lastCame), spanText(notSeen.days))};
    }

    QStringList operator()(const checkin::ScreenDue& due) const
    {
        const QString name = nameOf(due.exerciseKey, due.pattern);
        const QString stage = common::stageName(due.stage);
        const QString span = due.since ? spanText(m_setting.today - *due.since) : QString();
        QString text;
        if (due.isAfterLayoff) {
            const bool isStillIdle = due.since && m_setting.today - *due.since >= kIdleDays;
            text = isStillIdle ? attentionWords(QT_TRANSLATE_NOOP("Attention", "%1: no work for %2. It starts again at %3, after a new screen.")).arg(name, span, stage)
                               : attentionWords(QT_TRANSLATE_NOOP("Attention", "%1 is back after a long break and has not been screened since.")).arg(name);
        } else {
            text = attentionWords(QT_TRANSLATE_NOOP("Attention", "%1 has been at %2 for %3. Screen it again.")).arg(name, stage, span);
        }
        return {text, othersText(due.others, QT_TRANSLATE_NOOP("Attention", "One more lift is due too."),
                                 QT_TRANSLATE_NOOP("Attention", "%1 more lifts are due too."))};
    }

    QStringList operator()(const checkin::DirectionDue& due) const
    {
        if (due.planEnd) {
            return {attentionWords(QT_TRANSLATE_NOOP("Attention", "The plan ended on %1. Time to review it.")).arg(common::shortDayText(*due.planEnd))};
        }
        const QString first = common::shortDayText(due.firstLoad);
        if (due.stalls >= 2) {
            return {attentionWords(QT_TRANSLATE_NOOP("Attention", "First load on %1, %2 days ago, and %3 lifts have stalled. Time to choose a direction."))
                        .arg(first).arg(due.days).arg(due.stalls)};
        }
        return {attentionWords(QT_TRANSLATE_NOOP("Attention", "First load on %1, %2 days ago. Time to choose a direction.")).arg(first).arg(due.days)};
    }

private:
    [[nodiscard]] QString nameOf(const std::string& key, lifts::Pattern pattern) const
    {
        return exerciseName(key, pattern, m_setting.catalogue);
    }

    const AttentionSetting& m_setting;
};

struct ActionWriter {
    AttentionAction operator()(const ClearanceDue&) const { return {attentionWords(QT_TRANSLATE_NOOP("Attention", "See what is waiting")), {}}; }
    AttentionAction operator()(const checkin::LiftOnHold&) const { return {attentionWords(QT_TRANSLATE_NOOP("Attention", "Release or swap")), {}}; }
    AttentionAction operator()(const checkin::LiftStalled&) const { return {attentionWords(QT_TRANSLATE_NOOP("Attention", "Look at the lift")), {}}; }
    AttentionAction operator()(const checkin::SessionsMissed&) const { return sessions(); }
    AttentionAction operator()(const checkin::NotSeen&) const { return sessions(); }
    AttentionAction operator()(const checkin::ScreenDue&) const { return {attentionWords(QT_TRANSLATE_NOOP("Attention", "Look at the lift")), {}}; }
    AttentionAction operator()(const checkin::DirectionDue& due) const
    {
        const char* text = due.planEnd ? QT_TRANSLATE_NOOP("Attention", "Review the plan") : QT_TRANSLATE_NOOP("Attention", "Choose a direction");
        return {attentionWords(text), QStringLiteral("direction")};
    }

    static AttentionAction sessions()
    {
        return {attentionWords(QT_TRANSLATE_NOOP("Attention", "See the sessions")), QStringLiteral("sessions")};
    }
};

}  // namespace

QString attentionSentence(const checkin::AttentionReason& reason, const AttentionSetting& setting)
{
    QStringList sentences = std::visit(SentenceWriter(setting), reason);
    if (setting.next && setting.next->date == setting.today) {
        sentences.append(attentionWords(QT_TRANSLATE_NOOP("Attention", "Due at %1 today."))
                             .arg(common::qstring(sessions::clockText(setting.next->startMinute))));
    }
    sentences.removeAll(QString());
    return sentences.join(QLatin1Char(' '));
}

AttentionAction attentionAction(const checkin::AttentionReason& reason)
{
    return std::visit(ActionWriter{}, reason);
}

QString spanText(int days)
{
    if (days >= 14) {
        return attentionWords(QT_TRANSLATE_NOOP("Attention", "%1 weeks")).arg(days / 7);
    }
    return days == 1 ? attentionWords(QT_TRANSLATE_NOOP("Attention", "1 day")) : attentionWords(QT_TRANSLATE_NOOP("Attention", "%1 days")).arg(days);
}

QString exerciseName(const std::string& key, lifts::Pattern pattern, const lifts::Catalogue& catalogue)
{
    const lifts::Exercise* exercise = catalogue.find(key);
    return exercise == nullptr ? common::patternName(pattern) : common::qstring(exercise->name);
}

}  // namespace chalk::ui::roster
