#include "core/exchange/event_json.h"

#include "core/exchange/block_json.h"
#include "core/exchange/equipment_json.h"

#include <algorithm>
#include <numeric>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using base::Load;
using progression::CoachSet;
using progression::Event;
using progression::EventBody;
using progression::Exposure;
using progression::Rehearsal;
using progression::SetRecord;
using progression::Steadiness;

constexpr int kMostReps = 1000;
constexpr int kMostSeconds = 3600;
constexpr int kMostMetres = 10'000;

const char* amountField(lifts::Measure measure)
{
    switch (measure) {
    case lifts::Measure::Reps:
        return "reps";
    case lifts::Measure::Seconds:
        return "seconds";
    case lifts::Measure::Metres:
        return "metres";
    }
    return "reps";
}

int mostOf(lifts::Measure measure)
{
    switch (measure) {
    case lifts::Measure::Reps:
        return kMostReps;
    case lifts::Measure::Seconds:
        return kMostSeconds;
    case lifts::Measure::Metres:
        return kMostMetres;
    }
    return kMostReps;
}

Steadiness readSteadiness(ObjectReader& reader)
{
    const auto text = reader.optionalText("steadiness");
    const auto steadiness = text ? progression::steadinessOf(*text) : Steadiness::Steady;
    if (!steadiness) {
        reader.fail("steadiness", "must be steady, shaky or lost");
    }
    return steadiness.value_or(Steadiness::Steady);
}

int readPain(ObjectReader& reader)
{
    return reader.optionalWholeNumber("pain", 0, 10).value_or(0);
}

JsonResult<SetRecord> readSet(const QJsonValue& value, const std::string& path, lifts::Measure measure)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"load", amountField(measure), "rir", "rest_s", "steadiness", "warmup"});
    SetRecord set;
    set.load = Load::fromCenti(reader.decimal("load", 2, -lifts::kMaxLoadCenti, lifts::kMaxLoadCenti));
    set.amount = reader.wholeNumber(amountField(measure), 0, mostOf(measure));
    set.rir = static_cast<std::int16_t>(reader.optionalWholeNumber("rir", 0, 10).value_or(SetRecord::kNotRecorded));
    set.restSeconds = static_cast<std::int16_t>(reader.optionalWholeNumber("rest_s", 0, kMostSeconds).value_or(SetRecord::kNotRecorded));
    set.steadiness = readSteadiness(reader);
    set.isWarmup = reader.flag("warmup", false);
    return resultOf(reader, set);
}

EventBody readExposure(ObjectReader& reader, lifts::Measure measure)
{
    reader.allowOnly({"date", "type", "session", "pain", "sets"});
    Exposure exposure;
    exposure.pain = readPain(reader);
    const QJsonArray sets = reader.array("sets");
    for (qsizetype i = 0; i < sets.size() && reader.isSound(); ++i) {
        const auto set = readSet(sets[i], {}, measure);
        if (!set) {
            // There are very many of them: the way to one is put together where it is named.
            reader.take(readSet(sets[i], fmt::format("{}[{}]", reader.pathOf("sets"), i), measure).error());
            break;
        }
        exposure.sets.push_back(*set);
    }
    return exposure;
}

std::vector<progression::Criterion> readCriteria(ObjectReader& reader)
{
    std::vector<progression::Criterion> criteria;
    if (!reader.has("criteria")) {
        return criteria;
    }
    if (!reader.optional("criteria").isObject()) {
        reader.fail("criteria", "must be an object");
    }
    const QJsonObject object = reader.optional("criteria").toObject();
    for (auto it = object.constBegin(); it != object.constEnd(); ++it) {
        const auto verdict = progression::verdictOf(it.value().toString().toStdString());
        if (it.key().isEmpty() || !verdict) {
            reader.take({reader.pathOf("criteria") + "." + it.key().toStdString(), "must be met, partly or not_met"});
            break;
        }
        criteria.push_back({it.key().toStdString(), *verdict});
    }
    return criteria;
}

progression::Pauses readPauses(ObjectReader& reader)
{
    if (!reader.has("pauses")) {
        return {};
    }
    ObjectReader pauses(reader.optional("pauses"), reader.pathOf("pauses"));
    pauses.allowOnly({"top", "middle", "bottom"});
    const auto milliseconds = [&pauses](const char* field) -> std::optional<int> {
        return pauses.optionalDecimal(field, 3, 0, 1000 * kMostSeconds);
    };
    const progression::Pauses read{milliseconds("top"), milliseconds("middle"), milliseconds("bottom")};
    if (pauses.fault()) {
        reader.take(*pauses.fault());
    }
    return read;
}

EventBody readRehearsal(ObjectReader& reader)
{
    reader.allowOnly({"date", "type", "session", "criteria", "reps", "pauses", "steadiness", "pain"});
    Rehearsal rehearsal;
    rehearsal.criteria = readCriteria(reader);
    rehearsal.reps = base::Reps(reader.optionalWholeNumber("reps", 0, kMostReps).value_or(0));
    rehearsal.pauses = readPauses(reader);
    rehearsal.steadiness = readSteadiness(reader);
    rehearsal.pain = readPain(reader);
    return rehearsal;
}

