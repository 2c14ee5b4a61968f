#include "core/exchange/entry_fields.h"
#include "core/exchange/event_json.h"
#include "core/exchange/exposure_line.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/lift_json.h"
#include "core/exchange/policy_json.h"

#include <QJsonArray>

#include <algorithm>
#include <numeric>

namespace chalk::exchange {

namespace {

std::string lineOfEntry(const DocumentEvent& entry, lifts::Measure measure)
{
    return isPlainExposure(entry) ? exposureLine(entry, measure) : lineOf(toJson(entry, measure)).toStdString();
}

}  // namespace

std::vector<lifts::Measure> measuresOf(const DocumentLift& lift)
{
    std::vector<std::size_t> order(lift.events.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&lift](std::size_t a, std::size_t b) { return lift.events[a].event.date < lift.events[b].event.date; });
    std::vector<lifts::Measure> measures(lift.events.size(), lift.setup.kit.measure);
    lifts::Measure measure = lift.setup.kit.measure;
    for (const std::size_t i : order) {
        measures[i] = measure;
        const auto* swap = std::get_if<progression::Swap>(&lift.events[i].event.body);
        if (swap != nullptr && !lift.events[i].isTakenBack) {
            measure = swap->measure.value_or(measure);
        }
    }
    return measures;
}

QJsonObject toJson(const DocumentEvent& entry, lifts::Measure measure)
{
    QJsonObject object = toJson(entry.event, measure);
    if (entry.sessionCode) {
        put(object, "session", textOf(*entry.sessionCode));
    }
    if (entry.isTakenBack) {
        put(object, "taken_back", true);
    }
    if (!entry.former.empty()) {
        QJsonArray former;
        for (const progression::Event& version : entry.former) {
            former.append(toJson(version, measure));
        }
        put(object, "former", former);
    }
    return object;
}

WrittenObject writtenLift(const DocumentLift& lift, int depth)
{
    const progression::LiftSetup& setup = lift.setup;
    LineWriter writer(depth);
    writer.field("pattern", textOf(lifts::keyOf(lift.pattern)));
    writer.field("exercise", textOf(lift.exerciseKey));
    writer.field("equipment", textOf(lift.equipmentKey));
    writer.field("region", textOf(lifts::keyOf(setup.region)));
    writer.field("measure", textOf(lifts::keyOf(setup.kit.measure)));
    writer.field("body_share", setup.kit.bodyShare.value() / 1000.0);
    writer.field("pieces", setup.kit.pieces);
    if (setup.bodyMass) {
        writer.field("body_mass", numberOf(*setup.bodyMass));
    }
    if (setup.kit.startLoad) {
        writer.field("start_load", numberOf(*setup.kit.startLoad));
    }
    writer.field("stage", textOf(progression::keyOf(setup.startStage)));
    writer.field("policy", differences(setup.policy, progression::Policy::defaultsFor(setup.unit)));
    writer.field("started", textOf(lift.startedOn.toString()));
    const std::vector<lifts::Measure> measures = measuresOf(lift);
    std::vector<std::string> events;
    events.reserve(lift.events.size());
    for (std::size_t i = 0; i < lift.events.size(); ++i) {
        events.push_back(lineOfEntry(lift.events[i], measures[i]));
    }
    writer.lines("events", events);
    return writer.finished();
}

}  // namespace chalk::exchange
