#include "ui/common/conflict_words.h"

#include "core/lifts/pattern.h"
#include "core/store/client_reader.h"
#include "core/store/studio_reader.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QJsonArray>
#include <QLocale>

#include <algorithm>

namespace chalk::ui::common {

namespace {

using store::Conflict;
using store::ConflictAbout;

/// The words of each field: `Pauses · Top · Mark` to `not tried`.
using Fields = std::vector<std::pair<QString, QString>>;

QString conflictText(const char* text)
{
    return QCoreApplication::translate("Conflict", text);
}

/// `session_minutes` as `Session minutes`.
QString wordsOfKey(const QString& key)
{
    QString words = key;
    words.replace(QLatin1Char('_'), QLatin1Char(' '));
    return words.left(1).toUpper() + words.mid(1);
}

QString stateWords(const QString& key)
{
    const auto state = sessions::sessionStateOf(key.toStdString());
    if (!state) {
        return key;
    }
    switch (*state) {
    case sessions::SessionState::Planned: return conflictText("To come");
    case sessions::SessionState::Printed: return conflictText("To come, card printed");
    case sessions::SessionState::Recorded: return conflictText("Recorded");
    case sessions::SessionState::Missed: return conflictText("Missed");
    case sessions::SessionState::CancelledInTime: return conflictText("Called off in time");
    case sessions::SessionState::CancelledLate: return conflictText("Called off late");
    case sessions::SessionState::Withdrawn: return conflictText("Taken out of the week");
    }
    return key;
}

QString coachWords(const QJsonValue& value, const ConflictNames& names)
{
    const base::CoachId id(value.isString() ? value.toString().toLongLong() : value.toInteger());
    const auto at = names.coaches.find(id);
    return at == names.coaches.end() ? value.toVariant().toString() : at->second;
}

QString plainWords(const QString& field, const QJsonValue& value, const ConflictNames& names)
{
    if (field == QLatin1String("coach")) {
        return coachWords(value, names);
    }
    if (const auto pattern = lifts::patternOf(value.toString().toStdString()); pattern && field == QLatin1String("lifts")) {
        return patternName(*pattern);
    }
    if (value.isBool()) {
        return value.toBool() ? conflictText("yes") : conflictText("no");
    }
    if (value.isDouble()) {
        return QLocale(QLocale::C).toString(value.toDouble(), 'g', 10);
    }
    const QString text = value.toString();
    if (field == QLatin1String("state")) {
        return stateWords(text);
    }
    const auto day = base::Date::parse(text.toStdString());
    if (day) {
        return dayText(*day);
    }
    return field == QLatin1String("note") || text.contains(QLatin1Char(' ')) ? text : QString(text).replace(QLatin1Char('_'), QLatin1Char(' '));
}

/// `77.5 × 8, 2 left`.
QString setWords(const QJsonObject& set)
{
    QString words;
    for (const char* amount : {"reps", "seconds", "metres"}) {
        if (const QJsonValue value = set.value(QLatin1String(amount)); !value.isUndefined()) {
            const QString unit = qstrcmp(amount, "seconds") == 0 ? conflictText(" s") : qstrcmp(amount, "metres") == 0 ? conflictText(" m") : QString();
            words = QString::number(value.toInt()) + unit;
        }
    }
    if (const QJsonValue load = set.value(QLatin1String("load")); load.isDouble()) {
        words = conflictText("%1 × %2").arg(QString::number(load.toDouble()), words);
    }
    if (const QJsonValue left = set.value(QLatin1String("rir")); !left.isUndefined()) {
        words += conflictText(", %1 left").arg(left.toInt());
    }
    if (set.value(QLatin1String("warmup")).toBool()) {
        words += conflictText(", warm-up");
    }
    return words;
}

/// What a row of a list is called: by its pattern or key, else by its number.
QString rowName(const QJsonObject& row, qsizetype index)
{
    for (const char* key : {"pattern", "key", "test"}) {
        const QString name = row.value(QLatin1String(key)).toString();
        if (const auto pattern = lifts::patternOf(name.toStdString())) {
            return patternName(*pattern);
        }
        if (!name.isEmpty()) {
            return wordsOfKey(name);
        }
    }
    return QString::number(index + 1);
}

void addFields(Fields& fields, const QString& path, const QString& field, const QJsonValue& value, const ConflictNames& names)
{
    const auto below = [&path](const QString& name) { return path.isEmpty() ? name : path + QStringLiteral(" · ") + name; };
    if (value.isObject()) {
        const QJsonObject object = value.toObject();
        for (auto at = object.begin(); at != object.end(); ++at) {
            addFields(fields, below(wordsOfKey(at.key())), at.key(), at.value(), names);
        }
        return;
    }
    if (!value.isArray()) {
        fields.emplace_back(path, plainWords(field, value, names));
        return;
    }
    const QJsonArray list = value.toArray();
    if (field == QLatin1String("sets") || std::none_of(list.begin(), list.end(), [](const QJsonValue& one) { return one.isObject(); })) {
        QStringList all;
        for (const QJsonValue& one : list) {
            all.append(one.isObject() ? setWords(one.toObject()) : plainWords(field, one, names));
        }
        fields.emplace_back(path, all.join(QStringLiteral("; ")));
        return;
    }
    for (qsizetype i = 0; i < list.size(); ++i) {
        addFields(fields, below(rowName(list[i].toObject(), i)), {}, list[i], names);
    }
}

QString wordsIn(const Fields& fields, const QString& name)
{
    const auto at = std::find_if(fields.begin(), fields.end(), [&name](const auto& one) { return one.first == name; });
    return at == fields.end() ? QString() : at->second;
}

/// `Joaquin Ferro, back squat`.
QString subjectOf(const ConflictNames& names)
{
    return names.lift.isEmpty() ? names.client : names.client.isEmpty() ? names.lift : conflictText("%1, %2").arg(names.client, names.lift.toLower());
}

QString thingOf(ConflictAbout about)
{
    switch (about) {
    case ConflictAbout::Entry: return conflictText("What was done");
    case ConflictAbout::Report: return conflictText("How the session felt");
    case ConflictAbout::SessionState: return conflictText("What became of the session");
    case ConflictAbout::Booking: return conflictText("The booking");
    case ConflictAbout::Client: return conflictText("The client’s own data");
    case ConflictAbout::Profile: return conflictText("The profile");
    case ConflictAbout::HealthIntake: return conflictText("The health intake");
    case ConflictAbout::BodyMeasures: return conflictText("The measures");
    case ConflictAbout::MovementScreen: return conflictText("The movement screen");
    case ConflictAbout::FieldTests: return conflictText("The field tests");
    case ConflictAbout::StartingPlan: return conflictText("The starting plan");
    case ConflictAbout::Caution: return conflictText("The caution");
    case ConflictAbout::Planning: return conflictText("The wishes for the week");
    case ConflictAbout::CoachWork: return conflictText("The coach’s hours");
    case ConflictAbout::StudioWeek: return conflictText("The studio’s hours and places");
    case ConflictAbout::RestingLimits: return conflictText("The resting limits");
    case ConflictAbout::Plan: return conflictText("The plan");
    case ConflictAbout::Decision: return conflictText("The decision");
    case ConflictAbout::Choice: return conflictText("The lift");
    case ConflictAbout::SessionLifts: return conflictText("The session’s list of lifts");
    case ConflictAbout::Template: return conflictText("The template");
    }
    return {};
}

/// One sentence for whom, and that nothing is lost.
QString happenedTo(const Conflict& conflict)
{
    const bool isTakenAway = conflict.theirs.isEmpty();
    if (conflict.about == ConflictAbout::Choice) {
        return isTakenAway ? conflictText("%1 took an entry of it back. Your choice was made before that, and is not written yet.")
                           : conflictText("Last written by: %1. Your choice was made before that, and is not written yet.");
    }
    return isTakenAway ? conflictText("%1 took it away. Nothing of yours is written yet, and nothing is lost.")
                       : conflictText("Changed by: %1. Nothing of yours is written yet, and nothing is lost.");
}

QString byWhom(const Conflict& conflict)
{
    const QString who = conflict.coach.isEmpty() ? conflictText("Somebody else") : conflict.coach;
    const QDateTime at = QDateTime::fromString(conflict.atUtc, Qt::ISODate);
    return at.isValid() ? conflictText("%1, at %2").arg(who, at.toLocalTime().toString(QStringLiteral("HH:mm"))) : who;
}

}  // namespace

ConflictNames conflictNames(store::Database& database, const Conflict& conflict)
{
    ConflictNames names;
    if (const auto coaches = store::StudioReader(database).everybody()) {
        for (const clients::Coach& coach : *coaches) {
            names.coaches[coach.id] = qstring(coach.name);
        }
    }
    if (const auto clients = store::ClientReader(database).names()) {
        const auto at = std::find_if(clients->begin(), clients->end(), [&conflict](const auto& one) { return one.first == conflict.client; });
        names.client = at == clients->end() ? QString() : qstring(at->second);
    }
    names.lift = conflict.pattern ? patternName(*conflict.pattern) : QString();
    return names;
}

std::vector<VersionRow> versionRows(const Conflict& conflict, const ConflictNames& names)
{
    Fields yours;
    Fields theirs;
    addFields(yours, {}, {}, conflict.yours, names);
    addFields(theirs, {}, {}, conflict.theirs, names);
    std::vector<VersionRow> rows;
    for (const auto& [field, words] : yours) {
        if (const QString other = wordsIn(theirs, field); other != words) {
            rows.push_back({field, words, other});
        }
    }
    for (const auto& [field, words] : theirs) {
        if (std::none_of(yours.begin(), yours.end(), [&field = field](const auto& one) { return one.first == field; })) {
            rows.push_back({field, {}, words});
        }
    }
    return rows;
}

Question conflictQuestion(const Conflict& conflict, const ConflictNames& names)
{
    Question question;
    question.signal = Signal::Warn;
    const QString subject = subjectOf(names);
    question.headline = subject.isEmpty() ? conflictText("%1 was changed in the meantime.").arg(thingOf(conflict.about))
                                          : conflictText("%1 was changed in the meantime: %2.").arg(thingOf(conflict.about), subject);
    question.text = happenedTo(conflict).arg(byWhom(conflict));
    question.versions = versionRows(conflict, names);
    if (question.versions.empty()) {
        question.versions.push_back({thingOf(conflict.about), conflictText("as you have it"), conflictText("the same")});
    }
    question.answers = conflict.about == ConflictAbout::Choice ? QStringList{conflictText("Leave mine out"), conflictText("Write mine as well")}
                                                               : QStringList{conflictText("Keep theirs"), conflictText("Write mine")};
    if (store::bothOf(conflict)) {
        question.answers.append(conflictText("Keep both"));
    }
    question.safeAnswer = 0;
    return question;
}

ConflictChoice conflictChoice(int answer)
{
    return answer == 1 ? ConflictChoice::Yours : answer == 2 ? ConflictChoice::Both : ConflictChoice::Theirs;
}

}  // namespace chalk::ui::common
