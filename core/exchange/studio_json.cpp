#include "core/exchange/studio_json.h"

#include "core/exchange/client_json.h"
#include "core/exchange/equipment_json.h"
#include "core/exchange/json_text.h"
#include "core/exchange/plan_template_json.h"
#include "core/exchange/studio_fields.h"
#include "core/exchange/studio_week_json.h"

#include <QJsonArray>

#include <set>

namespace chalk::exchange {

namespace {

/// The value of a file's text, sound JSON without repeated fields.
StudioResult<QJsonValue> parsedFile(const QString& name, const QByteArray& text)
{
    return parseJsonText(text).map_error([&](const JsonTextFault& fault) {
        return StudioFault{name, placeAt(text, fault.offset), {fault.field, fault.reason}};
    });
}

/// What `read` makes of a file; a fault is given its place in the text.
template <class Read>
auto readFile(const QString& name, const QByteArray& text, Read&& read)
{
    using Value = typename std::decay_t<decltype(read(QJsonValue()))>::value_type;
    return parsedFile(name, text).and_then([&](const QJsonValue& value) -> StudioResult<Value> {
        return read(value).map_error([&](const JsonFault& fault) { return StudioFault{name, placeOf(text, fault.field), fault}; });
    });
}

StudioEquipment readItem(ObjectReader& reader, std::set<std::string>& keys)
{
    reader.allowOnly({"key", "name", "kind", "unit", "equipment"});
    StudioEquipment item{keyAt(reader, "key"), labelAt(reader, "name"), {}, unitAt(reader), {}};
    item.kind = wordAt(reader, "kind", lifts::equipmentKindOf, "a kind of equipment: barbell, trap_bar, dumbbell, dumbbell_pair, kettlebell, "
                                                               "kettlebell_pair, bag, stack, added_to_body or none");
    item.equipment = taken(reader, readEquipment(reader.required("equipment"), reader.pathOf("equipment")));
    if (reader.isSound() && !keys.insert(item.key).second) {
        reader.fail("key", "is that of other equipment already");
    }
    return item;
}

void readFormat(ObjectReader& reader)
{
    const int format = reader.wholeNumber("format", 1, 9999);
    if (reader.isSound() && format > kStudioFormat) {
        reader.fail("format", fmt::format("is {}: written by a newer program; this one reads format {}", format, kStudioFormat));
    }
}

void readTemplates(ObjectReader& reader, const lifts::Catalogue& catalogue, StudioDocument& document)
{
    const QJsonArray array = reader.has("templates") ? reader.array("templates") : QJsonArray();
    std::set<std::string> names;
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        const std::string place = fmt::format("templates[{}]", i);
        document.templates.push_back(taken(reader, readPlanTemplate(array[i], place, catalogue)));
        if (reader.isSound() && !names.insert(document.templates.back().name).second) {
            reader.take({place + ".name", "is that of another template already"});
        }
    }
}

void readRestingLimits(ObjectReader& reader, StudioDocument& document)
{
    if (!reader.has("resting_limits")) {
        return;
    }
    ObjectReader item(reader.required("resting_limits"), "resting_limits");
    item.allowOnly({"heart_rate", "systolic", "diastolic"});
    document.restingLimits = {item.wholeNumber("heart_rate", 0, 1000), item.wholeNumber("systolic", 0, 1000), item.wholeNumber("diastolic", 0, 1000)};
    const auto faulty = clients::faultyLimitOf(document.restingLimits);
    if (item.isSound() && faulty) {
        item.fail(*faulty, "is out of its range");
    }
    if (item.fault()) {
        reader.take(*item.fault());
    }
}

void readWeek(ObjectReader& reader, StudioDocument& document)
{
    if (reader.has("week")) {
        document.week = taken(reader, readStudioWeek(reader.required("week"), "week"));
    }
    if (!reader.has("closures")) {
        return;
    }
    const CoachNames names = coachNamesOf(document.coaches);
    const QJsonArray closures = reader.array("closures");
    for (qsizetype i = 0; i < closures.size() && reader.isSound(); ++i) {
        document.closures.push_back(taken(reader, readClosure(closures[i], fmt::format("closures[{}]", i), names)));
    }
}

ErasedSession readErasedSession(ObjectReader& item, const StudioDocument& document)
{
    item.allowOnly({"client", "coach", "date", "at", "minutes", "kind", "state"});
    ErasedSession session;
    session.client = item.wholeNumber("client", 1, std::max(1, static_cast<int>(document.erasedOn.size())));
    session.coach = wordAt(item, "coach", [names = coachNamesOf(document.coaches)](const std::string& name) { return names.idOf(name); },
                           "one of the studio's coaches");
    session.date = dayAt(item, "date");
    session.startMinute = wordAt(item, "at", sessions::parseClock, "a time, HH:MM");
    session.minutes = item.wholeNumber("minutes", 5, 480);
    session.kind = wordAt(item, "kind", sessions::sessionKindOf, "a kind of session");
    session.state = wordAt(item, "state", sessions::sessionStateOf, "what became of a session");
    return session;
}

void readErased(ObjectReader& reader, StudioDocument& document)
{
    if (!reader.has("erased_clients")) {
        return;
    }
    const QJsonArray days = reader.array("erased_clients");
    for (qsizetype i = 0; i < days.size() && reader.isSound(); ++i) {
        const auto day = base::Date::parse(days[i].toString().toStdString());
        if (!day) {
            reader.take({fmt::format("erased_clients[{}]", i), "must be a day, YYYY-MM-DD"});
            return;
        }
        document.erasedOn.push_back(*day);
    }
    if (reader.has("erased_sessions")) {
        eachOf(reader, "erased_sessions", [&document](ObjectReader& item) { document.erasedSessions.push_back(readErasedSession(item, document)); });
    }
}

}  // namespace

