#include "core/exchange/studio_json.h"

#include "core/exchange/equipment_json.h"
#include "core/exchange/event_json.h"
#include "core/exchange/policy_json.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>
#include <set>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

base::Date dateAt(ObjectReader& reader, const char* field)
{
    const auto date = base::Date::parse(reader.text(field));
    if (!date) {
        reader.fail(field, "must be a day, YYYY-MM-DD");
    }
    return date.value_or(base::Date());
}

std::optional<base::Date> optionalDateAt(ObjectReader& reader, const char* field)
{
    return reader.has(field) ? std::optional(dateAt(reader, field)) : std::nullopt;
}

/// A text that may be empty.
std::string anyTextAt(ObjectReader& reader, const char* field)
{
    if (!reader.required(field).isString()) {
        reader.fail(field, "must be a text");
    }
    return reader.optional(field).toString().toStdString();
}

template <class Find>
auto wordAt(ObjectReader& reader, const char* field, Find&& find)
{
    const auto value = find(reader.text(field));
    if (!value) {
        reader.fail(field, "is a word that is not known here");
    }
    return value.value_or(typename std::decay_t<decltype(value)>::value_type{});
}

base::MassUnit unitAt(ObjectReader& reader)
{
    const std::string unit = reader.text("unit");
    if (unit != "kg" && unit != "lb") {
        reader.fail("unit", "must be kg or lb");
    }
    return unit == "lb" ? base::MassUnit::Pound : base::MassUnit::Kilogram;
}

template <class T>
T taken(ObjectReader& reader, JsonResult<T> result)
{
    if (!result) {
        reader.take(result.error());
        return T{};
    }
    return *std::move(result);
}

/// Reads every item of a list.
template <class Read>
void eachOf(ObjectReader& reader, const char* field, Read&& read)
{
    const QJsonArray array = reader.array(field);
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        ObjectReader item(array[i], fmt::format("{}[{}]", reader.pathOf(field), i));
        read(item);
        if (item.fault()) {
            reader.take(*item.fault());
        }
    }
}

/// Reads the files of clients against the studio that they belong to.
class ClientReading {
public:
    explicit ClientReading(const StudioDocument& studio) : m_studio(studio) {}

    DocumentClient read(ObjectReader& reader)
    {
        reader.allowOnly({"name", "born", "goal", "coach", "unit", "body_mass", "started", "sessions_per_week", "away_until", "clearance", "cautions",
                          "sessions", "lifts"});
        DocumentClient client;
        readProfile(reader, client.client);
        readClearance(reader, client.clearance);
        eachOf(reader, "cautions", [&client](ObjectReader& item) { client.cautions.push_back(readCaution(item)); });
        eachOf(reader, "sessions", [this, &client](ObjectReader& item) { client.sessions.push_back(readSession(item)); });
        eachOf(reader, "lifts", [this, &client](ObjectReader& item) { client.lifts.push_back(readLift(item, client)); });
        return client;
    }

private:
    void readProfile(ObjectReader& reader, clients::Client& client)
    {
        client.name = reader.text("name");
        client.birthDate = optionalDateAt(reader, "born");
        client.goal = anyTextAt(reader, "goal");
        client.coach = coachAt(reader);
        client.unit = unitAt(reader);
        if (const auto centi = reader.optionalDecimal("body_mass", 2, 1, lifts::kMaxLoadCenti)) {
            client.bodyMass = base::Load::fromCenti(*centi);
        }
        client.startedOn = dateAt(reader, "started");
        client.sessionsPerWeek = reader.wholeNumber("sessions_per_week", 1, 7);
        client.awayUntil = optionalDateAt(reader, "away_until");
    }

    static void readClearance(ObjectReader& reader, clients::Clearance& clearance)
    {
        ObjectReader item(reader.required("clearance"), reader.pathOf("clearance"));
        item.allowOnly({"state", "reason", "asked", "granted", "valid_until", "limits"});
        clearance.state = wordAt(item, "state", clients::clearanceStateOf);
        clearance.reason = anyTextAt(item, "reason");
        clearance.askedOn = optionalDateAt(item, "asked");
        clearance.grantedOn = optionalDateAt(item, "granted");
        clearance.validUntil = optionalDateAt(item, "valid_until");
        clearance.limits = anyTextAt(item, "limits");
        if (item.fault()) {
            reader.take(*item.fault());
        }
    }

