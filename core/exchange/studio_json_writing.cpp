#include "core/exchange/equipment_json.h"
#include "core/exchange/event_json.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/policy_json.h"
#include "core/exchange/studio_json.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace chalk::exchange {

namespace {

void putDate(QJsonObject& object, const char* field, const std::optional<base::Date>& date)
{
    if (date) {
        put(object, field, QJsonValue(textOf(date->toString())));
    }
}

QString unitText(base::MassUnit unit)
{
    return unit == base::MassUnit::Pound ? QStringLiteral("lb") : QStringLiteral("kg");
}

std::string coachName(const StudioDocument& document, base::CoachId id)
{
    for (const clients::Coach& coach : document.coaches) {
        if (coach.id == id) {
            return coach.name;
        }
    }
    return {};
}

QByteArray line(const QJsonObject& object)
{
    return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

/// A JSON object with one line for each item of its lists, so that versions of a file can be compared by line.
class LineWriter {
public:
    void field(const char* name, const QJsonValue& value)
    {
        QByteArray one = line({{QLatin1String(name), value}});
        begin() += one.mid(1, one.size() - 2);
    }
    void list(const char* name, const std::vector<QByteArray>& items)
    {
        begin() += QByteArray("\"") + name + "\": [";
        for (std::size_t i = 0; i < items.size(); ++i) {
            m_text += (i == 0 ? "\n  " : ",\n  ") + items[i];
        }
        m_text += items.empty() ? "]" : "\n ]";
    }
    [[nodiscard]] QByteArray finished() const { return "{" + m_text + "\n}\n"; }

private:
    QByteArray& begin()
    {
        m_text += m_text.isEmpty() ? "\n " : ",\n ";
        return m_text;
    }
    QByteArray m_text;
};

QByteArray written(const clients::Caution& caution)
{
    QJsonArray tags;
    for (const lifts::CautionTag tag : caution.tags) {
        tags.append(textOf(lifts::keyOf(tag)));
    }
    QJsonObject object;
    put(object, "body_part", textOf(caution.bodyPart));
    put(object, "text", textOf(caution.text));
    put(object, "short", textOf(caution.shortText));
    put(object, "tags", tags);
    putDate(object, "until", caution.until);
    return line(object);
}

QJsonObject written(const clients::Clearance& clearance)
{
    QJsonObject object;
    put(object, "state", textOf(clients::keyOf(clearance.state)));
    put(object, "reason", textOf(clearance.reason));
    putDate(object, "asked", clearance.askedOn);
    putDate(object, "granted", clearance.grantedOn);
    putDate(object, "valid_until", clearance.validUntil);
    put(object, "limits", textOf(clearance.limits));
    return object;
}

QByteArray written(const sessions::Session& session, const StudioDocument& document)
{
    QJsonObject object;
    put(object, "code", textOf(session.code));
    putDate(object, "date", std::optional(session.date));
    put(object, "at", textOf(sessions::clockText(session.startMinute)));
    put(object, "minutes", session.minutes);
    put(object, "coach", textOf(coachName(document, session.coach)));
    put(object, "place", textOf(session.place));
    put(object, "places", session.placeCapacity);
    put(object, "kind", textOf(sessions::keyOf(session.kind)));
    put(object, "state", textOf(sessions::keyOf(session.state)));
    return line(object);
}

QByteArray written(const DocumentLift& lift)
{
    LineWriter writer;
    writer.field("pattern", textOf(lifts::keyOf(lift.pattern)));
    writer.field("exercise", textOf(lift.exerciseKey));
    writer.field("equipment", textOf(lift.equipmentKey));
    writer.field("region", textOf(lifts::keyOf(lift.setup.region)));
    writer.field("measure", textOf(lifts::keyOf(lift.setup.kit.measure)));
    writer.field("body_share", lift.setup.kit.bodyShare.value() / 1000.0);
    writer.field("pieces", lift.setup.kit.pieces);
    if (lift.setup.bodyMass) {
        writer.field("body_mass", numberOf(*lift.setup.bodyMass));
    }
    if (lift.setup.kit.startLoad) {
        writer.field("start_load", numberOf(*lift.setup.kit.startLoad));
    }
    writer.field("stage", textOf(progression::keyOf(lift.setup.startStage)));
    writer.field("policy", differences(lift.setup.policy, progression::Policy::defaultsFor(lift.setup.unit)));
    writer.field("started", textOf(lift.startedOn.toString()));
    std::vector<QByteArray> events;
    lifts::Measure measure = lift.setup.kit.measure;
    for (const DocumentEvent& entry : lift.events) {
        QJsonObject object = toJson(entry.event, measure);
        if (entry.sessionCode) {
            put(object, "session", textOf(*entry.sessionCode));
        }
        events.push_back(line(object));
        if (const auto* swap = std::get_if<progression::Swap>(&entry.event.body)) {
            measure = swap->measure.value_or(measure);
        }
    }
    writer.list("events", events);
    return writer.finished().trimmed();
}

QByteArray written(const DocumentClient& client, const StudioDocument& document)
{
    const clients::Client& who = client.client;
    LineWriter writer;
    writer.field("name", textOf(who.name));
    if (who.birthDate) {
        writer.field("born", textOf(who.birthDate->toString()));
    }
    writer.field("goal", textOf(who.goal));
    writer.field("coach", textOf(coachName(document, who.coach)));
    writer.field("unit", unitText(who.unit));
    if (who.bodyMass) {
        writer.field("body_mass", numberOf(*who.bodyMass));
    }
    writer.field("started", textOf(who.startedOn.toString()));
    writer.field("sessions_per_week", who.sessionsPerWeek);
    if (who.awayUntil) {
        writer.field("away_until", textOf(who.awayUntil->toString()));
    }
    writer.field("clearance", written(client.clearance));
    std::vector<QByteArray> items;
    for (const clients::Caution& caution : client.cautions) {
        items.push_back(written(caution));
    }
    writer.list("cautions", items);
    items.clear();
    for (const sessions::Session& session : client.sessions) {
        items.push_back(written(session, document));
    }
    writer.list("sessions", items);
    items.clear();
    for (const DocumentLift& lift : client.lifts) {
        items.push_back(written(lift));
    }
    writer.list("lifts", items);
    return writer.finished();
}

/// `01-joaquin-ferro`: letters and digits of the name, all else a dash.
QString fileNameOf(std::size_t number, const std::string& name)
{
    QString words;
    for (const QChar c : QString::fromStdString(name).toLower()) {
        words += c.isLetterOrNumber() && c.unicode() < 128 ? c : QLatin1Char('-');
    }
    return QStringLiteral("clients/%1-%2.json").arg(number, 2, 10, QLatin1Char('0')).arg(words);
}

}  // namespace

StudioFiles writeStudio(const StudioDocument& document)
{
    StudioFiles files;
    LineWriter studio;
    studio.field("name", textOf(document.name));
    studio.field("today", textOf(document.today.toString()));
    std::vector<QByteArray> items;
    for (const clients::Coach& coach : document.coaches) {
        items.push_back(line({{QStringLiteral("name"), textOf(coach.name)}}));
    }
    studio.list("coaches", items);
    items.clear();
    for (const StudioEquipment& item : document.equipment) {
        items.push_back(line({{QStringLiteral("key"), textOf(item.key)},
                              {QStringLiteral("name"), textOf(item.name)},
                              {QStringLiteral("kind"), textOf(lifts::keyOf(item.kind))},
                              {QStringLiteral("unit"), unitText(item.unit)},
                              {QStringLiteral("equipment"), toJson(item.equipment)}}));
    }
    studio.list("equipment", items);
    files[QStringLiteral("studio.json")] = studio.finished();
    for (std::size_t i = 0; i < document.clients.size(); ++i) {
        files[fileNameOf(i + 1, document.clients[i].client.name)] = written(document.clients[i], document);
    }
    return files;
}

}  // namespace chalk::exchange