EventBody readCoachSet(ObjectReader& reader)
{
    reader.allowOnly({"date", "type", "session", "stage", "load", "reps", "sets", "rest_s", "reason"});
    CoachSet set;
    if (const auto key = reader.optionalText("stage")) {
        set.stage = progression::stageOf(*key);
        if (!set.stage) {
            reader.fail("stage", "must be a stage: pattern, control, base_load, load_build, rep_build, set_build or rest_cut");
        }
    }
    if (const auto centi = reader.optionalDecimal("load", 2, -lifts::kMaxLoadCenti, lifts::kMaxLoadCenti)) {
        set.load = Load::fromCenti(*centi);
    }
    if (const auto reps = reader.optionalWholeNumber("reps", 0, kMostReps)) {
        set.reps = base::Reps(*reps);
    }
    if (const auto sets = reader.optionalWholeNumber("sets", 1, 50)) {
        set.sets = base::Sets(*sets);
    }
    if (const auto seconds = reader.optionalWholeNumber("rest_s", 0, kMostSeconds)) {
        set.rest = base::Seconds(*seconds);
    }
    set.reason = reader.text("reason");
    return set;
}

EventBody readSwap(ObjectReader& reader, EventFields fields)
{
    reader.allowOnly({"date", "type", "session", "equipment", "start_load", "body_share", "measure", fields.hasExercise ? "exercise" : nullptr,
                      fields.hasExercise ? "pieces" : nullptr});
    progression::Swap swap;
    if (const auto equipment = readEquipment(reader.required("equipment"), reader.pathOf("equipment"))) {
        swap.equipment = *equipment;
    } else {
        reader.take(equipment.error());
    }
    if (const auto centi = reader.optionalDecimal("start_load", 2, -lifts::kMaxLoadCenti, lifts::kMaxLoadCenti)) {
        swap.startLoad = Load::fromCenti(*centi);
    }
    if (const auto milli = reader.optionalDecimal("body_share", 3, 0, 1000)) {
        swap.bodyShare = base::Milli(*milli);
    }
    if (const auto key = reader.optionalText("measure")) {
        swap.measure = lifts::measureOf(*key);
        if (!swap.measure) {
            reader.fail("measure", "must be reps, seconds or metres");
        }
    }
    swap.exerciseKey = reader.optionalText("exercise").value_or(std::string());
    swap.pieces = reader.optionalWholeNumber("pieces", 1, 2).value_or(1);
    return swap;
}

EventBody readBody(ObjectReader& reader, lifts::Measure measure, EventFields fields)
{
    const std::string type = reader.text("type");
    if (type == "exposure") {
        return readExposure(reader, measure);
    }
    if (type == "rehearsal") {
        return readRehearsal(reader);
    }
    if (type == "set") {
        return readCoachSet(reader);
    }
    if (type == "swap") {
        return readSwap(reader, fields);
    }
    if (type == "lighter") {
        reader.allowOnly({"date", "type", "session", "note"});
        return progression::LighterWeek{reader.optionalText("note").value_or(std::string())};
    }
    if (type == "block") {
        reader.allowOnly({"date", "type", "session", "note", "tested", "single", "weeks"});
        return readBlock(reader);
    }
    if (type != "release") {
        reader.fail("type", "must be exposure, rehearsal, release, set, swap, lighter or block");
    }
    reader.allowOnly({"date", "type", "session", "note"});
    return progression::Release{reader.text("note")};
}

base::Date dateOf(ObjectReader& reader)
{
    const auto date = base::Date::parse(reader.text("date"));
    if (!date) {
        reader.fail("date", "must be a day, YYYY-MM-DD");
    }
    return date.value_or(base::Date());
}

}  // namespace

JsonResult<std::vector<std::size_t>> orderByDate(const QJsonArray& array, const std::string& path)
{
    std::vector<base::Date> days;
    for (qsizetype i = 0; i < array.size(); ++i) {
        ObjectReader reader(array[i], fmt::format("{}[{}]", path, i));
        days.push_back(dateOf(reader));
        if (reader.fault()) {
            return tl::make_unexpected(*reader.fault());
        }
    }
    std::vector<std::size_t> order(days.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&days](std::size_t a, std::size_t b) { return days[a] < days[b]; });
    return order;
}

JsonResult<Event> readEvent(const QJsonValue& value, const std::string& path, lifts::Measure measure, EventFields fields)
{
    ObjectReader reader(value, path);
    if (!fields.hasSession && reader.has("session")) {
        reader.fail("session", "is not a field that is known here");
    }
    Event event;
    event.date = dateOf(reader);
    event.body = readBody(reader, measure, fields);
    return resultOf(reader, std::move(event));
}

JsonResult<std::vector<Event>> readEvents(const QJsonArray& array, const std::string& path, lifts::Measure measure, EventFields fields)
{
    // By date, because what a set is counted in depends on the swaps before it.
    const auto order = orderByDate(array, path);
    if (!order) {
        return tl::make_unexpected(order.error());
    }
    std::vector<Event> events(order->size());
    for (const std::size_t i : *order) {
        auto event = readEvent(array[static_cast<qsizetype>(i)], fmt::format("{}[{}]", path, i), measure, fields);
        if (!event) {
            return tl::make_unexpected(event.error());
        }
        if (const auto* swap = std::get_if<progression::Swap>(&event->body)) {
            measure = swap->measure.value_or(measure);
        }
        events[i] = *std::move(event);
    }
    return events;
}

}  // namespace chalk::exchange