    static clients::Caution readCaution(ObjectReader& reader)
    {
        reader.allowOnly({"body_part", "text", "short", "tags", "until"});
        clients::Caution caution{{}, reader.text("body_part"), reader.text("text"), reader.text("short"), {}, optionalDateAt(reader, "until")};
        for (const QJsonValue& value : reader.array("tags")) {
            if (const auto tag = lifts::cautionTagOf(value.toString().toStdString())) {
                caution.tags.push_back(*tag);
            } else {
                reader.fail("tags", "names a caution that is not known here");
            }
        }
        return caution;
    }

    sessions::Session readSession(ObjectReader& reader)
    {
        reader.allowOnly({"code", "date", "at", "minutes", "coach", "place", "places", "kind", "state"});
        sessions::Session session;
        session.code = reader.text("code");
        if (!m_codes.insert(session.code).second) {
            reader.fail("code", "is that of another session already");
        }
        session.date = dateAt(reader, "date");
        session.startMinute = wordAt(reader, "at", sessions::parseClock);
        session.minutes = reader.wholeNumber("minutes", 5, 480);
        session.coach = coachAt(reader);
        session.place = anyTextAt(reader, "place");
        session.placeCapacity = reader.wholeNumber("places", 1, 100);
        session.kind = wordAt(reader, "kind", sessions::sessionKindOf);
        session.state = wordAt(reader, "state", sessions::sessionStateOf);
        return session;
    }

    DocumentLift readLift(ObjectReader& reader, const DocumentClient& client)
    {
        reader.allowOnly({"pattern", "exercise", "equipment", "region", "measure", "body_share", "pieces", "body_mass", "start_load", "stage", "policy",
                          "started", "events"});
        DocumentLift lift;
        lift.pattern = wordAt(reader, "pattern", lifts::patternOf);
        lift.exerciseKey = reader.text("exercise");
        lift.equipmentKey = reader.text("equipment");
        readSetup(reader, lift);
        lift.startedOn = dateAt(reader, "started");
        const QJsonArray array = reader.array("events");
        auto events = taken(reader, readEvents(array, reader.pathOf("events"), lift.setup.kit.measure, {true, true}));
        for (std::size_t i = 0; i < events.size(); ++i) {
            lift.events.push_back({std::move(events[i]), sessionCodeOf(reader, array[static_cast<qsizetype>(i)], i, client)});
        }
        return lift;
    }

    void readSetup(ObjectReader& reader, DocumentLift& lift)
    {
        const auto item = std::find_if(m_studio.equipment.begin(), m_studio.equipment.end(),
                                       [&lift](const StudioEquipment& one) { return one.key == lift.equipmentKey; });
        if (item == m_studio.equipment.end()) {
            reader.fail("equipment", "is not of the studio's equipment");
            return;
        }
        progression::LiftSetup& setup = lift.setup;
        setup.unit = item->unit;
        setup.region = wordAt(reader, "region", lifts::regionOf);
        setup.kit = {item->equipment, base::Milli(reader.decimal("body_share", 3, 0, 1000)), wordAt(reader, "measure", lifts::measureOf), {},
                     lift.exerciseKey, reader.wholeNumber("pieces", 1, 2)};
        if (const auto centi = reader.optionalDecimal("body_mass", 2, 1, lifts::kMaxLoadCenti)) {
            setup.bodyMass = base::Load::fromCenti(*centi);
        }
        if (const auto centi = reader.optionalDecimal("start_load", 2, -lifts::kMaxLoadCenti, lifts::kMaxLoadCenti)) {
            setup.kit.startLoad = base::Load::fromCenti(*centi);
        }
        setup.startStage = wordAt(reader, "stage", progression::stageOf);
        setup.policy = taken(reader, readPolicy(reader.required("policy"), reader.pathOf("policy"), progression::Policy::defaultsFor(setup.unit)));
    }

