#include "core/exchange/client_json.h"
#include "core/exchange/equipment_json.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/plan_template_json.h"
#include "core/exchange/studio_json.h"
#include "core/exchange/studio_week_json.h"

#include <QJsonArray>

#include <algorithm>

namespace chalk::exchange {

namespace {

void writeWeek(LineWriter& writer, const StudioDocument& document)
{
    if (document.week != week::StudioWeek()) {
        writer.field("week", toJson(document.week));
    }
    std::vector<WrittenObject> items;
    for (const week::Closure& closure : document.closures) {
        items.push_back(inLine(toJson(closure, coachNamesOf(document.coaches))));
    }
    if (!items.empty()) {
        writer.list("closures", items);
    }
}

void writeErased(LineWriter& writer, const StudioDocument& document)
{
    if (document.erasedOn.empty()) {
        return;
    }
    const CoachNames names = coachNamesOf(document.coaches);
    QJsonArray days;
    for (const base::Date day : document.erasedOn) {
        days.append(textOf(day.toString()));
    }
    writer.field("erased_clients", days);
    std::vector<WrittenObject> items;
    for (const ErasedSession& session : document.erasedSessions) {
        items.push_back(inLine({{QStringLiteral("client"), session.client},
                                {QStringLiteral("coach"), textOf(names.textOf(session.coach))},
                                {QStringLiteral("date"), textOf(session.date.toString())},
                                {QStringLiteral("at"), textOf(sessions::clockText(session.startMinute))},
                                {QStringLiteral("minutes"), session.minutes},
                                {QStringLiteral("kind"), textOf(sessions::keyOf(session.kind))},
                                {QStringLiteral("state"), textOf(sessions::keyOf(session.state))}}));
    }
    if (!items.empty()) {
        writer.list("erased_sessions", items);
    }
}

}  // namespace

QString studioFileName()
{
    return QStringLiteral("studio.json");
}

/// Letters and digits of the name, all else a dash. Numbers are as wide as the last.
QString clientFileName(std::size_t number, std::size_t last, const std::string& clientName)
{
    const auto width = std::max(2, static_cast<int>(QString::number(last).size()));
    QString words;
    for (const QChar c : textOf(clientName).toLower()) {
        words += c.isLetterOrNumber() && c.unicode() < 128 ? c : QLatin1Char('-');
    }
    return QStringLiteral("clients/%1-%2.json").arg(number, width, 10, QLatin1Char('0')).arg(words.left(60));
}

WrittenObject writtenStudio(const StudioDocument& document)
{
    LineWriter writer;
    writer.field("format", kStudioFormat);
    writer.field("name", textOf(document.name));
    writer.field("today", textOf(document.today.toString()));
    std::vector<WrittenObject> items;
    for (const clients::Coach& coach : document.coaches) {
        QJsonObject object{{QStringLiteral("name"), textOf(coach.name)}};
        if (const auto work = document.coachWork.find(coach.id); work != document.coachWork.end()) {
            put(object, "work", toJson(work->second));
        }
        if (document.deskOnly.count(coach.id) > 0) {
            object.insert(QStringLiteral("is_coaching"), false);
        }
        items.push_back(inLine(object));
    }
    writer.list("coaches", items);
    items.clear();
    for (const StudioEquipment& item : document.equipment) {
        items.push_back(inLine({{QStringLiteral("key"), textOf(item.key)},
                                {QStringLiteral("name"), textOf(item.name)},
                                {QStringLiteral("kind"), textOf(lifts::keyOf(item.kind))},
                                {QStringLiteral("unit"), item.unit == base::MassUnit::Pound ? QStringLiteral("lb") : QStringLiteral("kg")},
                                {QStringLiteral("equipment"), toJson(item.equipment)}}));
    }
    writer.list("equipment", items);
    items.clear();
    for (const planning::PlanTemplate& plan : document.templates) {
        items.push_back(inLine(toJson(plan)));
    }
    if (!items.empty()) {
        writer.list("templates", items);
    }
    if (document.restingLimits != clients::RestingLimits()) {
        writer.field("resting_limits", QJsonObject{{QStringLiteral("heart_rate"), document.restingLimits.heartRate},
                                                   {QStringLiteral("systolic"), document.restingLimits.systolic},
                                                   {QStringLiteral("diastolic"), document.restingLimits.diastolic}});
    }
    writeWeek(writer, document);
    writeErased(writer, document);
    return writer.finishedFile();
}

StudioFiles writeStudio(const StudioDocument& document)
{
    StudioFiles files;
    files[studioFileName()] = writtenStudio(document).text;
    for (std::size_t i = 0; i < document.clients.size(); ++i) {
        files[clientFileName(i + 1, document.clients.size(), document.clients[i].client.name)] = writtenClient(document.clients[i], document).text;
    }
    return files;
}

}  // namespace chalk::exchange
