#include "core/exchange/lift_json.h"

#include "core/exchange/event_json.h"
#include "core/exchange/policy_json.h"
#include "core/exchange/studio_fields.h"
#include "core/progression/lift_machine.h"

#include <QJsonArray>

#include <algorithm>
#include <numeric>
#include <set>
#include <string_view>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using progression::Event;
using progression::Swap;

/// Reads one lift; the fault of its reader is that of the lift.
class LiftReading {
public:
    LiftReading(ObjectReader& reader, const LiftSurroundings& surroundings) : m_reader(reader), m_surroundings(surroundings)
    {
        for (const sessions::Session& session : surroundings.sessions) {
            m_codes.insert(session.code);
        }
    }

    DocumentLift read()
    {
        m_reader.allowOnly({"pattern", "exercise", "equipment", "region", "measure", "body_share", "pieces", "body_mass", "start_load", "stage",
                            "policy", "started", "events"});
        m_lift.pattern = wordAt(m_reader, "pattern", lifts::patternOf, "one of the eight patterns");
        m_lift.exerciseKey = exerciseAt(m_reader);
        readSetup();
        m_lift.startedOn = dayAt(m_reader, "started");
        if (m_lift.startedOn > m_surroundings.studio.today) {
            m_reader.fail("started", "lies after the studio's day");
        }
        if (m_reader.isSound()) {
            readEntries(m_reader.array("events"));
        }
        if (m_reader.isSound()) {
            judge();
        }
        return std::move(m_lift);
    }

private:
    [[nodiscard]] std::string placeOfEntry(std::size_t index) const { return fmt::format("{}[{}]", m_reader.pathOf("events"), index); }

    std::string exerciseAt(ObjectReader& reader)
    {
        std::string key = keyAt(reader, "exercise");
        const lifts::Exercise* exercise = m_surroundings.catalogue.find(key);
        if (exercise == nullptr) {
            reader.fail("exercise", "is not in the catalogue of lifts");
        } else if (exercise->pattern != m_lift.pattern) {
            reader.fail("exercise", "belongs to another pattern");
        }
        return key;
    }

    void readSetup()
    {
        m_lift.equipmentKey = keyAt(m_reader, "equipment");
        const auto& all = m_surroundings.studio.equipment;
        const auto item = std::find_if(all.begin(), all.end(), [this](const StudioEquipment& one) { return one.key == m_lift.equipmentKey; });
        if (item == all.end()) {
            m_reader.fail("equipment", "is not of the studio's equipment");
            return;
        }
        progression::LiftSetup& setup = m_lift.setup;
        setup.unit = item->unit;
        setup.region = wordAt(m_reader, "region", lifts::regionOf, "upper or lower");
        setup.kit = {item->equipment, base::Milli(m_reader.decimal("body_share", 3, 0, 1000)),
                     wordAt(m_reader, "measure", lifts::measureOf, "reps, seconds or metres"), {}, m_lift.exerciseKey, m_reader.wholeNumber("pieces", 1, 2)};
        setup.bodyMass = optionalMassAt(m_reader, "body_mass");
        if (const auto centi = m_reader.optionalDecimal("start_load", 2, -lifts::kMaxLoadCenti, lifts::kMaxLoadCenti)) {
            setup.kit.startLoad = base::Load::fromCenti(*centi);
        }
        setup.startStage = wordAt(m_reader, "stage", progression::stageOf, "pattern, control or base_load");
        setup.policy = taken(m_reader, readPolicy(m_reader.required("policy"), m_reader.pathOf("policy"), progression::Policy::defaultsFor(setup.unit)));
    }

    /// By date, because what a set is counted in depends on the swaps before it.
    void readEntries(const QJsonArray& array)
    {
        m_lift.events.resize(static_cast<std::size_t>(array.size()));
        lifts::Measure measure = m_lift.setup.kit.measure;
        for (const std::size_t i : taken(m_reader, orderByDate(array, m_reader.pathOf("events")))) {
            DocumentEvent entry = entryOf(array[static_cast<qsizetype>(i)], i, measure);
            if (!m_reader.isSound()) {
                return;
            }
            const auto* swap = std::get_if<Swap>(&entry.event.body);
            if (swap != nullptr && !entry.isTakenBack) {
                measure = swap->measure.value_or(measure);
            }
            m_lift.events[i] = std::move(entry);
        }
    }

    DocumentEvent entryOf(const QJsonValue& value, std::size_t index, lifts::Measure measure)
    {
        ObjectReader reader(value, placeOfEntry(index));
        DocumentEvent entry;
        entry.isTakenBack = reader.flag("taken_back", false);
        entry.sessionCode = reader.optionalText("session");
        if (entry.sessionCode && m_codes.count(*entry.sessionCode) == 0) {
            reader.fail("session", "is not the code of a session of this client");
        }
        QJsonObject event = value.toObject();
        for (const char* field : {"taken_back", "former", "session"}) {
            event.remove(QLatin1String(field));
        }
        if (reader.isSound()) {
            entry.event = taken(reader, eventOf(event, placeOfEntry(index), measure));
        }
        const QJsonArray former = reader.has("former") ? reader.array("former") : QJsonArray();
        for (qsizetype k = 0; k < former.size() && reader.isSound(); ++k) {
            entry.former.push_back(taken(reader, eventOf(former[k], fmt::format("{}[{}]", reader.pathOf("former"), k), measure)));
        }
        if (reader.fault()) {
            m_reader.take(*reader.fault());
        }
        return entry;
    }

    JsonResult<Event> eventOf(const QJsonValue& value, const std::string& place, lifts::Measure measure)
    {
        auto event = readEvent(value, place, measure, {true, false});
        if (event && event->date > m_surroundings.studio.today) {
            return jsonFault(place + ".date", "lies after the studio's day");
        }
        const auto* swap = event ? std::get_if<Swap>(&event->body) : nullptr;
        if (swap != nullptr && !swap->exerciseKey.empty()) {
            ObjectReader reader(value, place);
            exerciseAt(reader);
            if (reader.fault()) {
                return tl::make_unexpected(*reader.fault());
            }
        }
        return event;
    }

    void judge()
    {
        auto machine = progression::LiftMachine::create(m_lift.setup);
        if (!machine) {
            m_reader.take({m_reader.pathOf(machine.error().field.c_str()), machine.error().reason});
            return;
        }
        std::vector<std::size_t> order(m_lift.events.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(), [this](std::size_t a, std::size_t b) { return m_lift.events[a].event.date < m_lift.events[b].event.date; });
        for (const std::size_t i : order) {
            const DocumentEvent& entry = m_lift.events[i];
            if (entry.isTakenBack) {
                continue;
            }
            if (const auto fault = machine->faultOf(entry.event.body)) {
                m_reader.take({placeOfEntry(i) + "." + fault->field, fault->reason});
                return;
            }
            machine->apply(entry.event.date, entry.event.body);
        }
    }

    ObjectReader& m_reader;
    const LiftSurroundings& m_surroundings;
    std::set<std::string_view> m_codes;  ///< of the client's sessions
    DocumentLift m_lift;
};

}  // namespace

JsonResult<DocumentLift> readLift(const QJsonValue& value, const std::string& path, const LiftSurroundings& surroundings)
{
    ObjectReader reader(value, path);
    DocumentLift lift = LiftReading(reader, surroundings).read();
    return resultOf(reader, std::move(lift));
}

}  // namespace chalk::exchange