    static std::optional<std::string> sessionCodeOf(ObjectReader& reader, const QJsonValue& event, std::size_t index, const DocumentClient& client)
    {
        const QJsonValue value = event.toObject().value(QLatin1String("session"));
        if (value.isUndefined()) {
            return std::nullopt;
        }
        const std::string code = value.toString().toStdString();
        const bool isThere = std::any_of(client.sessions.begin(), client.sessions.end(), [&code](const auto& session) { return session.code == code; });
        if (!isThere) {
            reader.take({fmt::format("{}[{}].session", reader.pathOf("events"), index), "is not the code of a session of this client"});
        }
        return code;
    }

    base::CoachId coachAt(ObjectReader& reader)
    {
        const std::string name = reader.text("coach");
        for (const clients::Coach& coach : m_studio.coaches) {
            if (coach.name == name) {
                return coach.id;
            }
        }
        reader.fail("coach", "is not one of the studio's coaches");
        return {};
    }

    const StudioDocument& m_studio;
    std::set<std::string> m_codes;
};

/// Parses a file; a fault names line and column.
JsonResult<QJsonObject> parsedFile(const QByteArray& text)
{
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(text, &error);
    if (error.error != QJsonParseError::NoError) {
        const QByteArray before = text.left(error.offset);
        return jsonFault(fmt::format("line {}, column {}", before.count('\n') + 1, before.size() - before.lastIndexOf('\n')),
                         "is no JSON: " + error.errorString().toStdString());
    }
    return document.object();
}

void readHeader(ObjectReader& reader, StudioDocument& document)
{
    reader.allowOnly({"name", "today", "coaches", "equipment"});
    document.name = reader.text("name");
    document.today = dateAt(reader, "today");
    eachOf(reader, "coaches", [&document](ObjectReader& item) {
        item.allowOnly({"name"});
        document.coaches.push_back({base::CoachId(static_cast<std::int64_t>(document.coaches.size()) + 1), item.text("name")});
    });
    eachOf(reader, "equipment", [&document](ObjectReader& item) {
        item.allowOnly({"key", "name", "kind", "unit", "equipment"});
        StudioEquipment one{item.text("key"), item.text("name"), wordAt(item, "kind", lifts::equipmentKindOf), unitAt(item),
                            taken(item, readEquipment(item.required("equipment"), item.pathOf("equipment")))};
        document.equipment.push_back(std::move(one));
    });
}

}  // namespace

QString StudioFault::message() const
{
    return QStringLiteral("%1: %2: %3").arg(file, QString::fromStdString(fault.field), QString::fromStdString(fault.reason));
}

tl::expected<StudioDocument, StudioFault> readStudio(const StudioFiles& files)
{
    const QString headerName = QStringLiteral("studio.json");
    const auto header = files.find(headerName);
    if (header == files.end()) {
        return tl::make_unexpected(StudioFault{headerName, {"file", "is missing"}});
    }
    StudioDocument document;
    const auto readFile = [](const QString& name, const QByteArray& text, auto&& read) -> std::optional<StudioFault> {
        const auto object = parsedFile(text);
        if (!object) {
            return StudioFault{name, object.error()};
        }
        ObjectReader reader(*object, {});
        read(reader);
        return reader.fault() ? std::optional(StudioFault{name, *reader.fault()}) : std::nullopt;
    };
    if (auto fault = readFile(headerName, header->second, [&document](ObjectReader& reader) { readHeader(reader, document); })) {
        return tl::make_unexpected(*std::move(fault));
    }
    ClientReading clients(document);
    std::vector<DocumentClient> read;
    for (const auto& [name, text] : files) {
        if (name == headerName) {
            continue;
        }
        if (auto fault = readFile(name, text, [&](ObjectReader& reader) { read.push_back(clients.read(reader)); })) {
            return tl::make_unexpected(*std::move(fault));
        }
        read.back().client.id = base::ClientId(static_cast<std::int64_t>(read.size()));
    }
    document.clients = std::move(read);
    return document;
}

StudioFiles studioFilesIn(const QString& folder)
{
    StudioFiles files;
    QStringList names{QStringLiteral("studio.json")};
    for (const QString& name : QDir(folder + QStringLiteral("/clients")).entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        names.append(QStringLiteral("clients/") + name);
    }
    for (const QString& name : names) {
        QFile file(folder + QLatin1Char('/') + name);
        if (file.open(QIODevice::ReadOnly)) {
            files[name] = file.readAll();
        }
    }
    return files;
}

}  // namespace chalk::exchange
