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

QJsonObject historyJson(const store::ChangeEntry& entry)
{
    QJsonObject object{{QStringLiteral("at"), common::qstring(entry.atUtc)},
                       {QStringLiteral("who"), common::qstring(entry.coachName)},
                       {QStringLiteral("client"), common::qstring(entry.clientName)},
                       {QStringLiteral("title"), historyTitle(entry)},
                       {QStringLiteral("detail"), historyDetail(entry)}};
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

QString historyTitle(const store::ChangeEntry& entry)
{
    const auto* act = std::get_if<store::ActRecord>(&entry.did);
    if (act == nullptr) {
        return nameOfAudit(std::get<store::AuditRecord>(entry.did).what);
    }
    QStringList patterns;
    for (const lifts::Pattern pattern : act->patterns) {
        patterns.append(common::patternName(pattern));
    }
    const QString name = nameOfAct(act->kind);
    return patterns.isEmpty() ? name : QStringLiteral("%1: %2").arg(name, patterns.join(QStringLiteral(", ")));
}

QString historyDetail(const store::ChangeEntry& entry)
{
    const auto* act = std::get_if<store::ActRecord>(&entry.did);
    if (act == nullptr) {
        return changedText(std::get<store::AuditRecord>(entry.did));
    }
    QStringList parts;
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

QByteArray historyCsvOf(const std::vector<store::ChangeEntry>& entries)
{
    QByteArray text = exchange::csvRow({"at_utc", "who", "client", "topic", "what", "detail"});
    for (const store::ChangeEntry& entry : entries) {
        text += exchange::csvRow({QByteArray::fromStdString(entry.atUtc), QByteArray::fromStdString(entry.coachName), QByteArray::fromStdString(entry.clientName),
                                     historyTopicName(topicOf(entry)).toUtf8(), historyTitle(entry).toUtf8(), historyDetail(entry).toUtf8()});
    }
    return text;
}

QByteArray historyJsonOf(const std::vector<store::ChangeEntry>& entries)
{
    QJsonArray list;
    for (const store::ChangeEntry& entry : entries) {
        list.append(historyJson(entry));
    }
    return QJsonDocument(QJsonObject{{QStringLiteral("history"), list}}).toJson(QJsonDocument::Indented);
}

}  // namespace chalk::ui::history