JsonResult<StudioDocument> readStudioHeader(const QJsonValue& value, const lifts::Catalogue& catalogue)
{
    ObjectReader reader(value, {});
    StudioDocument document;
    readFormat(reader);
    reader.allowOnly({"format", "name", "today", "coaches", "equipment", "templates", "resting_limits", "week", "closures", "erased_clients",
                      "erased_sessions"});
    document.name = labelAt(reader, "name");
    document.today = dayAt(reader, "today");
    std::set<std::string> names;
    eachOf(reader, "coaches", [&document, &names](ObjectReader& item) {
        item.allowOnly({"name", "work", "is_coaching"});
        document.coaches.push_back({base::CoachId(static_cast<std::int64_t>(document.coaches.size()) + 1), labelAt(item, "name")});
        if (!names.insert(document.coaches.back().name).second) {
            item.fail("name", "is that of another coach already");
        }
        if (item.has("work")) {
            document.coachWork[document.coaches.back().id] = taken(item, readCoachWork(item.required("work"), item.pathOf("work")));
        }
        if (!item.flag("is_coaching", true)) {
            document.deskOnly.insert(document.coaches.back().id);
        }
    });
    std::set<std::string> keys;
    eachOf(reader, "equipment", [&document, &keys](ObjectReader& item) { document.equipment.push_back(readItem(item, keys)); });
    readTemplates(reader, catalogue, document);
    readRestingLimits(reader, document);
    readWeek(reader, document);
    readErased(reader, document);
    return resultOf(reader, std::move(document));
}

StudioResult<StudioDocument> readStudioFile(const QByteArray& text, const lifts::Catalogue& catalogue)
{
    return readFile(studioFileName(), text, [&](const QJsonValue& value) { return readStudioHeader(value, catalogue); });
}

StudioResult<DocumentClient> readClientFile(const QString& name, const QByteArray& text, const StudioDocument& studio, const lifts::Catalogue& catalogue,
                                            std::set<std::string>& codes)
{
    return readFile(name, text, [&](const QJsonValue& value) { return readClient(value, studio, catalogue, codes); });
}

QString StudioFault::message() const
{
    QString text = file;
    if (place) {
        text += QStringLiteral(", line %1, column %2").arg(place->line).arg(place->column);
    }
    text += QStringLiteral(": ");
    if (!fault.field.empty()) {
        text += QString::fromStdString(fault.field) + QLatin1Char(' ');
    }
    return text + QString::fromStdString(fault.reason);
}

StudioResult<StudioDocument> readStudio(const StudioFiles& files, const lifts::Catalogue& catalogue)
{
    const auto header = files.find(studioFileName());
    if (header == files.end()) {
        return tl::make_unexpected(StudioFault{studioFileName(), {}, {{}, "is missing"}});
    }
    auto document = readStudioFile(header->second, catalogue);
    std::set<std::string> codes;
    for (const auto& [name, text] : files) {
        if (!document || name == studioFileName()) {
            continue;
        }
        auto client = readClientFile(name, text, *document, catalogue, codes);
        if (!client) {
            return tl::make_unexpected(client.error());
        }
        client->client.id = base::ClientId(static_cast<std::int64_t>(document->clients.size()) + 1);
        document->clients.push_back(*std::move(client));
    }
    return document;
}

}  // namespace chalk::exchange
