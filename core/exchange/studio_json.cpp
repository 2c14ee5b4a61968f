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

const QString& headerName()
{
    static const QString name = QStringLiteral("studio.json");
    return name;
}

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

JsonResult<StudioDocument> readHeader(const QJsonValue& value, const lifts::Catalogue& catalogue)
{
    ObjectReader reader(value, {});
    StudioDocument document;
    readFormat(reader);
    reader.allowOnly({"format", "name", "today", "coaches", "equipment", "templates", "resting_limits", "week", "closures"});
    document.name = labelAt(reader, "name");
    document.today = dayAt(reader, "today");
    std::set<std::string> names;
    eachOf(reader, "coaches", [&document, &names](ObjectReader& item) {
        item.allowOnly({"name", "work"});
        document.coaches.push_back({base::CoachId(static_cast<std::int64_t>(document.coaches.size()) + 1), labelAt(item, "name")});
        if (!names.insert(document.coaches.back().name).second) {
            item.fail("name", "is that of another coach already");
        }
        if (item.has("work")) {
            document.coachWork[document.coaches.back().id] = taken(item, readCoachWork(item.required("work"), item.pathOf("work")));
        }
    });
    std::set<std::string> keys;
    eachOf(reader, "equipment", [&document, &keys](ObjectReader& item) { document.equipment.push_back(readItem(item, keys)); });
    readTemplates(reader, catalogue, document);
    readRestingLimits(reader, document);
    readWeek(reader, document);
    return resultOf(reader, std::move(document));
}

}  // namespace

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
    const auto header = files.find(headerName());
    if (header == files.end()) {
        return tl::make_unexpected(StudioFault{headerName(), {}, {{}, "is missing"}});
    }
    auto document = readFile(headerName(), header->second, [&](const QJsonValue& value) { return readHeader(value, catalogue); });
    std::set<std::string> codes;
    for (const auto& [name, text] : files) {
        if (!document || name == headerName()) {
            continue;
        }
        auto client = readFile(name, text, [&](const QJsonValue& value) { return readClient(value, *document, catalogue, codes); });
        if (!client) {
            return tl::make_unexpected(client.error());
        }
        client->client.id = base::ClientId(static_cast<std::int64_t>(document->clients.size()) + 1);
        document->clients.push_back(*std::move(client));
    }
    return document;
}

}  // namespace chalk::exchange
