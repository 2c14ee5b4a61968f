#include "ui/history/history_words.h"

#include "core/exchange/csv_rows.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QJsonArray>
#include <QJsonDocument>
#include <QLocale>

namespace chalk::ui::history {

namespace {

using store::ActKind;
using store::AuditWhat;

constexpr int kMostValue = 80;

QString historyText(const char* text)
{
    return QCoreApplication::translate("History", text);
}

HistoryTopic topicOfAct(ActKind kind)
{
    switch (kind) {
    case ActKind::Session:
    case ActKind::Report:
        return HistoryTopic::Sessions;
    case ActKind::Plan:
    case ActKind::Decide:
        return HistoryTopic::Planning;
    case ActKind::Import:
    case ActKind::Merge:
        return HistoryTopic::Files;
    case ActKind::Record:
    case ActKind::Release:
    case ActKind::Set:
    case ActKind::Swap:
    case ActKind::Correct:
    case ActKind::TakeBack:
    case ActKind::Undo:
    case ActKind::Redo:
    case ActKind::Test:
        break;
    }
    return HistoryTopic::Training;
}

HistoryTopic topicOfAudit(AuditWhat what)
{
    if (store::isHealth(what)) {
        return HistoryTopic::Health;
    }
    if (what <= AuditWhat::Profile || what == AuditWhat::ClientDiscarded || what == AuditWhat::ClientErased) {
        return HistoryTopic::Person;
    }
    if (what <= AuditWhat::LiftsStarted) {
        return HistoryTopic::Planning;
    }
    return what >= AuditWhat::StudioExported && what != AuditWhat::SignedIn ? HistoryTopic::Files : HistoryTopic::Studio;
}

QString nameOfAct(ActKind kind)
{
    switch (kind) {
    case ActKind::Import:
        return historyText(QT_TRANSLATE_NOOP("History", "Taken in from files"));
    case ActKind::Record:
        return historyText(QT_TRANSLATE_NOOP("History", "Recorded"));
    case ActKind::Release:
        return historyText(QT_TRANSLATE_NOOP("History", "Released from hold"));
    case ActKind::Set:
        return historyText(QT_TRANSLATE_NOOP("History", "Set by the coach"));
    case ActKind::Swap:
        return historyText(QT_TRANSLATE_NOOP("History", "Exercise swapped"));
    case ActKind::Correct:
        return historyText(QT_TRANSLATE_NOOP("History", "Entry corrected"));
    case ActKind::TakeBack:
        return historyText(QT_TRANSLATE_NOOP("History", "Entry taken back"));
    case ActKind::Session:
        return historyText(QT_TRANSLATE_NOOP("History", "Session changed"));
    case ActKind::Undo:
        return historyText(QT_TRANSLATE_NOOP("History", "Undone"));
    case ActKind::Redo:
        return historyText(QT_TRANSLATE_NOOP("History", "Done again"));
    case ActKind::Report:
        return historyText(QT_TRANSLATE_NOOP("History", "Said of a session"));
    case ActKind::Decide:
        return historyText(QT_TRANSLATE_NOOP("History", "Decided at the check-in"));
    case ActKind::Plan:
        return historyText(QT_TRANSLATE_NOOP("History", "Plan changed"));
    case ActKind::Test:
        return historyText(QT_TRANSLATE_NOOP("History", "Maximum tested"));
    case ActKind::Merge:
        return historyText(QT_TRANSLATE_NOOP("History", "Two records made one"));
    }
    return {};
}

QString nameOfAudit(AuditWhat what)
{
    switch (what) {
    case AuditWhat::ClientAdded:
        return historyText(QT_TRANSLATE_NOOP("History", "Client added"));
    case AuditWhat::ClientDetails:
        return historyText(QT_TRANSLATE_NOOP("History", "Client’s own details changed"));
    case AuditWhat::Profile:
        return historyText(QT_TRANSLATE_NOOP("History", "Profile changed"));
    case AuditWhat::HealthIntake:
        return historyText(QT_TRANSLATE_NOOP("History", "Health answers changed"));
    case AuditWhat::BodyMeasures:
        return historyText(QT_TRANSLATE_NOOP("History", "Measures written"));
    case AuditWhat::MovementScreen:
        return historyText(QT_TRANSLATE_NOOP("History", "Movement screen written"));
    case AuditWhat::FieldTests:
        return historyText(QT_TRANSLATE_NOOP("History", "Field tests written"));
    case AuditWhat::StartingPlan:
        return historyText(QT_TRANSLATE_NOOP("History", "Starting plan changed"));
    case AuditWhat::Clearance:
        return historyText(QT_TRANSLATE_NOOP("History", "Clearance changed"));
    case AuditWhat::Letter:
        return historyText(QT_TRANSLATE_NOOP("History", "Doctor’s letter put on file"));
    case AuditWhat::Cautions:
        return historyText(QT_TRANSLATE_NOOP("History", "Cautions changed"));
    case AuditWhat::Planning:
        return historyText(QT_TRANSLATE_NOOP("History", "Wishes for the week changed"));
    case AuditWhat::WeekQuota:
        return historyText(QT_TRANSLATE_NOOP("History", "Sessions of a week changed"));
    case AuditWhat::LiftsStarted:
        return historyText(QT_TRANSLATE_NOOP("History", "Lifts begun"));
    case AuditWhat::ClientDiscarded:
        return historyText(QT_TRANSLATE_NOOP("History", "New client given up"));
    case AuditWhat::ClientErased:
        return historyText(QT_TRANSLATE_NOOP("History", "Client erased"));
    case AuditWhat::StudioWeek:
        return historyText(QT_TRANSLATE_NOOP("History", "Studio’s week changed"));
    case AuditWhat::CoachWork:
        return historyText(QT_TRANSLATE_NOOP("History", "Coach’s hours changed"));
    case AuditWhat::Closures:
        return historyText(QT_TRANSLATE_NOOP("History", "Closures changed"));
    case AuditWhat::Templates:
        return historyText(QT_TRANSLATE_NOOP("History", "Templates changed"));
    case AuditWhat::RestingLimits:
        return historyText(QT_TRANSLATE_NOOP("History", "Limits for resting readings changed"));
    case AuditWhat::StudioExported:
        return historyText(QT_TRANSLATE_NOOP("History", "Studio written as open files"));
    case AuditWhat::ClientExported:
        return historyText(QT_TRANSLATE_NOOP("History", "Client written as open files"));
    case AuditWhat::DossierMade:
        return historyText(QT_TRANSLATE_NOOP("History", "Dossier made"));
    case AuditWhat::StudioRestored:
        return historyText(QT_TRANSLATE_NOOP("History", "Backup restored"));
    case AuditWhat::SignedIn:
        return historyText(QT_TRANSLATE_NOOP("History", "Signed in"));
    }
    return {};
}

QString valueText(const QJsonValue& value)
{
    QString text = value.toVariant().toString();
    if (value.isObject()) {
        text = QString::fromUtf8(QJsonDocument(value.toObject()).toJson(QJsonDocument::Compact));
    } else if (value.isArray()) {
        text = QString::fromUtf8(QJsonDocument(value.toArray()).toJson(QJsonDocument::Compact));
    }
    return text.size() > kMostValue ? text.left(kMostValue - 1) + QChar(0x2026) : text;
}

/// `sessions_per_week` for people.
QString fieldText(const QString& field)
{
    return QString(field).replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString fieldValueText(const QJsonValue& value)
{
    if (value.isUndefined()) {
        return historyText(QT_TRANSLATE_NOOP("History", "nothing"));
    }
    return valueText(value);
}

QString changedText(const store::AuditRecord& record)
{
    if (store::isHealth(record.what)) {
        QStringList fields;
        for (const QJsonValue& field : record.after.value(QLatin1String("fields")).toArray()) {
            fields.append(fieldText(field.toString()));
        }
        return fields.join(QStringLiteral(", "));
    }
    QStringList keys = record.before.keys();
    for (const QString& key : record.after.keys()) {
        if (!keys.contains(key)) {
            keys.append(key);
        }
    }
    QStringList parts;
    for (const QString& key : keys) {
        const bool isMonday = record.what == AuditWhat::WeekQuota;
        const QString name = isMonday ? common::qstring(base::Date::fromDays(key.toInt()).toString()) : fieldText(key);
        const QString after = fieldValueText(record.after.value(key));
        parts.append(record.before.isEmpty() ? QStringLiteral("%1: %2").arg(name, after)
                                             : QStringLiteral("%1: %2 → %3").arg(name, fieldValueText(record.before.value(key)), after));
    }
    return parts.join(QStringLiteral("; "));
}

QString stateWord(sessions::SessionState state)
{
    return fieldText(common::qstring(sessions::keyOf(state)));
}

QString nameOfLift(const store::ToldLift& lift, const lifts::Catalogue& catalogue)
{
    const lifts::Exercise* exercise = catalogue.find(lift.exerciseKey);
    return exercise == nullptr ? common::patternName(lift.pattern) : common::qstring(exercise->name);
}

QStringList liftNames(const store::ChangeEntry& entry, const store::ActRecord& act, const lifts::Catalogue& catalogue)
{
    QStringList names;
    for (const store::ToldLift& lift : entry.lifts) {
        names.append(nameOfLift(lift, catalogue));
    }
    if (names.isEmpty()) {
        for (const lifts::Pattern pattern : act.patterns) {
            names.append(common::patternName(pattern));
        }
    }
    return names;
}

/// `3 × 8`, `8 reps`, `24 s`, `3 sets`; empty where neither was set.
QString setsAndReps(const store::HandSet& hand)
{
    const progression::CoachSet& set = hand.set;
    const lifts::Measure measure = hand.setup.kit.measure;
    if (!set.reps) {
        return !set.sets ? QString() : set.sets->value() == 1 ? historyText("1 set") : historyText("%1 sets").arg(set.sets->value());
    }
    const QString amount = common::amountText(*set.reps, measure, hand.setup.policy);
    if (set.sets) {
        return QStringLiteral("%1 × %2").arg(set.sets->value()).arg(amount);
    }
    return measure != lifts::Measure::Reps ? amount : set.reps->value() == 1 ? historyText("1 rep") : historyText("%1 reps").arg(amount);
}

/// `82.5 kg, 3 × 8, rest 2:30, Rep build; reason: back from a cold`: what a coach set by hand and why. Parts that were not given are left out.
QString handSetText(const store::HandSet& hand)
{
    const progression::CoachSet& set = hand.set;
    QStringList parts;
    if (set.load) {
        const progression::Kit& kit = hand.setup.kit;
        parts.append(common::loadText(*set.load, hand.setup.unit, kit.pieces, std::holds_alternative<lifts::BodyAdded>(kit.equipment)));
    }
    if (const QString amounts = setsAndReps(hand); !amounts.isEmpty()) {
        parts.append(amounts);
    }
    if (set.rest) {
        parts.append(historyText("rest %1").arg(common::restText(*set.rest)));
    }
    if (set.stage) {
        parts.append(common::stageName(*set.stage));
    }
    const QString what = parts.join(QStringLiteral(", "));
    const QString reason = set.reason.empty() ? QString() : historyText("reason: %1").arg(common::qstring(set.reason).simplified());
    return what.isEmpty() || reason.isEmpty() ? what + reason : QStringLiteral("%1; %2").arg(what, reason);
}

/// What was set by hand, with the lift's name before it where the entry is about several.
QStringList handSets(const store::ChangeEntry& entry, const lifts::Catalogue& catalogue)
{
    QStringList texts;
    for (const store::ToldLift& lift : entry.lifts) {
        for (const store::HandSet& set : lift.sets) {
            const QString text = handSetText(set);
            texts.append(entry.lifts.size() == 1 ? text : QStringLiteral("%1: %2").arg(nameOfLift(lift, catalogue), text));
        }
    }
    return texts;
}

QJsonObject historyJson(const store::ChangeEntry& entry, const lifts::Catalogue& catalogue)
{
    QJsonObject object{{QStringLiteral("at"), common::qstring(entry.atUtc)},
                       {QStringLiteral("who"), common::qstring(entry.coachName)},
                       {QStringLiteral("client"), common::qstring(entry.clientName)},
                       {QStringLiteral("title"), historyTitle(entry, catalogue)},
                       {QStringLiteral("detail"), historyDetail(entry, catalogue)}};
    if (const auto* act = std::get_if<store::ActRecord>(&entry.did)) {
        object.insert(QStringLiteral("act"), static_cast<qint64>(act->id.value()));
        object.insert(QStringLiteral("what"), common::qstring(store::keyOf(act->kind)));
        object.insert(QStringLiteral("taken_back"), act->isUndone);
    } else {
        const auto& record = std::get<store::AuditRecord>(entry.did);
        object.insert(QStringLiteral("what"), common::qstring(store::keyOf(record.what)));
        object.insert(QStringLiteral("before"), record.before);
        object.insert(QStringLiteral("after"), record.after);
    }
    return object;
}

}  // namespace

QString historyTopicName(HistoryTopic topic)
{
    switch (topic) {
    case HistoryTopic::Training:
        return historyText(QT_TRANSLATE_NOOP("History", "Training"));
    case HistoryTopic::Sessions:
        return historyText(QT_TRANSLATE_NOOP("History", "Sessions"));
    case HistoryTopic::Person:
        return historyText(QT_TRANSLATE_NOOP("History", "Profile and contact"));
    case HistoryTopic::Health:
        return historyText(QT_TRANSLATE_NOOP("History", "Health"));
    case HistoryTopic::Planning:
        return historyText(QT_TRANSLATE_NOOP("History", "Plans and decisions"));
    case HistoryTopic::Studio:
        return historyText(QT_TRANSLATE_NOOP("History", "Studio"));
    case HistoryTopic::Files:
        return historyText(QT_TRANSLATE_NOOP("History", "Files"));
    }
    return {};
}

HistoryTopic topicOf(const store::ChangeEntry& entry)
{
    const auto* act = std::get_if<store::ActRecord>(&entry.did);
    return act != nullptr ? topicOfAct(act->kind) : topicOfAudit(std::get<store::AuditRecord>(entry.did).what);
}

QString historyTitle(const store::ChangeEntry& entry, const lifts::Catalogue& catalogue)
{
    const auto* act = std::get_if<store::ActRecord>(&entry.did);
    if (act == nullptr) {
        return nameOfAudit(std::get<store::AuditRecord>(entry.did).what);
    }
    const QStringList lifts = liftNames(entry, *act, catalogue);
    const QString name = nameOfAct(act->kind);
    return lifts.isEmpty() ? name : QStringLiteral("%1: %2").arg(name, lifts.join(QStringLiteral(", ")));
}

QString historyDetail(const store::ChangeEntry& entry, const lifts::Catalogue& catalogue)
{
    const auto* act = std::get_if<store::ActRecord>(&entry.did);
    if (act == nullptr) {
        return changedText(std::get<store::AuditRecord>(entry.did));
    }
    QStringList parts = handSets(entry, catalogue);
    if (act->sessions == 1 && act->sessionState) {
        parts.append(historyText(QT_TRANSLATE_NOOP("History", "session is %1")).arg(stateWord(*act->sessionState)));
    } else if (act->sessions > 1) {
        parts.append(historyText(QT_TRANSLATE_NOOP("History", "%1 sessions")).arg(act->sessions));
    }
    if (act->isUndone) {
        parts.append(historyText(QT_TRANSLATE_NOOP("History", "taken back later")));
    }
    return parts.join(QStringLiteral("; "));
}

QString momentText(const std::string& atUtc)
{
    const QDateTime moment = QDateTime::fromString(common::qstring(atUtc), Qt::ISODate);
    return moment.isValid() ? QLocale(QLocale::English).toString(moment.toLocalTime(), QStringLiteral("d MMM yyyy, HH:mm")) : common::qstring(atUtc);
}

QString historyAuthor(const store::ChangeEntry& entry)
{
    return entry.coachName.empty() ? historyText(QT_TRANSLATE_NOOP("History", "nobody named")) : common::qstring(entry.coachName);
}

QByteArray historyCsvOf(const std::vector<store::ChangeEntry>& entries, const lifts::Catalogue& catalogue)
{
    QByteArray text = exchange::csvRow({"at_utc", "who", "client", "topic", "what", "detail"});
    for (const store::ChangeEntry& entry : entries) {
        text += exchange::csvRow({QByteArray::fromStdString(entry.atUtc), QByteArray::fromStdString(entry.coachName), QByteArray::fromStdString(entry.clientName),
                                     historyTopicName(topicOf(entry)).toUtf8(), historyTitle(entry, catalogue).toUtf8(), historyDetail(entry, catalogue).toUtf8()});
    }
    return text;
}

QByteArray historyJsonOf(const std::vector<store::ChangeEntry>& entries, const lifts::Catalogue& catalogue)
{
    QJsonArray list;
    for (const store::ChangeEntry& entry : entries) {
        list.append(historyJson(entry, catalogue));
    }
    return QJsonDocument(QJsonObject{{QStringLiteral("history"), list}}).toJson(QJsonDocument::Indented);
}

}  // namespace chalk::ui::history
